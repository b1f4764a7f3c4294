import { TintladderError } from '../../core/index.js';

/** What a pattern found in a name: the text of each placeholder. */
export type NameParts = Readonly<Record<string, string>>;

/** Takes any text and keeps none of it; the one placeholder that may stand several times. */
export const ANYTHING = 'any';

/**
 * The placeholders of a pattern, in their order.
 *
 * @param pattern - literal text with placeholders in braces, such as `{paint} {package} {weighing}-{spot}`
 * @param path - where the pattern was given, for faults
 * @param known - placeholders there are; any name made of letters where left out
 * @throws TintladderError `pattern-invalid` for an unknown placeholder, or one but `{any}` that stands twice
 */
export function placeholdersIn(pattern: string, path: string, known?: readonly string[]): string[] {
  const found = [...pattern.matchAll(/\{([^{}]*)\}/g)].map(([, name]) => name);
  found.forEach((name, i) => {
    const allowed = known ? known.includes(name) : /^[A-Za-z]+$/.test(name);
    if (allowed && (name === ANYTHING || found.indexOf(name) === i)) return;
    const names = known ? known.map((each) => `{${each}}`).join(' ') : 'placeholders made of letters';
    throw new TintladderError('pattern-invalid', {
      path,
      received: name,
      expected: `each of ${names} at most once ({any} as often as needed)`,
    });
  });
  return found;
}

/**
 * Turns a pattern into a function that reads a name.
 *
 * @param pattern - literal text with placeholders in braces
 * @param accepts - regular expression, without groups, of the text that a placeholder takes; {@link oneOf} makes one of words
 * @returns a function from a name to the text of each placeholder but `{any}`, or undefined where the name doesn't fit
 */
export function compileNamePattern(
  pattern: string,
  accepts: (placeholder: string) => string,
): (name: string) => NameParts | undefined {
  const names: string[] = [];
  const source = pattern.replace(/\{([^{}]*)\}|[^{}]+|[{}]/g, (part, name) => {
    if (name === undefined) return literally(part);
    names.push(name);
    return name === ANYTHING ? '(.*?)' : `(${accepts(name)})`;
  });
  const expression = new RegExp(`^${source}$`, 'u');
  return (name) => {
    const found = expression.exec(name.trim());
    if (!found) return undefined;
    return Object.fromEntries(names.map((key, i) => [key, found[i + 1]]).filter(([key]) => key !== ANYTHING));
  };
}

/** A regular expression for one of several words, longest first, so that `A1` is not taken for `A` followed by something else. */
export function oneOf(words: readonly string[]): string {
  return [...words]
    .sort((a, b) => b.length - a.length)
    .map(literally)
    .join('|');
}

function literally(text: string): string {
  return text.replace(/[\\^$.*+?()[\]{}|/]/g, '\\$&');
}
