import { describe, expect, test } from 'vitest';
import { assertFlag, assertOneOf, assertOptions } from '../../src/core/internal.js';

describe('options', () => {
  const NAMES = ['criterion', 'repeatability', 'white'];

  test('may be left out, and each of them may be undefined', () => {
    expect(() => assertOptions(undefined, NAMES)).not.toThrow();
    expect(() => assertOptions({ white: undefined }, NAMES)).not.toThrow();
  });

  test.each([
    ['repeatabilty', 'Did you mean repeatability?'],
    ['White', 'Did you mean white?'],
    ['surface', undefined],
  ])('%s is refused, with the name that was probably meant', (name, hint) => {
    const fault = { code: 'invalid-option', path: `options.${name}`, received: name, ...(hint && { hint }) };
    expect(() => assertOptions({ [name]: 1 }, NAMES)).toThrowError(expect.objectContaining(fault));
  });

  test.each([null, 'white', 3, true, [], new Float64Array(2)])('%o is no object of options', (options) => {
    expect(() => assertOptions(options, NAMES)).toThrowError(expect.objectContaining({ code: 'wrong-type' }));
  });

  test('a name outside a closed set is refused', () => {
    expect(() => assertOneOf('b', ['a', 'b'], 'options.x')).not.toThrow();
    expect(() => assertOneOf('c', ['a', 'b'], 'options.x')).toThrowError(
      expect.objectContaining({ code: 'invalid-option', path: 'options.x', received: 'c' }),
    );
  });

  test('a flag is true, false or left out', () => {
    for (const flag of [true, false, undefined]) expect(() => assertFlag(flag, 'options.x')).not.toThrow();
    for (const flag of [null, 1, 'true']) expect(() => assertFlag(flag, 'options.x')).toThrow();
  });
});
