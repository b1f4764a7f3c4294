import type { Viewing } from '../../colorimetry/index.js';
import {
  parseIlluminant,
  parseObserver,
  parseViewing,
  type StatedConditions,
} from '../conditions/stated-conditions.js';
import { parseWavelengthLabel, type WavelengthLabel } from '../wavelength/wavelength-label.js';

export type Coordinate = 'L' | 'a' | 'b' | 'X' | 'Y' | 'Z';

/** What a heading says that its column holds; `set` is what it says of the coordinate, which keeps several sets in a table apart. */
export type ColumnRole =
  | { readonly kind: 'wavelength'; readonly label: WavelengthLabel }
  | { readonly kind: 'coordinate'; readonly coordinate: Coordinate; readonly set: string; readonly viewing?: Viewing }
  | { readonly kind: 'name'; readonly rank: number }
  | { readonly kind: 'replicate' }
  | { readonly kind: 'condition'; readonly part: keyof StatedConditions }
  | { readonly kind: 'text' };

/** Usual headings of the sample's name, the most telling first. */
const NAME_WORDS = [
  'sample name',
  'name',
  'sample',
  'sample id',
  'id',
  'specimen',
  'label',
  'probe',
  'probenname',
  'bezeichnung',
  'échantillon',
  'nom',
  'muestra',
  'nombre',
  'campione',
  'nome',
];
const REPLICATE_WORDS = new Set(['replicate', 'replicates', 'repeat', 'replicate number', 'wiederholung']);
const CONDITION_WORDS: ReadonlyMap<string, keyof StatedConditions> = new Map([
  ['illuminant', 'illuminant'],
  ['observer', 'observer'],
  ['standard observer', 'observer'],
  ['specular', 'specular'],
  ['specular component', 'specular'],
  ['geometry', 'geometry'],
  ['measurement geometry', 'geometry'],
  ['instrument', 'instrument'],
]);

/** Lower case, with underscores, hyphens, dots and colons as spaces: one spelling for comparing headings. */
export function normaliseHeading(text: string): string {
  return text
    .toLowerCase()
    .replace(/[\s_\-.:]+/g, ' ')
    .trim();
}

/** What a column holds, by its heading: reflectance at a wavelength, a coordinate, a name, a condition, or other text. */
export function columnRole(heading: string): ColumnRole {
  const label = parseWavelengthLabel(heading);
  if (label) return { kind: 'wavelength', label };
  const coordinate = parseCoordinate(heading);
  if (coordinate) return coordinate;
  const word = normaliseHeading(heading);
  const spaced = word.replace(/^sample(name|id)$/, 'sample $1');
  const rank = NAME_WORDS.indexOf(spaced);
  if (rank >= 0) return { kind: 'name', rank };
  if (REPLICATE_WORDS.has(word)) return { kind: 'replicate' };
  const part = CONDITION_WORDS.get(word);
  return part ? { kind: 'condition', part } : { kind: 'text' };
}

const LAB = /^(?:cie ?(?:lab)?[ _]?|lab[ _])?([lab])\*?(?:[\s_([,/-]+(.*?)[)\]]?)?$/i;
const XYZ = /^(?:cie ?(?:xyz)?[ _]?|xyz[ _])?([XYZ])(?:[\s_([,/-]+(.*?)[)\]]?)?$/;

function parseCoordinate(heading: string): ColumnRole | undefined {
  if (heading.length > 40) return undefined;
  const text = heading.trim().replace(/^(cie|lab|xyz)(?=[ _])/i, (family) => family.toLowerCase());
  // small x, y, z are chromaticity coordinates, so case counts for them
  const found = LAB.exec(text) ?? XYZ.exec(text);
  if (!found) return undefined;
  const [, letter, rest = ''] = found;
  const viewing = parseViewing(rest);
  if (rest !== '' && parseIlluminant(rest) === undefined && parseObserver(rest) === undefined) return undefined;
  const coordinate =
    letter.toUpperCase() === 'L'
      ? 'L'
      : letter === letter.toUpperCase() && /[AB]/.test(letter)
        ? letter.toLowerCase()
        : letter;
  return { kind: 'coordinate', coordinate: coordinate as Coordinate, set: rest, ...(viewing ? { viewing } : {}) };
}
