import { differenceCiede2000 } from 'culori';
import fc from 'fast-check';
import { expect, test } from 'vitest';
import { evenSpace } from '../../src/rubout/even-space.js';

const SEED = 41;
const ciede2000 = differenceCiede2000();

// culori is an independent implementation of ISO/CIE 11664-6; it wants the colours as `lab65`, whatever their white.
const oracle = (one: readonly number[], other: readonly number[]) => {
  const [first, second] = [one, other].map(([l, a, b]) => ({ mode: 'lab65' as const, l, a, b }));
  return ciede2000(first, second);
};

test(`the length of a small difference is its ΔE00, in any direction from any colour (culori, seed ${SEED})`, () => {
  const coordinate = fc.double({ min: -80, max: 80, noNaN: true });
  const step = fc.double({ min: -0.05, max: 0.05, noNaN: true });
  fc.assert(
    fc.property(
      fc.tuple(fc.double({ min: 5, max: 95, noNaN: true }), coordinate, coordinate),
      fc.tuple(step, step, step),
      ([L, a, b], [dL, da, db]) => {
        // At the neutral axis and at the hue of 275 degrees, where the formula turns fastest, no map is even for long.
        fc.pre(Math.hypot(a, b) > 5);
        const expected = oracle([L - dL / 2, a - da / 2, b - db / 2], [L + dL / 2, a + da / 2, b + db / 2]);
        const mapped = evenSpace({ L, a, b })({ L: dL, a: da, b: db });
        const found = Math.hypot(mapped.L, mapped.a, mapped.b);
        expect(Math.abs(found - expected)).toBeLessThan(0.002 * expected + 1e-6);
      },
    ),
    { seed: SEED, numRuns: 300 },
  );
});
