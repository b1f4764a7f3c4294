import { BLOCKS, LEVELS } from '../evidence/index.js';
import { ANYTHING, compileNamePattern, oneOf, placeholdersIn } from '../evidence/internal.js';
import { SERIES_FIELDS, type SeriesField } from './series-kinds.js';
import type { ReadingPlace, Study } from './study.js';

/** What may stand in braces in a pattern. */
export const PLACEHOLDERS = [
  'package',
  'paint',
  'area',
  'storage',
  ...SERIES_FIELDS,
  ...LEVELS,
  ...BLOCKS,
  ANYTHING,
] as const;

/** One of {@link PLACEHOLDERS}. */
export type Placeholder = (typeof PLACEHOLDERS)[number];

/**
 * The placeholders of a pattern, in their order.
 *
 * @throws TintladderError `pattern-invalid` for an unknown placeholder, or one that stands twice
 */
export function placeholdersOf(pattern: string, path: string): string[] {
  return placeholdersIn(pattern, path, PLACEHOLDERS);
}

/**
 * Turns a pattern into a function that reads a sample name.
 *
 * @param pattern - literal text with placeholders in braces
 * @param study - its packages, paints and words give the texts that the placeholders accept
 * @returns a function from a name to what it says, or undefined where the name doesn't fit
 */
export function compilePattern(
  pattern: string,
  study: Study,
): (name: string) => Omit<ReadingPlace, 'role'> | undefined {
  const { unrubbed = 'unrubbed', rubbed = 'rubbed', fresh = 'fresh', stored = 'stored' } = study.words ?? {};
  const words: Partial<Record<string, readonly string[]>> = {
    package: study.packages.map(({ id }) => id),
    paint: study.paints.map(({ id }) => id),
    area: [unrubbed, rubbed],
    storage: [fresh, stored],
  };
  const match = compileNamePattern(pattern, (name) => {
    const accepted = words[name];
    return accepted ? oneOf(accepted) : isField(name) ? NUMBER : isOneOf(name, LEVELS) ? UNIT : ANY_TEXT;
  });
  return (name) => {
    const found = match(name);
    if (!found) return undefined;
    const { area, storage, ...rest } = found;
    const numbers = SERIES_FIELDS.filter((field) => rest[field] !== undefined);
    return {
      ...rest,
      ...(area !== undefined && { area: area === rubbed ? 'rubbed' : 'unrubbed' }),
      ...(storage !== undefined && { storage: storage === stored ? 'stored' : 'fresh' }),
      ...Object.fromEntries(numbers.map((field) => [field, Number(rest[field])])),
    };
  };
}

const NUMBER = '\\d+(?:\\.\\d+)?';
const UNIT = '[\\p{L}\\p{N}]+';
const ANY_TEXT = '.+?';

function isField(name: string): name is SeriesField {
  return isOneOf(name, SERIES_FIELDS);
}

function isOneOf(name: string, list: readonly string[]): boolean {
  return list.includes(name);
}
