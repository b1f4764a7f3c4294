import { describe, expect, test } from 'vitest';
import { manyToOneCritical } from '../../src/evidence/multiplicity/many-to-one.js';

// Dunnett (1955), J. Am. Stat. Assoc. 50, 1096-1121, table 1a: one-sided 5 %, equal numbers of readings, so that any two comparisons are
// correlated by a half. Printed with two decimals; that for 7 and 60 is 2.39544 by an independent quadrature (scipy), so that the table, which was
// interpolated there, is half a thousandth further off than its last digit says.

const TREATMENTS = [2, 3, 5, 7, 9];
const TABLE: [number, string[]][] = [
  [10, ['2.15', '2.34', '2.56', '2.70', '2.81']],
  [16, ['2.06', '2.23', '2.43', '2.56', '2.65']],
  [20, ['2.03', '2.19', '2.39', '2.51', '2.60']],
  [60, ['1.95', '2.10', '2.28', '2.39', '2.48']],
  [Number.POSITIVE_INFINITY, ['1.92', '2.06', '2.23', '2.34', '2.42']],
];

describe('Dunnett, one-sided 5 %', () => {
  const rows = TABLE.flatMap(([n, values]) => values.map((printed, i) => ({ n, count: TREATMENTS[i], printed })));
  test.each(rows)('$count treatments, $n degrees of freedom: $printed', ({ n, count, printed }) => {
    const loadings = Array<number>(count).fill(Math.SQRT1_2);
    const critical = manyToOneCritical(0.05, { loadings, degreesOfFreedom: n, sided: 'one' });
    expect(Math.abs(critical - Number(printed))).toBeLessThanOrEqual(0.0055);
  });
});
