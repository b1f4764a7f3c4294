import { expect, test } from 'vitest';
import { fitDosageLadder } from '../../../src/fits/index.js';
import { noiseFrom } from '../noise.js';

// Seeded ladders of known truth, each dosage ground anew: how often does the dosage that is named give away more than the margin?
const SEED = 20263;
const LADDERS = 300;
const DOSAGES = [2, 4, 6, 8, 10, 12, 15, 18];
const TRUTHS: Readonly<Record<string, (dosage: number) => number>> = {
  'linear, then flat': (x) => Math.min(108, 84 + 2.4 * x),
  'quadratic plateau': (x) => 108 - 0.4 * Math.max(0, 10 - x) ** 2,
  saturating: (x) => 108 - 30 * Math.exp(-x / 3),
  'still rising': (x) => 90 + x,
  'with a peak': (x) => 108 - 0.25 * (x - 9) ** 2,
  'without effect': () => 100,
};

test.each(Object.entries(TRUTHS))(
  '%s: at most 6 % of ladders name a dosage outside the margin',
  (_, truth) => {
    const best = Math.max(...DOSAGES.map(truth));
    for (const [grinds, deviation] of [
      [2, 0.03],
      [3, 0.015],
      [5, 0.03],
    ]) {
      const noise = noiseFrom(SEED + grinds);
      let wrong = 0;
      let named = 0;
      for (let i = 0; i < LADDERS; i++) {
        const points = DOSAGES.map((dosage) => ({
          dosage,
          response: { grind: Array.from({ length: grinds }, () => truth(dosage) * (1 + deviation * noise())) },
        }));
        const { sufficient } = fitDosageLadder(points);
        if (!sufficient) continue;
        named++;
        if (truth(sufficient.dosage) < 0.98 * best) wrong++;
      }
      expect(wrong / LADDERS, `${grinds} grinds`).toBeLessThanOrEqual(0.06);
      // three grinds of 1.5 % decide most ladders
      if (grinds === 3) expect(named / LADDERS).toBeGreaterThanOrEqual(0.7);
    }
  },
  60_000,
);
