import { describe, expect, test } from 'vitest';
import { colourDifference, deltaE2000 } from '../../src/colorimetry/index.js';
import { randomNumbers } from './random-numbers.js';

// Sharma, Wu & Dalal (2005): the formula is symmetric. At opposite hues rounding used to decide which of two mean hues is meant.

describe('CIEDE2000 is the same to the bit in either order', () => {
  test('of opposite hues with b* a hair above 0 on both sides', () => {
    const reference = { L: 50, a: -50, b: 1e-14 };
    const sample = { L: 60, a: 40, b: 1e-14 };
    const difference = deltaE2000(reference, sample);
    expect(deltaE2000(sample, reference)).toBe(difference);
    // Red has the smaller hue angle, so the mean hue is 90 degrees, as for b* = 0 on both sides.
    expect(difference).toBeCloseTo(deltaE2000({ ...reference, b: 0 }, { ...sample, b: 0 }), 9);
  });

  test('of 100,000 pairs of opposite hues, exactly, nearly and on the axes (seed 1305)', () => {
    const next = randomNumbers(1305);
    const hairs = [0, 1e-14, -1e-14, 1e-300, -1e-300];
    const hair = () => hairs[Math.floor(next() * hairs.length)];
    const unequal: string[] = [];
    for (let i = 0; i < 100_000; i++) {
      const angle = next() < 0.5 ? 2 * Math.PI * next() : (Math.PI / 2) * Math.floor(4 * next());
      const [C1, C2] = [100 * next(), 100 * next()];
      const reference = { L: 100 * next(), a: C1 * Math.cos(angle) + hair(), b: C1 * Math.sin(angle) + hair() };
      const sample = { L: 100 * next(), a: -C2 * Math.cos(angle) + hair(), b: -C2 * Math.sin(angle) + hair() };
      const there = colourDifference(reference, sample);
      const back = colourDifference(sample, reference);
      if (there.dE2000 !== back.dE2000 || there.dH + back.dH !== 0) unequal.push(JSON.stringify([reference, sample]));
    }
    expect(unequal).toEqual([]);
  });
});
