import { describe, expect, test } from 'vitest';
import { D65_10, type Spectrum } from '../../../src/colorimetry/index.js';
import { relativeTintingStrength, STRENGTH_CRITERIA, type StrengthCriterion } from '../../../src/strength/index.js';
import { bell, normalFrom, PAINT_SURFACE, randomFrom, reduction } from '../simulated-reductions.js';

// Seeded studies of known strength: how often does the 95 % interval hold the truth? Each study has its own scatter: films of one
// side differ in strength by 0.5 to 1.5 % (one standard deviation), and readings by an offset, a tilt and a little noise of
// each wavelength that together make a ΔE*ab of about 0.03 to 0.15.

const STUDIES = 2000;
const SEED = 20263;
const COLORANT = bell(560, 45, 0.8, 0.02);
const surface = PAINT_SURFACE;

interface Study {
  readonly strength: number;
  readonly reference: readonly Spectrum[];
  readonly trial: readonly Spectrum[];
  readonly white: readonly Spectrum[];
}

function* studies(readings: number, seed: number, spread: () => number): Generator<Study> {
  const uniform = randomFrom(seed);
  const normal = normalFrom(seed + 1);
  const between = (low: number, high: number) => low + (high - low) * uniform();
  for (let i = 0; i < STUDIES; i++) {
    const noise = between(0.0001, 0.0005);
    const reading = (amount: number) => {
      const [offset, tilt] = [normal() * noise, normal() * noise];
      const shift = (wavelength: number) => offset + (tilt * (wavelength - 550)) / 300 + 0.3 * noise * normal();
      return reduction(COLORANT, amount, { surface, shift, grid: { start: 400, step: 10, count: 31 } });
    };
    const scatter = spread() * between(0.005, 0.015);
    const side = (amount: number, deviation: number) =>
      Array.from({ length: readings }, () => reading(amount * Math.exp(normal() * deviation)));
    const strength = between(0.85, 1.15);
    yield {
      strength: 100 * strength,
      reference: side(1, between(0.005, 0.015)),
      trial: side(strength, scatter),
      white: Array.from({ length: 3 }, () => reading(0)),
    };
  }
}

function coverage(readings: number, seed: number, criteria: readonly StrengthCriterion[], spread = () => 1) {
  const held = Object.fromEntries(criteria.map((criterion) => [criterion, 0]));
  for (const { strength, reference, trial, white } of studies(readings, seed, spread)) {
    for (const criterion of criteria) {
      const { interval } = relativeTintingStrength(
        { weighing: reference },
        { weighing: trial },
        { criterion, viewing: D65_10, white: { weighing: white }, surface },
      );
      if (interval && interval.low <= strength && strength <= interval.high) held[criterion] += 100 / STUDIES;
    }
  }
  return held;
}

describe(`the 95 % interval over ${STUDIES} studies (seed ${SEED})`, () => {
  test.each([
    [3, STRENGTH_CRITERIA],
    [5, ['absorption-maximum', 'weighted-sum', 'lowest-tristimulus', 'smallest-difference']],
  ] as const)('%d readings a side, by %s', { timeout: 60_000 }, (readings, criteria) => {
    for (const [criterion, share] of Object.entries(coverage(readings, SEED + readings, criteria))) {
      expect(share, criterion).toBeGreaterThanOrEqual(93);
      expect(share, criterion).toBeLessThanOrEqual(97);
    }
  });

  test.each([3, 5])('%d readings a side, the trial scattering three times as much', { timeout: 60_000 }, (readings) => {
    const share = coverage(readings, SEED + 10 * readings, ['absorption-maximum'], () => 3)['absorption-maximum'];
    expect(share).toBeGreaterThanOrEqual(93);
    expect(share).toBeLessThanOrEqual(97);
  });

  test('one reading a side with the true repeatability stated', { timeout: 60_000 }, () => {
    const normal = normalFrom(SEED);
    const white = reduction(COLORANT, 0, { surface });
    let held = 0;
    for (let i = 0; i < STUDIES; i++) {
      const [reference, trial] = [1, 1.1].map((amount) =>
        reduction(COLORANT, amount * Math.exp(0.01 * normal()), { surface }),
      );
      const { interval } = relativeTintingStrength(reference, trial, {
        criterion: 'absorption-maximum',
        viewing: D65_10,
        white,
        surface,
        repeatability: 1,
      });
      if (interval && interval.low <= 110 && 110 <= interval.high) held += 100 / STUDIES;
    }
    expect(held).toBeGreaterThanOrEqual(93);
    expect(held).toBeLessThanOrEqual(97);
  });
});
