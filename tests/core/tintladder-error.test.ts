import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { ERROR_CODES, FAULT_KINDS, TintladderError } from '../../src/core/index.js';

const FAULT = {
  path: 'reflectance at 430 nm (index 3)',
  received: 57.2,
  expected: 'a fraction from 0 to 2',
  hint: "Pass scale: 'percent'?",
};

test('the message is made of path, value expected, value received and what to do', () => {
  const error = new TintladderError('reflectance-out-of-range', FAULT);
  expect(error.message).toBe(
    "reflectance at 430 nm (index 3): expected a fraction from 0 to 2, got 57.2. Pass scale: 'percent'?",
  );
  expect(error).toBeInstanceOf(Error);
  expect(error).toMatchObject({ name: 'TintladderError', code: 'reflectance-out-of-range', kind: 'data', ...FAULT });
});

test('without a hint there is no such property', () => {
  const error = new TintladderError('empty', { path: 'points', received: [], expected: 'a list of at least one' });
  expect('hint' in error).toBe(false);
});

describe('kind', () => {
  test.each([
    ['not-finite', 'argument'],
    ['film-opaque', 'data'],
    ['truncated', 'file'],
    ['study-invalid', 'study'],
  ] as const)('%s is a fault of kind %s', (code, kind) => {
    expect(new TintladderError(code, FAULT).kind).toBe(kind);
  });

  test('the place of the fault may say otherwise', () => {
    expect(new TintladderError('out-of-range', { ...FAULT, kind: 'file' }).kind).toBe('file');
  });

  test('every code has one', () => {
    for (const code of ERROR_CODES) expect(FAULT_KINDS).toContain(new TintladderError(code, FAULT).kind);
    expect(new Set(ERROR_CODES).size).toBe(ERROR_CODES.length);
  });
});

describe('received', () => {
  const receivedOf = (received: unknown) =>
    new TintladderError('malformed', { path: 'line 3', received, expected: 'a number' }).received;

  test('is the value itself, if it is short', () => {
    for (const value of ['x', 1.5, true, null, undefined, NaN, Infinity]) expect(receivedOf(value)).toBe(value);
    expect(receivedOf({ L: 50, a: [1, 2] })).toEqual({ L: 50, a: [1, 2] });
  });

  test('is a copy, so that it stays what it was', () => {
    const list = [1, 2];
    const received = receivedOf(list);
    list.push(3);
    expect(received).toEqual([1, 2]);
  });

  test('is a list for a typed array, and names a number that JSON has not', () => {
    expect(receivedOf(Float64Array.of(1, NaN))).toEqual([1, 'NaN']);
  });

  test('is cut to 200 characters', () => {
    expect(receivedOf('x'.repeat(500))).toBe(`${'x'.repeat(199)}…`);
    expect(receivedOf(new Float64Array(1e6))).toMatch(/^\[0,0,.{194}…$/);
    expect(receivedOf('x'.repeat(200))).toBe('x'.repeat(200));
  });

  test('is shorter still in the message', () => {
    const error = new TintladderError('malformed', { path: 'line 3', received: 'x'.repeat(500), expected: 'a number' });
    expect(error.message.length).toBeLessThan(120);
  });
});

describe('back from plain data', () => {
  const error = new TintladderError('reflectance-out-of-range', FAULT);

  test.each([
    ['JSON', (given: TintladderError) => JSON.parse(JSON.stringify(given))],
    ['a structured clone of toJSON', (given: TintladderError) => structuredClone(given.toJSON())],
  ])('from %s an error keeps its class, message and parts', (_, through) => {
    const back = TintladderError.from(through(error));
    expect(back).toBeInstanceOf(TintladderError);
    expect(back.message).toBe(error.message);
    expect(back.toJSON()).toEqual(error.toJSON());
  });

  test.each([
    undefined,
    null,
    'x',
    [],
    {},
    new Error('x'),
    { ...error.toJSON(), code: 'none' },
    { ...error.toJSON(), hint: 1 },
  ])('%o is refused', (plain) => {
    expect(() => TintladderError.from(plain)).toThrowError(
      expect.objectContaining({ code: 'wrong-type', path: 'plain' }),
    );
  });
});

test('whatever was received, telling of it does not fail and survives JSON and a structured clone (seed 5)', () => {
  const circular: { self?: unknown } = {};
  circular.self = circular;
  const getter = Object.defineProperty({}, 'value', {
    enumerable: true,
    get: () => {
      throw new Error('no');
    },
  });
  const odd = [
    circular,
    getter,
    10n,
    { big: 10n },
    Symbol('s'),
    undefined,
    null,
    () => 1,
    new Map([[1, 2]]),
    -Infinity,
  ];
  const survives = (received: unknown) => {
    const error = new TintladderError('malformed', { path: 'p', received, expected: 'e' });
    expect(error.message).toMatch(/^p: expected e, got .*\.$/su);
    expect(JSON.stringify(error.received ?? null).length).toBeLessThanOrEqual(600);
    for (const plain of [JSON.parse(JSON.stringify(error)), structuredClone(error.toJSON())]) {
      expect(TintladderError.from(plain).toJSON()).toEqual(error.toJSON());
    }
  };
  odd.forEach(survives);
  fc.assert(fc.property(fc.anything(), survives), { seed: 5 });
});
