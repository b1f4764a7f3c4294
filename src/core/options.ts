import { nearestName } from './nearest-name.js';
import { TintladderError } from './tintladder-error.js';

/**
 * Refuses options that are no object, and an option that the function has not: misspelt, it would be ignored in silence.
 *
 * @param options - as the caller gave them; left out is allowed
 * @param names - the options of the function
 * @param path - where they stand
 * @throws TintladderError `wrong-type`; `invalid-option` for an unknown one, with the name that was probably meant
 */
export function assertOptions(options: unknown, names: readonly string[], path = 'options'): void {
  if (options === undefined) return;
  if (typeof options !== 'object' || options === null || Array.isArray(options) || ArrayBuffer.isView(options)) {
    throw new TintladderError('wrong-type', { path, received: options, expected: 'an object of options' });
  }
  for (const name of Object.keys(options)) {
    if (names.includes(name)) continue;
    const meant = nearestName(name, names);
    throw new TintladderError('invalid-option', {
      path: `${path}.${name}`,
      received: name,
      expected: names.length > 0 ? `one of the options ${names.join(', ')}` : 'no options',
      ...(meant !== undefined && { hint: `Did you mean ${meant}?` }),
    });
  }
}

/** Refuses a value that is none of a closed set of names. */
export function assertOneOf<Name extends string>(
  value: unknown,
  names: readonly Name[],
  path: string,
): asserts value is Name {
  if (names.some((name) => name === value)) return;
  throw new TintladderError('invalid-option', {
    path,
    received: value,
    expected: `one of ${names.map((name) => `'${name}'`).join(', ')}`,
  });
}

/** Refuses what is neither true, false nor left out. */
export function assertFlag(value: unknown, path: string): asserts value is boolean | undefined {
  if (value === undefined || typeof value === 'boolean') return;
  throw new TintladderError('invalid-option', { path, received: value, expected: 'true or false' });
}

/** Refuses a number that does not lie between two others. */
export function assertBetween(value: unknown, low: number, high: number, path: string): asserts value is number {
  if (typeof value === 'number' && value > low && value < high) return;
  throw new TintladderError('invalid-option', {
    path,
    received: value,
    expected: `a number between ${low} and ${high}`,
  });
}
