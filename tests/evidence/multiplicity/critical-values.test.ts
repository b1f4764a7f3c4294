import jstat from 'jstat';
import { describe, expect, test } from 'vitest';
import { singleRate } from '../../../src/evidence/multiplicity/families.js';
import { loadingOf, manyToOneCritical, manyToOneProbability } from '../../../src/evidence/multiplicity/many-to-one.js';
import { studentizedRangeCritical } from '../../../src/evidence/multiplicity/studentized-range.js';
import { studentQuantile } from '../../../src/numeric/student-t.js';

const { jStat } = jstat;
const equal = (count: number) => Array<number>(count).fill(Math.SQRT1_2);

describe('many against one', () => {
  test('one comparison is Student’s t', () => {
    for (const n of [2, 5, 16, 100]) {
      const critical = manyToOneCritical(0.05, { loadings: equal(1), degreesOfFreedom: n, sided: 'two' });
      expect(critical).toBeCloseTo(studentQuantile(0.975, n), 4);
      // the integral itself, not the short cut of a single comparison
      const one = { loadings: equal(1), degreesOfFreedom: n, sided: 'two' } as const;
      expect(manyToOneProbability(critical, one)).toBeCloseTo(0.95, 4);
    }
  });

  test('comparisons that share nothing are independent', () => {
    const loadings = [0, 0, 0, 0];
    const critical = manyToOneCritical(0.05, { loadings, degreesOfFreedom: Number.POSITIVE_INFINITY, sided: 'two' });
    expect(critical).toBeCloseTo(jStat.normal.inv(0.5 + 0.95 ** 0.25 / 2, 0, 1), 3);
  });

  test('the two-sided value of seven trials on 16 degrees of freedom', () => {
    // 2.92: evidence of another quadrature; Dunnett (1964), Biometrics 20, 482, prints two-sided tables
    const critical = manyToOneCritical(0.05, { loadings: equal(7), degreesOfFreedom: 16, sided: 'two' });
    expect(critical).toBeCloseTo(2.92, 2);
  });

  test('loadings are rounded down, and that of equal sides is kept', () => {
    expect(loadingOf(1, 2)).toBeCloseTo(Math.SQRT1_2, 12);
    for (const share of [0.1, 0.3, 0.6, 0.99]) expect(loadingOf(share, 1)).toBeLessThanOrEqual(Math.sqrt(share) + 1e-9);
  });
});

describe('studentized range', () => {
  // scipy.stats.studentized_range 1.17; quadrature here is good to 1e-3 from two degrees of freedom on
  test.each([
    [3, 10, 3.87678],
    [5, 20, 4.23186],
    [8, 16, 4.89622],
    [10, 60, 4.64632],
    [3, 2, 8.33078],
    [10, 2, 13.98849],
  ])('%d means, %d degrees of freedom', (means, degreesOfFreedom, expected) => {
    expect(studentizedRangeCritical(0.05, means, degreesOfFreedom) / expected).toBeCloseTo(1, 2);
  });

  test('of two means it is √2 times Student’s t', () => {
    expect(studentizedRangeCritical(0.05, 2, 12)).toBeCloseTo(Math.SQRT2 * studentQuantile(0.975, 12), 4);
  });
});

describe('one rate for several families', () => {
  const family = { kind: 'many-to-one', loadings: equal(7), degreesOfFreedom: 16 } as const;

  test('of one family it is its own critical value', () => {
    const rate = singleRate(0.05, [family]);
    const critical = manyToOneCritical(0.05, { ...family, sided: 'two' });
    expect(studentQuantile(1 - rate / 2, 16)).toBeCloseTo(critical, 2);
  });

  test('families that are independent multiply', () => {
    const rate = singleRate(0.05, [family, family, family]);
    const critical = studentQuantile(1 - rate / 2, 16);
    expect(manyToOneProbability(critical, { ...family, sided: 'two' }) ** 3).toBeCloseTo(0.95, 3);
  });

  test('one comparison alone has the whole rate', () => {
    expect(singleRate(0.05, [{ kind: 'many-to-one', loadings: [0.7], degreesOfFreedom: 5 }])).toBe(0.05);
    expect(singleRate(0.05, [{ kind: 'pairs', means: 2, degreesOfFreedom: 5 }])).toBe(0.05);
  });

  test('pairs cost more than comparisons with one reference', () => {
    const pairs = singleRate(0.05, [{ kind: 'pairs', means: 8, degreesOfFreedom: 16 }]);
    expect(pairs).toBeLessThan(singleRate(0.05, [family]));
    expect(pairs).toBeGreaterThan(0.05 / 28);
  });
});
