import type { ReflectanceScale } from '../measurement/measurement.js';
import { type ColumnRole, columnRole, normaliseHeading } from '../table/column-role.js';
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
    const cell = i === 0 ? cells[i].replace(/^\s*#\s*/, '') : cells[i];
    const role: ColumnRole = columnRole(cell);
    if (role.kind === 'wavelength') wavelengths++;
    else if (role.kind === 'coordinate') coordinates.add(role.coordinate);
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

const WAVELENGTH_WORDS = new Set([
  'wavelength',
  'wavelengthnm',
  'nm',
  'wl',
  'wlnm',
  'lambda',
  'lambdanm',
  'λ',
  'λnm',
  'wellenlänge',
  'wellenlängenm',
  "longueurd'onde",
]);
const REFLECTANCE_WORDS = new Set(['r', 'refl', 'reflectance', 'reflectancefactor', 'value', 'remission', 'rvalue']);
const OTHER_QUANTITIES: ReadonlyMap<string, string> = new Map([
  ['k/s', 'K/S'],
  ['ks', 'K/S'],
  ['abs', 'absorbance'],
  ['absorbance', 'absorbance'],
  ['opticaldensity', 'optical density'],
  ['transmittance', 'transmittance'],
  ['transmission', 'transmittance'],
  ['log1/r', 'log 1/R'],
  ['radiance', 'radiance'],
  ['irradiance', 'irradiance'],
  ['spectralpower', 'spectral power'],
]);

/** What a text says that values are. */
export interface StatedQuantity {
  readonly scale?: ReflectanceScale;
  /** A quantity that is not reflectance. */
  readonly unsupported?: string;
}

/** Reads a heading, unit or statement as a quantity: `Reflectance (%)`, `%`, `K/S`; `undefined` where it is none. */
export function parseQuantity(text: string): StatedQuantity | undefined {
  const word = compact(text);
  const other = OTHER_QUANTITIES.get(word.replace('%', ''));
  if (other) return { unsupported: other };
  const percent = /%|percent|pct/.test(word);
  const rest = word.replace(/%|percent|pct/, '').replace(/(0-1|fraction|0-100|factor)$/, '');
  if (/fraction$|0-1$/.test(word))
    return rest === '' || REFLECTANCE_WORDS.has(rest) ? { scale: 'fraction' } : undefined;
  if (/0-100$/.test(word)) return rest === '' || REFLECTANCE_WORDS.has(rest) ? { scale: 'percent' } : undefined;
  if (rest === '' && percent) return { scale: 'percent' };
  if (!REFLECTANCE_WORDS.has(rest)) return undefined;
  return percent ? { scale: 'percent' } : {};
}

/** Whether a heading says that its column lists wavelengths. */
export function isWavelengthHeading(text: string): boolean {
  return WAVELENGTH_WORDS.has(compact(text));
}

/** Whether a heading says that its column names the samples. */
export function isNameHeading(text: string): boolean {
  return columnRole(text).kind === 'name';
}

function compact(text: string): string {
  return normaliseHeading(text.replace(/(\d)\s*[-–]\s*(\d)/g, '$1~$2').replace(/[()[\]{}#]/g, ' '))
    .replace(/\s+/g, '')
    .replace('~', '-');
}
