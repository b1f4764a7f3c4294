import type { ReflectanceScale } from './reflectance-scale.js';

/** What values can be; only reflectance is read as it stands. */
export type Quantity = 'reflectance' | 'K/S' | 'absorbance' | 'transmittance' | 'light';

/** What a text says that values are. */
export interface StatedQuantity {
  readonly quantity?: Quantity;
  readonly scale?: ReflectanceScale;
  /** What the text holds beside. */
  readonly rest: string;
}

const SCALES: readonly (readonly [ReflectanceScale, RegExp])[] = [
  [
    'percent',
    /0\s*(?:-|–|to|\.{2,3}|…|bis)\s*100(?!\d)|%|per\s?cent|percentage|prozent|pour\s?cents?|por\s?cien(?:to)?|(?<!\p{L})pct/giu,
  ],
  [
    'fraction',
    /0\s*(?:-|–|to|\.{2,3}|…|bis)\s*1(?:[.,]0+)?(?![\d.,]*\d)|(?<!\p{L})(?:fractions?(?: of 1)?|decimals?|dec|ratio|anteil)(?!\p{L})|\(\s*1\s*\)/giu,
  ],
];

const word = (source: string) => new RegExp(String.raw`(?<![\p{L}*])(?:${source})(?![\p{L}*])`, 'giu');

const QUANTITIES: readonly (readonly [Quantity, RegExp])[] = [
  ['K/S', word(String.raw`k\s?/\s?s|ks|k over s|f\s?\(\s*r\s*(?:∞|inf)?\s*\)|kubelka\s+munk(?:\s+function)?`)],
  [
    'absorbance',
    word(
      String.raw`-?\s?log(?:10)?\s?\(?\s*1\s?/\s?r\s*\)?|-\s?log(?:10)?\s?\(?\s*r\s*\)?|absorbance|absorbances|absorption|absorbanz|extinction|extinktion|abs|a\.?\s?u\.?|optical density|o\.?d\.?`,
    ),
  ],
  [
    'transmittance',
    word('transmittances?|transmission|transmittanz|transmissionsgrad|trans|transmitancia|trasmittanza'),
  ],
  [
    'light',
    word(
      'spectral power(?: distribution)?|colou?r.matching functions?|spectral sensitivit(?:y|ies)|spd|radiant power|power|irradiance|radiance|energy|energie|counts?|intensity|intensities|emission|emissive|luminance|photons',
    ),
  ],
  [
    'reflectance',
    word(
      'spectral reflectance(?: factors?)?|reflectance(?: factors?)?|reflectances|reflectivity|reflexionsgrad|reflexion|reflektion|reflection|refl|remission|remissionsgrad|réflectance|réflexion|reflectancia|riflettanza|r|rho|ρ|r\\s?value',
    ),
  ],
];

/** Letters that are a quantity only where nothing else stands beside them. */
const LETTERS: ReadonlyMap<string, Quantity> = new Map([
  ['a', 'absorbance'],
  ['t', 'transmittance'],
  ['e', 'light'],
]);

/** Underscores, and points between letters, separate words. */
function spaced(text: string): string {
  return text.replace(/_/g, ' ').replace(/\s+/g, ' ').trim();
}

/**
 * Reads a heading, a unit or a value as a quantity: `Reflectance (%)`, `%`, `T%`, `F(R)`, `Absorbance (AU)`, `0-1`. `rest` is empty where the
 * whole text is one.
 */
export function parseQuantity(text: string): StatedQuantity {
  let left = spaced(text);
  if (left.length > 120) return { rest: left };
  let scale: ReflectanceScale | undefined;
  for (const [name, shape] of SCALES) {
    const without = left.replace(shape, ' ');
    if (without === left) continue;
    scale ??= name;
    left = without;
  }
  let quantity: Quantity | undefined;
  for (const [name, shape] of QUANTITIES) {
    const without = left.replace(shape, ' ');
    if (without === left) continue;
    quantity ??= name;
    left = without;
  }
  let rest = left.replace(/[\s()[\]{}:;,=#|\-–—/.]+/g, ' ').trim();
  const letter = LETTERS.get(rest.toLowerCase());
  if (quantity === undefined && letter) {
    quantity = letter;
    rest = '';
  }
  return { ...(quantity ? { quantity } : {}), ...(scale ? { scale } : {}), rest };
}

/** Whether the whole text states a quantity or a scale. */
export function isQuantity({ quantity, scale, rest }: StatedQuantity): boolean {
  return rest === '' && (quantity !== undefined || scale !== undefined);
}

const DATA_WORDS =
  /(?<!\p{L})(?:values?|spectr(?:a|um)|spectral|spektr(?:um|en)|spectres?|data|curves?|readings?|measurements?|units?|scale|type|mode|distribution)(?!\p{L})/iu;
/** Terms that are nothing else, in whatever sentence. */
const TERMS: ReadonlySet<Quantity> = new Set(['K/S']);
const UNMISTAKABLE =
  /(?<!\p{L})(?:absorbances?|transmittances?|irradiance|radiance|spectral power|spectral sensitivit(?:y|ies)|optical density|colou?r.matching functions?)(?!\p{L})/iu;

/** Reads a name that carries a quantity, such as `blue K/S`: only terms that are nothing else count. */
export function quantityInName(text: string): { readonly quantity: Quantity; readonly name: string } | undefined {
  const { quantity, rest } = parseQuantity(text);
  if (quantity === undefined || quantity === 'reflectance' || rest === '') return undefined;
  return TERMS.has(quantity) || UNMISTAKABLE.test(text) || /%\s?T(?!\p{L})/u.test(text)
    ? { quantity, name: rest }
    : undefined;
}

/**
 * Reads prose, such as a title or a remark, as a statement of quantity: only where it names the quantity together with data ("Absorbance
 * spectra", "All reflectance values in percent") or by a term that is nothing else. "Red enamel for a lamp housing" states nothing.
 */
export function quantityInProse(text: string): StatedQuantity | undefined {
  const stated = parseQuantity(text);
  if (isQuantity(stated)) return stated;
  const { quantity, scale, rest } = stated;
  if (quantity === undefined) return scale && DATA_WORDS.test(text) ? { scale, rest } : undefined;
  const certain = DATA_WORDS.test(text) || TERMS.has(quantity) || UNMISTAKABLE.test(text);
  if (!certain) return undefined;
  // a sentence that names reflectance too, such as "reflectance and K/S", leaves it to the columns
  const alsoReflectance = quantity !== 'reflectance' && /reflect|remission|riflett/i.test(text);
  return alsoReflectance ? undefined : { quantity, ...(scale ? { scale } : {}), rest };
}
