import fc from 'fast-check';
import jstat from 'jstat';
import { describe, expect, test } from 'vitest';
import { lengthInterval } from '../../src/evidence/length-interval.js';

const SEED = 37;
const known = Number.POSITIVE_INFINITY;
const evenly = (variance: number) => [variance, 0, 0, 0, variance, 0, 0, 0, variance];
const at = (length: number) => [length, 0, 0] as const;

/**
 * Probability that a point of the three-dimensional normal distribution, unit variance, r from the origin, lies within x of
 * the origin: the noncentral chi distribution with three degrees of freedom, in closed form (Johnson, Kotz & Balakrishnan,
 * Continuous Univariate Distributions, vol. 2, chapter on noncentral chi-square).
 */
function withinOrigin(x: number, r: number): number {
  const below = (z: number) => jstat.jStat.normal.cdf(z, 0, 1);
  const density = (z: number) => Math.exp(-(z * z) / 2) / Math.sqrt(2 * Math.PI);
  return below(x - r) - below(-x - r) - (density(x - r) - density(x + r)) / r;
}

describe('the interval of a length with known noise, even in all directions', () => {
  test.each([3.2, 4, 6, 10])('at %d standard deviations its ends leave out 5 %% together', (found) => {
    const interval = lengthInterval({ vector: at(found), covariance: evenly(1), degreesOfFreedom: known });
    const { low = Number.NaN, high = Number.NaN } = interval ?? {};
    const below = (r: number) => 0.025 * (1 - Math.exp((-r * r) / 8));
    expect(withinOrigin(found, low)).toBeCloseTo(1 - 0.05 + below(low), 3);
    expect(withinOrigin(found, high)).toBeCloseTo(below(high), 3);
  });

  test('it leaves zero where chi-square with three degrees of freedom passes its 95 % point, 7.815 (any table)', () => {
    const low = (square: number) =>
      lengthInterval({ vector: at(Math.sqrt(square)), covariance: evenly(1), degreesOfFreedom: known })?.low;
    expect(low(7.8)).toBe(0);
    expect(low(7.83)).toBeGreaterThan(0);
  });
});

describe('the interval of a length with noise estimated from spots', () => {
  test.each([2, 4, 8])('far from zero it is that of Student with %d degrees of freedom', (degreesOfFreedom) => {
    const interval = lengthInterval({ vector: at(1000), covariance: evenly(1), degreesOfFreedom });
    const reach = jstat.jStat.studentt.inv(0.975, degreesOfFreedom);
    expect(interval?.low).toBeCloseTo(1000 - reach, 1);
    expect(interval?.high).toBeCloseTo(1000 + reach, 1);
  });

  test('far from zero only the noise along the difference counts', () => {
    const covariance = [0.01, 0, 0, 0, 4, 0, 0, 0, 4];
    const interval = lengthInterval({ vector: at(1000), covariance, degreesOfFreedom: known });
    expect(interval?.high).toBeCloseTo(1000 + 1.96 * 0.1, 2);
  });

  test.each([4, known])(
    'noise across the difference alone only lengthens it: F of 2 and %d degrees of freedom',
    (n) => {
      // So far away that nothing of the noise is taken to lie along. The 97.5 % point of F with 2 and n degrees of freedom is
      // n/2 (0.025^(-2/n) - 1), in the limit -ln 0.025; the squares of both components together are 2 F.
      const point = n === known ? -Math.log(0.025) : (n / 2) * (0.025 ** (-2 / n) - 1);
      const covariance = [0, 0, 0, 0, 1, 0, 0, 0, 1];
      const interval = lengthInterval({ vector: at(2e4), covariance, degreesOfFreedom: n });
      expect(interval?.high).toBe(2e4);
      // within twice the tolerance of the search for the end, 1e-6 of the noise
      expect(Math.abs(2e4 - (interval?.low ?? 0) - (2 * point) / (2 * 2e4))).toBeLessThan(2e-6);
    },
  );

  test('noise along the difference alone is that of Student, 2.776 at 4 degrees of freedom (any table)', () => {
    const covariance = [1, 0, 0, 0, 0, 0, 0, 0, 0];
    const interval = lengthInterval({ vector: at(2e4), covariance, degreesOfFreedom: 4 });
    expect(interval?.low).toBeCloseTo(2e4 - 2.776, 2);
    expect(interval?.high).toBeCloseTo(2e4 + 2.776, 2);
  });

  test.each([
    [10, 8e-16],
    [2 ** 60, 100],
  ])('of %d with noise of %d, half of its last digit or less, is the length itself', (length, noise) => {
    // doubles lie 2^-49 = 1.8e-15 apart from 8 to 16, and 2^8 = 256 from 2^60 on
    const interval = lengthInterval({ vector: at(length), covariance: evenly(noise ** 2), degreesOfFreedom: known });
    expect(interval).toEqual({ low: length, high: length });
  });

  test('without any noise there is none', () => {
    expect(lengthInterval({ vector: at(1), covariance: evenly(0), degreesOfFreedom: 4 })).toBeUndefined();
  });

  test('a length of zero has an upper end all the same', () => {
    const interval = lengthInterval({ vector: at(0), covariance: evenly(0.01), degreesOfFreedom: 4 });
    expect(interval?.low).toBe(0);
    expect(interval?.high).toBeGreaterThan(0.1);
  });

  const coordinate = fc.double({ min: -3, max: 3, noNaN: true });
  const root = fc.array(fc.double({ min: -1, max: 1, noNaN: true }), { minLength: 9, maxLength: 9 });
  const vector = fc.tuple(coordinate, coordinate, coordinate);
  const freedom = fc.constantFrom(1, 2, 4, 8, known);
  const squareOf = (r: readonly number[]) =>
    Array.from({ length: 9 }, (_, k) =>
      [0, 1, 2].reduce((sum, m) => sum + r[3 * Math.floor(k / 3) + m] * r[3 * (k % 3) + m], 0),
    );

  test(`it holds the length, has finite ends >= 0 and follows the unit (seed ${SEED})`, () => {
    fc.assert(
      fc.property(vector, root, freedom, (v, r, degreesOfFreedom) => {
        const covariance = squareOf(r);
        const interval = lengthInterval({ vector: v, covariance, degreesOfFreedom });
        if (!interval) return;
        const { low, high } = interval;
        expect(low).toBeGreaterThanOrEqual(0);
        expect(low).toBeLessThanOrEqual(Math.hypot(...v));
        expect(high).toBeGreaterThanOrEqual(Math.hypot(...v));
        expect(high).toBeLessThan(Number.POSITIVE_INFINITY);
        const scaled = lengthInterval({
          vector: [v[0] * 10, v[1] * 10, v[2] * 10],
          covariance: covariance.map((value) => value * 100),
          degreesOfFreedom,
        });
        expect(scaled?.high).toBeCloseTo(high * 10, 2);
        expect(scaled?.low).toBeCloseTo(low * 10, 2);
      }),
      { seed: SEED, numRuns: 60 },
    );
  });
});

