import { TintladderError } from '../core/index.js';
import { SERIES_FIELDS, type SeriesField } from './series-kinds.js';
import type { ReadingPlace, Study } from './study.js';

/** What may stand in braces in a pattern. */
export const PLACEHOLDERS = ['package', 'paint', 'area', 'storage', ...SERIES_FIELDS, 'replicate', 'any'] as const;

type Placeholder = (typeof PLACEHOLDERS)[number];

/** What a pattern found in a sample name. */
export type PatternMatch = Omit<ReadingPlace, 'role'> & { readonly replicate?: string };

/**
 * The placeholders of a pattern, in their order.
 *
 * @throws TintladderError `study-invalid` for an unknown placeholder, or one that stands twice
 */
export function placeholdersIn(pattern: string, path: string): Placeholder[] {
  const found = [...pattern.matchAll(/\{([^{}]*)\}/g)].map(([, name]) => name as Placeholder);
  found.forEach((name, i) => {
    if (!PLACEHOLDERS.includes(name) || (name !== 'any' && found.indexOf(name) !== i)) {
      throw new TintladderError('study-invalid', {
        path,
        received: name,
        expected: `each of ${PLACEHOLDERS.map((known) => `{${known}}`).join(' ')} at most once ({any} as often as needed)`,
      });
    }
  });
  return found;
}

/**
 * Turns a pattern into a function that reads a sample name.
 *
 * @param pattern - literal text with placeholders in braces
 * @param study - its packages, paints and words give the texts that the placeholders accept
 * @returns a function from a name to what it says, or undefined where the name doesn't fit
 */
export function compilePattern(pattern: string, study: Study): (name: string) => PatternMatch | undefined {
  const names = placeholdersIn(pattern, 'pattern');
  const { unrubbed = 'unrubbed', rubbed = 'rubbed', fresh = 'fresh', stored = 'stored' } = study.words ?? {};
  const accepts: Record<Exclude<Placeholder, SeriesField>, string> = {
    package: anyOf(study.packages.map(({ id }) => id)),
    paint: anyOf(study.paints.map(({ id }) => id)),
    area: anyOf([unrubbed, rubbed]),
    storage: anyOf([fresh, stored]),
    replicate: '.+?',
    any: '.*?',
  };
  const source = pattern.replace(/\{([^{}]*)\}|[^{}]+|[{}]/g, (part, name) =>
    name === undefined
      ? literally(part)
      : `(${isField(name) ? NUMBER : accepts[name as Exclude<Placeholder, SeriesField>]})`,
  );
  const expression = new RegExp(`^${source}$`, 'u');
  return (name) => {
    const found = expression.exec(name.trim());
    if (!found) return undefined;
    const text = (key: Placeholder) => (names.includes(key) ? found[names.indexOf(key) + 1] : undefined);
    const number = (key: Placeholder) => (text(key) === undefined ? undefined : Number(text(key)));
    const choice = <T>(key: Placeholder, second: string, values: readonly [T, T]) =>
      text(key) === undefined ? undefined : values[text(key) === second ? 1 : 0];
    return {
      package: text('package'),
      paint: text('paint'),
      area: choice('area', rubbed, ['unrubbed', 'rubbed'] as const),
      storage: choice('storage', stored, ['fresh', 'stored'] as const),
      ...Object.fromEntries(SERIES_FIELDS.map((field) => [field, number(field)])),
      replicate: text('replicate'),
    };
  };
}

const NUMBER = '\\d+(?:\\.\\d+)?';

function isField(name: string): name is SeriesField {
  return SERIES_FIELDS.some((field) => field === name);
}

/** Longest first, so that `A1` is not taken for `A` followed by something else. */
function anyOf(words: readonly string[]): string {
  return [...words]
    .sort((a, b) => b.length - a.length)
    .map(literally)
    .join('|');
}

function literally(text: string): string {
  return text.replace(/[\\^$.*+?()[\]{}|/]/g, '\\$&');
}
