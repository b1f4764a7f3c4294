import { expect, test } from 'vitest';
import { conversionFactor } from '../../src/study/convert-unit.js';

// Prefixes: SI brochure, 9th edition (2019), table 7. 1 P = 0.1 Pa·s: the same, 8th edition, table 9.
test.each([
  ['Pa·s', 'mPa·s', 1000],
  ['mPa·s', 'Pa·s', 0.001],
  ['mPa s', 'mPa·s', 1],
  ['mPas', 'Pa*s', 0.001],
  ['cP', 'mPa·s', 1],
  ['µm', 'mm', 0.001],
  ['kg', 'g', 1000],
  ['min', 'h', 1 / 60],
  ['GU', 'GU', 1],
])('from %s to %s', (from, to, factor) => {
  expect(conversionFactor(from, to)).toBeCloseTo(factor, 11);
});

test.each([
  ['Pa·s', 'Pa'],
  ['GU', '%'],
  ['g', 'm'],
  ['kg/m³', 'g/l'],
])('%s and %s are not converted', (from, to) => {
  expect(conversionFactor(from, to)).toBeUndefined();
});
