import jstat from 'jstat';
import { describe, expect, test } from 'vitest';
import { replicatesNeeded } from '../../src/strength/index.js';

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
])('%s of %d is refused', (name, seen) => {
  expect(() => replicatesNeeded({ standardDeviation: 1, difference: 1, [name]: seen })).toThrow(
    expect.objectContaining({ code: 'invalid-option', place: `options.${name}`, seen }),
  );
});
