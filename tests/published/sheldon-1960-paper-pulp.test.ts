import { expect, test } from 'vitest';
import { varianceComponents } from '../../src/evidence/index.js';

// Brightness of paper pulp by four operators, five sheets each: Sheldon (1960), data and result in Faraway (2016), Extending the Linear
// Model with R, section 10.1: residual variance 0.10625, between operators 0.0681, by analysis of variance and by REML alike. Operators stand
// here for weigh-ups, sheets for spots: any two nested levels have the same arithmetic.

const OPERATORS = [
  [59.8, 60, 60.8, 60.8, 59.8],
  [59.8, 60.2, 60.4, 59.9, 60],
  [60.7, 60.7, 60.5, 60.9, 60.3],
  [61, 60.8, 60.6, 60.5, 60.5],
];

test('the components of the pulp data', () => {
  const { components } = varianceComponents([{ weighing: OPERATORS.map((spot) => ({ spot })) }]);
  const [operators, sheets] = components.map(({ standardDeviation }) => standardDeviation ** 2);
  expect(Math.abs(sheets - 0.10625)).toBeLessThanOrEqual(0.000005);
  expect(Math.abs(operators - 0.0681)).toBeLessThanOrEqual(0.00005);
  expect(components.map(({ meanSquareDegreesOfFreedom }) => meanSquareDegreesOfFreedom)).toEqual([3, 16]);
});
