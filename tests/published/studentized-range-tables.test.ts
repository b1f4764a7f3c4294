import { expect, test } from 'vitest';
import { studentizedRangeCritical } from '../../src/evidence/multiplicity/studentized-range.js';

// Upper 5 % of the studentized range as textbooks print them after Harter (1960), Ann. Math. Stat. 31, 1122; transcribed from memory, and
// tests/evidence/multiplicity checks the same function against a library.

test.each([
  [3, 10, '3.88'],
  [5, 20, '4.23'],
  [8, 16, '4.90'],
  [10, 60, '4.65'],
])('%d means, %d degrees of freedom: %s', (means, degreesOfFreedom, printed) => {
  const range = studentizedRangeCritical(0.05, means, degreesOfFreedom);
  expect(Math.abs(range - Number(printed))).toBeLessThanOrEqual(0.0050001);
});
