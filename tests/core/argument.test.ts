import { describe, expect, test } from 'vitest';
import {
  assertArray,
  assertFloat64Array,
  assertNonEmptyArray,
  assertNumberList,
  assertObject,
  assertString,
} from '../../src/core/internal.js';

const VALUES = {
  nothing: undefined,
  null: null,
  number: 3,
  text: 'x',
  flag: true,
  function: () => 1,
  object: { L: 50 },
  list: [1],
  Float64Array: Float64Array.of(1),
  Float32Array: Float32Array.of(1),
  BigInt64Array: BigInt64Array.of(1n),
  DataView: new DataView(new ArrayBuffer(8)),
};

describe.each([
  [assertObject, ['object']],
  [assertArray, ['list']],
  [assertNonEmptyArray, ['list']],
  [assertNumberList, ['list', 'Float64Array', 'Float32Array']],
  [assertFloat64Array, ['Float64Array']],
  [assertString, ['text']],
] as const)('%o', (check, accepted) => {
  test.each(Object.entries(VALUES))('%s', (name, value) => {
    const call = () => check(value, 'argument');
    if ((accepted as readonly string[]).includes(name)) expect(call).not.toThrow();
    else expect(call).toThrowError(expect.objectContaining({ code: 'wrong-type', path: 'argument' }));
  });
});

test('a list that must not be empty', () => {
  expect(() => assertNonEmptyArray([], 'points')).toThrowError(
    expect.objectContaining({ code: 'empty', path: 'points', received: [] }),
  );
});
