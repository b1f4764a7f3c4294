import { expect, test } from 'vitest';
import { replicatesNeeded } from '../../src/strength/index.js';

// Cohen (1992), A power primer, Psychol. Bull. 112, Table 2, first row: readings a side for the difference of two means at
// power 0.80 and a medium (0.5 s) or large (0.8 s) difference. Transcribed from memory;
// tests/strength/replicates-needed.test.ts checks against the noncentral t of a reference library.
test.each([
  [0.01, 0.5, 95],
  [0.01, 0.8, 38],
  [0.05, 0.5, 64],
  [0.05, 0.8, 26],
  [0.1, 0.5, 50],
  [0.1, 0.8, 20],
])('α = %d, a difference of %d standard deviations: %d', (alpha, difference, printed) => {
  const needed = replicatesNeeded({ standardDeviation: 1, difference, level: 1 - alpha, power: 0.8 });
  // The printed sizes are rounded from tables of power and may lie one below the size that reaches the power.
  expect(needed - printed).toBeGreaterThanOrEqual(0);
  expect(needed - printed).toBeLessThanOrEqual(1);
});
