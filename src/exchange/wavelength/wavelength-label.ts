import type { StatedParts } from '../conditions/stated-parts.js';
import { parseStatement } from '../conditions/statement.js';
import { parseQuantity, type Quantity } from '../quantity/quantity-text.js';
import type { ReflectanceScale } from '../quantity/reflectance-scale.js';

/** A heading that names a wavelength, such as `400`, `400 nm`, `R400`, `400,0`, `%R 400` or `400 nm SCI`. */
export interface WavelengthLabel {
  readonly wavelength: number;
  /** Number of decimals printed. */
  readonly decimals: number;
  /** What the heading says of the value below it. */
  readonly scale?: ReflectanceScale;
  readonly quantity?: Quantity;
  readonly stated?: StatedParts;
}

const NUMBER = /(?<!\d)(?<!\d[.,])(\d{3,4})(?:[.,](\d{1,17}))?(?!\d)/;
/** Words that stand beside a wavelength and say nothing of the value. */
const FILLERS =
  /(?<!\p{L})(?:nm|nanomet(?:er|re)s?|wl|w|wavelength|wellenlänge|lambda|λ|spectral|spectrum|at|bei|value|values)(?!\p{L})/giu;
const PLAIN = /^\s*(\d{3,4})(?:[.,](\d{1,17}))?\s*(?:nm)?\s*$/;

/** Whether a number can be a wavelength in nm, from the ultraviolet to the near infrared. */
export function isWavelength(value: number): boolean {
  return value >= 200 && value <= 2500;
}

/** Reads a heading as a wavelength, or gives `undefined`. */
export function parseWavelengthLabel(text: string): WavelengthLabel | undefined {
  if (text.length > 60) return undefined;
  const plain = PLAIN.exec(text);
  const found = plain ?? NUMBER.exec(text);
  if (!found) return undefined;
  const [whole, digits, fraction = ''] = found;
  const wavelength = Number(`${digits}.${fraction}`);
  if (!isWavelength(wavelength)) return undefined;
  const label = { wavelength, decimals: fraction.length };
  if (plain) return label;
  const around = `${text.slice(0, found.index)} ${text.slice(found.index + whole.length)}`
    .replace(/_/g, ' ')
    .replace(FILLERS, ' ');
  const { quantity, scale, rest } = parseQuantity(around);
  const { parts, rest: unknown } = parseStatement(rest);
  if (unknown.length > 0) return undefined;
  return {
    ...label,
    ...(scale ? { scale } : {}),
    ...(quantity ? { quantity } : {}),
    ...(Object.keys(parts).length > 0 ? { stated: parts } : {}),
  };
}
