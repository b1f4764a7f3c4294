import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { kOverS, kOverSRows, reflectanceFromKOverS } from '../../src/strength/index.js';
import { absoluteError, exact, relativeError } from '../strength/exact.js';

const SEED = 20260;

/** Reflectances spread evenly in the logarithm from both ends: 1e-12 to 1, and as close to 1. */
const reflectances = fc.oneof(
  fc.double({ min: -12, max: 0, noNaN: true }).map((log) => 10 ** log),
  fc.double({ min: -16, max: 0, noNaN: true }).map((log) => Math.max(1 - 10 ** log, 1e-12)),
);
const ratios = fc.double({ min: -40, max: 40, noNaN: true }).map((log) => 10 ** log);

describe('against arithmetic of 100 digits', () => {
  test(`K/S keeps 13 digits (seed ${SEED})`, () => {
    fc.assert(
      fc.property(reflectances, (reflectance) => {
        const R = exact(reflectance);
        const truth = exact(1).sub(R).pow(2).div(R.mul(2));
        expect(relativeError(kOverS(reflectance), truth)).toBeLessThanOrEqual(1e-15);
      }),
      { seed: SEED, numRuns: 300 },
    );
  });

  test(`reflectance keeps 12 decimals and 13 digits, even where K/S is 1e40 (seed ${SEED})`, () => {
    fc.assert(
      fc.property(ratios, (ratio) => {
        const F = exact(ratio);
        const truth = exact(1).div(F.add(1).add(F.mul(F).add(F.mul(2)).sqrt()));
        const reflectance = reflectanceFromKOverS(ratio);
        expect(absoluteError(reflectance, truth)).toBeLessThanOrEqual(1e-15);
        expect(relativeError(reflectance, truth)).toBeLessThanOrEqual(1e-15);
      }),
      { seed: SEED, numRuns: 300 },
    );
  });

  test('the largest double is no overflow', () => {
    expect(reflectanceFromKOverS(Number.MAX_VALUE)).toBeCloseTo(0.5 / Number.MAX_VALUE, 320);
    expect(reflectanceFromKOverS(Number.MAX_VALUE)).toBeGreaterThan(0);
  });
});

test(`round trip (seed ${SEED})`, () => {
  fc.assert(
    fc.property(reflectances, (reflectance) => {
      // Near 1 a double has no room for more: R = 1 - x gives F = x²/2, and x comes back from its square root.
      expect(Math.abs(reflectanceFromKOverS(kOverS(reflectance)) - reflectance)).toBeLessThanOrEqual(4.5e-16);
    }),
    { seed: SEED, numRuns: 500 },
  );
});

test('less reflectance is more K/S', () => {
  const rising = Array.from({ length: 200 }, (_, i) => 10 ** (-12 + (i * 12) / 199)).map(kOverS);
  for (let i = 1; i < rising.length; i++) expect(rising[i]).toBeLessThan(rising[i - 1]);
});

describe('batch', () => {
  const values = Float64Array.from({ length: 100 }, (_, i) => (i + 1) / 100);

  test('equals the single form to the bit', () => {
    expect(Array.from(kOverSRows(values))).toEqual(Array.from(values, kOverS));
  });

  test('fills and returns out, and leaves its input alone', () => {
    const out = new Float64Array(100);
    const before = Array.from(values);
    expect(kOverSRows(values, out)).toBe(out);
    expect(Array.from(values)).toEqual(before);
  });

  test.each([
    [0, 'zero-reflectance'],
    [-0, 'zero-reflectance'],
    [1e-310, 'zero-reflectance'],
    [1.01, 'reflectance-out-of-range'],
    [-0.1, 'reflectance-out-of-range'],
    [Number.NaN, 'not-finite'],
  ])('%d is refused with its index', (bad, code) => {
    expect(() => kOverSRows(Float64Array.of(0.5, bad))).toThrow(expect.objectContaining({ code, path: 'values[1]' }));
  });

  test('out of another length is refused', () => {
    const fault = { code: 'wrong-length', path: 'out.length', received: 3 };
    expect(() => kOverSRows(values, new Float64Array(3))).toThrow(expect.objectContaining(fault));
  });
});

describe('refused', () => {
  test.each([
    [0, 'zero-reflectance'],
    [-0, 'zero-reflectance'],
    [1e-310, 'zero-reflectance'],
    [-1e-9, 'reflectance-out-of-range'],
    [1.0000001, 'reflectance-out-of-range'],
    [Number.POSITIVE_INFINITY, 'not-finite'],
    [Number.NaN, 'not-finite'],
  ])('a reflectance of %d', (reflectance, code) => {
    expect(() => kOverS(reflectance)).toThrow(expect.objectContaining({ code, path: 'reflectance' }));
  });

  test.each([
    [-1e-300, 'out-of-range'],
    [Number.POSITIVE_INFINITY, 'not-finite'],
    [Number.NaN, 'not-finite'],
  ])('a K/S of %d', (ratio, code) => {
    expect(() => reflectanceFromKOverS(ratio)).toThrow(expect.objectContaining({ code, path: 'K/S' }));
  });
});
