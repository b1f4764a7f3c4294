import { describe, expect, test } from 'vitest';
import { fisherQuantile, studentQuantile } from '../../src/numeric/student-t.js';

// Upper critical values as the tables of the NIST/SEMATECH e-Handbook of Statistical Methods print them: 1.3.6.7.2 (Student's
// t) and 1.3.6.7.3 (F). Transcribed from memory; tests/strength/student-t.test.ts checks the same functions against a
// reference library.

const PROBABILITIES = [0.95, 0.975, 0.99, 0.995];
const T: [number, string[]][] = [
  [1, ['6.314', '12.706', '31.821', '63.657']],
  [2, ['2.920', '4.303', '6.965', '9.925']],
  [3, ['2.353', '3.182', '4.541', '5.841']],
  [4, ['2.132', '2.776', '3.747', '4.604']],
  [5, ['2.015', '2.571', '3.365', '4.032']],
  [10, ['1.812', '2.228', '2.764', '3.169']],
  [20, ['1.725', '2.086', '2.528', '2.845']],
  [30, ['1.697', '2.042', '2.457', '2.750']],
  [Number.POSITIVE_INFINITY, ['1.645', '1.960', '2.326', '2.576']],
];

describe("Student's t", () => {
  const rows = T.flatMap(([n, values]) => values.map((printed, i) => ({ n, p: PROBABILITIES[i], printed })));
  test.each(rows)('p = $p, $n degrees of freedom: $printed', ({ n, p, printed }) => {
    expect(Math.abs(studentQuantile(p, n) - Number(printed))).toBeLessThanOrEqual(0.0005001);
    expect(Math.abs(studentQuantile(1 - p, n) + Number(printed))).toBeLessThanOrEqual(0.0005001);
  });
});

describe('F, upper 5 %', () => {
  test.each([
    [1, 5, '6.608'],
    [2, 10, '4.103'],
    [3, 20, '3.098'],
    [5, 10, '3.326'],
    [10, 10, '2.978'],
  ])('%d and %d degrees of freedom: %s', (numerator, denominator, printed) => {
    expect(Math.abs(fisherQuantile(0.95, numerator, denominator) - Number(printed))).toBeLessThanOrEqual(0.0005001);
  });
});
