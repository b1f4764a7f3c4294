import fc from 'fast-check';
import { expect, test } from 'vitest';
import { spreadLabels } from '../../../src/report/charts/spread-labels.js';

const SEED = 20_240_613;

test(`labels keep apart, in order, and inside where they fit (seed ${SEED})`, () => {
  fc.assert(
    fc.property(
      fc.array(fc.double({ min: 0, max: 200, noNaN: true }), { minLength: 1, maxLength: 12 }),
      (positions) => {
        const placed = spreadLabels(positions, 12, 0, 200);
        const order = positions.map((_, i) => i).sort((i, j) => positions[i] - positions[j] || i - j);
        for (let k = 1; k < order.length; k++) {
          expect(placed[order[k]] - placed[order[k - 1]]).toBeGreaterThanOrEqual(12 - 1e-9);
        }
        for (const path of placed) {
          expect(path).toBeGreaterThanOrEqual(-1e-9);
          expect(path).toBeLessThanOrEqual(200 + 1e-9);
        }
      },
    ),
    { seed: SEED },
  );
});
