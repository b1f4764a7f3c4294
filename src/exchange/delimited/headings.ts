import { isWhole, parseStatement } from '../conditions/statement.js';
import { isQuantity, parseQuantity, type StatedQuantity } from '../quantity/quantity-text.js';
import { type ColumnRole, columnRole } from '../table/column-role.js';
import { normaliseHeading } from '../table/sample-words.js';
import { looksNumeric } from '../text/file-number.js';

/** A complete set of colour coordinates counts as much as this many wavelengths. */
const TRIPLE = 10;

/**
 * How surely a row is the heading of a wide table: the number of wavelengths and complete sets of L*, a*, b* or X, Y, Z it names;
 * 0 for a row that is none.
 */
export function headingStrength(cells: readonly string[]): number {
  let wavelengths = 0;
  let numbers = 0;
  let named = false;
  const coordinates = new Set<string>();
  for (let i = 0; i < cells.length; i++) {
    const cell = i === 0 ? withoutCommentMark(cells[i]) : cells[i];
    const role: ColumnRole = columnRole(cell);
    if (role.kind === 'wavelength') wavelengths++;
    else if (role.kind === 'coordinate') coordinates.add(role.heading.coordinate);
    else if (role.kind === 'name') named = true;
    else if (looksNumeric(cell)) numbers++;
  }
  const triples = [
    ['L', 'a', 'b'],
    ['X', 'Y', 'Z'],
  ].filter((set) => set.every((c) => coordinates.has(c))).length;
  const strength = (wavelengths > 1 || named ? wavelengths : 0) + triples * TRIPLE;
  return numbers * 4 >= strength && numbers > 0 ? 0 : strength;
}

/** A heading that is commented out is one all the same. */
export function withoutCommentMark(cell: string): string {
  return cell.replace(/^\s*#\s*/, '');
}

const WAVELENGTH_WORDS = new Set(
  "wavelength,wavelengths,wavelengthnm,wavelengthsnm,nm,wl,wlnm,lambda,lambdanm,λ,λnm,wellenlänge,wellenlängenm,wellenlängeinnm,longueurd'onde,longueurd'ondenm,longitudonda,longituddeonda,lunghezzad'onda".split(
    ',',
  ),
);

/** Whether a heading says that its column lists wavelengths. */
export function isWavelengthHeading(text: string): boolean {
  return WAVELENGTH_WORDS.has(
    normaliseHeading(text.replace(/[()[\]{}/]/g, ' '))
      .replace(/’/g, "'")
      .replace(/\s+/g, ''),
  );
}

/** Whether a heading says that its column names the samples. */
export function isNameHeading(text: string): boolean {
  return columnRole(text).kind === 'name';
}

/** What the heading of a column of values says of them: a quantity, a scale, a specular mode; `undefined` where it says anything else. */
export interface ValueHeading extends Pick<StatedQuantity, 'quantity' | 'scale'> {
  readonly stated: ReturnType<typeof parseStatement>['parts'];
  /** A single letter, which may as well be the name of a sample. */
  readonly letter: boolean;
}

/** Reads a heading such as `Reflectance (%)`, `value`, `SCE`, `R% SCI`, `A`. */
export function parseValueHeading(text: string): ValueHeading | undefined {
  const plain = text.replace(/(?<!\p{L})(?:values?|readings?|wert|valeur)(?!\p{L})/giu, ' ');
  if (text.trim() === '') return undefined;
  const { quantity, scale, rest } = parseQuantity(plain);
  const said = quantity !== undefined || scale !== undefined || (rest === '' && plain !== text);
  const statement = parseStatement(rest);
  if (rest === '' ? !said : !(isWhole(statement) && (said || statement.parts.specular))) return undefined;
  return {
    ...(quantity ? { quantity } : {}),
    ...(scale ? { scale } : {}),
    stated: rest === '' ? {} : statement.parts,
    letter: /^\s*[a-z]\s*$/i.test(text),
  };
}

/** A row of units under a heading: the unit if all cells of readings hold the same, which is no number. */
export function unitOf(cells: readonly string[]): StatedQuantity | 'wavelength' | 'unknown' | undefined {
  const [unit = ''] = cells.map((cell) => cell.trim());
  if (unit === '' || looksNumeric(unit) || cells.some((cell) => cell.trim() !== unit)) return undefined;
  if (/^[[(]?\s*nm\s*[\])]?$/i.test(unit)) return 'wavelength';
  const quantity = parseQuantity(unit);
  return isQuantity(quantity) ? quantity : 'unknown';
}
