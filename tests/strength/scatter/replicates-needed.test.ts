import jstat from 'jstat';
import { describe, expect, test } from 'vitest';
import { replicatesNeeded } from '../../../src/strength/index.js';

const { studentt, noncentralt } = jstat.jStat;

/** Power of a two-sided t test with n readings a side: the exact form by the noncentral t. */
function power(n: number, difference: number, level: number): number {
  const degreesOfFreedom = 2 * n - 2;
  const noncentrality = difference * Math.sqrt(n / 2);
  const t = studentt.inv((1 + level) / 2, degreesOfFreedom);
  return 1 - noncentralt.cdf(t, degreesOfFreedom, noncentrality) + noncentralt.cdf(-t, degreesOfFreedom, noncentrality);
}

describe("within one reading of the exact answer by jstat's noncentral t", () => {
  test.each([0.9, 0.95, 0.99])('level %d', (level) => {
    for (const wanted of [0.8, 0.9, 0.95]) {
      for (const difference of [0.5, 0.8, 1, 1.5, 2, 3, 5]) {
        let exact = 2;
        while (power(exact, difference, level) < wanted) exact++;
        const needed = replicatesNeeded({ standardDeviation: 1, difference, level, power: wanted });
        expect(Math.abs(needed - exact)).toBeLessThanOrEqual(1);
      }
    }
  });
});

// t(0.975) and t(0.9) with 4, 6, 8 and 10 degrees of freedom are 2.776 and 1.533, 2.447 and 1.440, 2.306 and 1.397, 2.228 and
// 1.372 (NIST/SEMATECH e-Handbook, 1.3.6.7.2), so 3, 4, 5 and 6 readings a side suffice up to a scatter of
// √(n/2) / (t + t) = 0.284, 0.364, 0.427 and 0.481 of the difference.
test.each([
  [0.28, 3],
  [0.29, 4],
  [0.36, 4],
  [0.37, 5],
  [0.42, 5],
  [0.43, 6],
])('by hand, a scatter of %d of the difference needs %d readings a side for a power of 0.9', (ratio, count) => {
  expect(replicatesNeeded({ standardDeviation: ratio, difference: 1, power: 0.9 })).toBe(count);
});

test('only the ratio of scatter and difference counts, and two readings are the least', () => {
  expect(replicatesNeeded({ standardDeviation: 2, difference: 1 })).toBe(
    replicatesNeeded({ standardDeviation: 0.02, difference: 0.01 }),
  );
  expect(replicatesNeeded({ standardDeviation: 1e-6, difference: 1 })).toBe(2);
});

test('a hopeless case is a large number, found at once', () => {
  // 2 (1.959964 + 0.841621)² · 10^10
  expect(replicatesNeeded({ standardDeviation: 1e5, difference: 1 }) / 1.569776e11).toBeCloseTo(1, 5);
});

test.each([
  ['standardDeviation', 0],
  ['standardDeviation', Number.NaN],
  ['difference', 0],
  ['difference', -1],
  ['level', 1],
  ['level', 0],
  ['power', 0.4],
  ['power', 1],
])('%s of %d is refused', (name, received) => {
  expect(() => replicatesNeeded({ standardDeviation: 1, difference: 1, [name]: received })).toThrow(
    expect.objectContaining({ code: 'invalid-option', path: `options.${name}`, received }),
  );
});

test('a power of one half is the least', () => {
  expect(replicatesNeeded({ standardDeviation: 1, difference: 1, power: 0.5 })).toBeLessThan(
    replicatesNeeded({ standardDeviation: 1, difference: 1, power: 0.8 }),
  );
  expect(() => replicatesNeeded({ standardDeviation: 1, difference: 1, power: 0.49 })).toThrow(
    expect.objectContaining({ path: 'options.power' }),
  );
});

test.each(['standardDeviation', 'difference'])('an endless %s is refused', (name) => {
  const given = { standardDeviation: 1, difference: 1, [name]: Number.POSITIVE_INFINITY };
  expect(() => replicatesNeeded(given)).toThrow(expect.objectContaining({ path: `options.${name}` }));
});