describe('the interval of a length with uneven noise (regression values of our own run; tests/rubout/simulation.test.ts holds the claim)', () => {
  const slanted = [0.02, 0.01, -0.004, 0.01, 0.05, 0.006, -0.004, 0.006, 0.01];
  /** Of two spots: all along (0.1, 0.2, -0.1). */
  const ofTwo = [0.01, 0.02, -0.01, 0.02, 0.04, -0.02, -0.01, -0.02, 0.01];
  const flat = [0.04, 0, 0, 0, 0.0004, 0, 0, 0, 0.0004];

  test.each<[string, readonly [number, number, number], readonly number[], number, number, number]>([
    ['slanted noise, five spots a side', [0.5, -0.3, 0.2], slanted, 8, 0.2192, 0.8479],
    ['slanted noise, two spots a side', [0.5, -0.3, 0.2], slanted, 2, 0, 0.8853],
    ['slanted noise, known', [0.5, -0.3, 0.2], slanted, known, 0.2334, 0.8408],
    ['flat noise, along it', [0.5, 0, 0], flat, 4, 0.0558, 1.0382],
    ['flat noise, across it', [0, 0.5, 0], flat, 4, 0.0556, 0.595],
    ['flat noise, no difference', [0, 0, 0], flat, 4, 0, 0.4641],
    ['one degree of freedom, no difference', [0, 0, 0], ofTwo, 1, 0, 0.4437],
    ['one degree of freedom, a little away', [0.5, -0.3, 0.2], ofTwo, 1, 0, 0.7984],
    ['even noise, no difference, two degrees of freedom', [0, 0, 0], evenly(0.01), 2, 0, 0.1774],
    ['even noise, near zero', [0.03, 0.02, 0.01], evenly(0.01), 4, 0, 0.1754],
    ['even noise, a little away', [0.3, 0.1, 0.1], evenly(0.01), 4, 0.0356, 0.5305],
    ['even noise, no difference, known', [0, 0, 0], evenly(0.01), known, 0, 0.171],
  ])('%s', (_, found, covariance, degreesOfFreedom, low, high) => {
    const interval = lengthInterval({ vector: found, covariance, degreesOfFreedom });
    expect(interval?.low).toBeCloseTo(low, 4);
    expect(interval?.high).toBeCloseTo(high, 4);
  });
});
