import { describe, expect, test } from 'vitest';
import { type CauseModel, misfitOf } from '../../src/rubout/misfit.js';
import type { SpectralNoise } from '../../src/rubout/spectral-noise.js';
import { randomFrom } from './random.js';

const N = 31;
const row = (value: (i: number) => number) => Float64Array.from({ length: N }, (_, i) => value(i));
const flat = row(() => 1);
const bell = row((i) => Math.exp(-(((i - 15) / 5) ** 2)));
const model = (shape: Float64Array, least = Number.NEGATIVE_INFINITY): CauseModel => ({
  start: [0],
  least: [least],
  curve: ([size]) => shape.map((value) => size * value),
  roughness: 0,
  tolerance: () => [],
});
const known: SpectralNoise = {
  terms: [{ shape: flat, variance: 1, degreesOfFreedom: Number.POSITIVE_INFINITY }],
  bands: 0.01,
  directions: N,
  degreesOfFreedom: 1e6,
};

describe('a cause that is fitted to a change', () => {
  test('comes back with its size', () => {
    const { sizes, probability } = misfitOf(
      bell.map((value) => 3 * value),
      model(bell),
      known,
    );
    expect(sizes[0]).toBeCloseTo(3, 6);
    expect(probability).toBeCloseTo(1, 3);
  });

  test('is held at its least size', () => {
    expect(
      misfitOf(
        bell.map((value) => -3 * value),
        model(bell, 0),
        known,
      ).sizes,
    ).toEqual([0]);
  });

  test('leaves what it can not explain, which the noise makes improbable', () => {
    expect(misfitOf(bell, model(flat), known).probability).toBeLessThan(1e-6);
  });

  test('has a misfit below 1 % in about 1 % of changes that are noise, whose size is known (seed 3)', () => {
    const { normal } = randomFrom(3);
    let below = 0;
    const trials = 2000;
    for (let k = 0; k < trials; k++) {
      const offset = normal();
      const change = bell.map((value) => 2 * value + offset + 0.1 * normal());
      if (misfitOf(change, model(bell), known).probability < 0.01) below++;
    }
    // 20 are expected; within four standard deviations of such a count
    expect(below).toBeGreaterThan(3);
    expect(below).toBeLessThan(38);
  });
});
