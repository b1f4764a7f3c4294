import { conditionKey } from '../conditions/condition-key.js';
import type { ConditionPart } from '../conditions/stated-parts.js';
import { parseWavelengthLabel, type WavelengthLabel } from '../wavelength/wavelength-label.js';
import { type CoordinateHeading, parseCoordinate } from './coordinate-heading.js';
import { isKindWord, isReplicateWord, nameRank, normaliseHeading } from './sample-words.js';

/** What a heading says that its column holds. */
export type ColumnRole =
  | { readonly kind: 'wavelength'; readonly label: WavelengthLabel }
  | { readonly kind: 'coordinate'; readonly heading: CoordinateHeading }
  | { readonly kind: 'name'; readonly rank: number }
  | { readonly kind: 'replicate' }
  | { readonly kind: 'condition'; readonly about: readonly ConditionPart[] }
  /** What kind of values a row holds: a quantity, a specular mode. */
  | { readonly kind: 'kind' }
  | { readonly kind: 'text' };

const TEXT: ColumnRole = { kind: 'text' };
/** Roles that were read; a file is looked at several times before it is read, and its cells repeat. */
const kept = new Map<string, ColumnRole>();
const MOST_KEPT = 2000;
/** A longer slice would keep the whole text that it was cut from in memory. */
const LONGEST_KEPT = 12;
const PLAIN_NUMBER = /^\s*[+-]?[\d.,]+\s*$/;

/** What a column holds, by its heading: reflectance at a wavelength, a coordinate, a name, a condition, or other text. */
export function columnRole(heading: string): ColumnRole {
  if (heading === '') return TEXT;
  if (heading.length > LONGEST_KEPT) return readRole(heading);
  const known = kept.get(heading);
  if (known) return known;
  const role = readRole(heading);
  if (kept.size >= MOST_KEPT) kept.clear();
  kept.set(heading, role);
  return role;
}

function readRole(heading: string): ColumnRole {
  const label = parseWavelengthLabel(heading);
  if (label) return { kind: 'wavelength', label };
  if (PLAIN_NUMBER.test(heading)) return { kind: 'text' };
  const coordinate = parseCoordinate(heading);
  if (coordinate) return { kind: 'coordinate', heading: coordinate };
  const word = normaliseHeading(heading);
  const rank = nameRank(word);
  if (rank >= 0) return { kind: 'name', rank };
  if (isReplicateWord(word)) return { kind: 'replicate' };
  const about = conditionKey(heading);
  if (about.length > 0) return { kind: 'condition', about };
  return isKindWord(word) ? { kind: 'kind' } : { kind: 'text' };
}
