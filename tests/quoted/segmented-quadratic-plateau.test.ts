import { expect, test } from 'vitest';
import { fitDosageLadder } from '../../src/fits/index.js';

// The quadratic-plateau example of the SAS/STAT User's Guide, procedure NLIN, "Segmented Model": join point 12.7477 and
// plateau 0.7775. Data and figures quoted from memory; scipy's least_squares on these data gives the same two figures.
const Y = [0.46, 0.47, 0.57, 0.61, 0.62, 0.68, 0.69, 0.78, 0.7, 0.74, 0.77, 0.78, 0.74, 0.8, 0.8, 0.78];
const X = [1, 2, 3, 4, 5, 6, 7, 8, 9, 10, 11, 12, 13, 13, 15, 16];

test('segmented model', () => {
  const fit = fitDosageLadder(
    [...new Set(X)].map((dosage) => ({ dosage, response: { weighing: Y.filter((_, i) => X[i] === dosage) } })),
  );
  expect(fit.outcome).toBe('plateau');
  expect(fit.plateau?.dosage).toBeCloseTo(12.7477, 4);
  expect(fit.plateau?.response).toBeCloseTo(0.7775, 4);
});
