import { describe, expect, test } from 'vitest';
import { D65_10 } from '../../src/colorimetry/index.js';
import { relativeTintingStrength } from '../../src/strength/index.js';
import { bell, COLORANTS, GRID, PAINT_SURFACE, reduction } from './simulated-reductions.js';
import { flat, strengthOf } from './strength-of.js';

const white = reduction(COLORANTS.blue, 0);

describe('the method travels with the figure', () => {
  const blue = COLORANTS.blue;
  const [reference, trial, white] = [1, 1.2, 0].map((amount) => reduction(blue, amount));

  test('with what was given', () => {
    const result = relativeTintingStrength([reference, reference], trial, {
      criterion: 'absorption-maximum',
      viewing: D65_10,
      white: [white, white, white],
      amounts: { reference: { colorant: 1, white: 10 }, trial: { colorant: 1, white: 10 } },
    });
    expect(result).toMatchObject({
      criterion: 'absorption-maximum',
      approximate: false,
      viewing: D65_10,
      whiteSubtracted: true,
      amounts: { reference: { colorant: 1, white: 10 }, trial: { colorant: 1, white: 10 } },
      grid: GRID,
      replicates: { reference: 2, trial: 1, white: 3 },
    });
    expect(result).not.toHaveProperty('surface');
    expect(result).not.toHaveProperty('tristimulus');
  });

  test('without white the reduction alone counts, and no surface stays absent', () => {
    const result = relativeTintingStrength(reference, trial, { criterion: 'kubelka-munk-sum', viewing: D65_10 });
    expect(result.whiteSubtracted).toBe(false);
    // The white's own K/S on both sides draws the figure towards 100.
    expect(result.percent).toBeGreaterThan(115);
    expect(result.percent).toBeLessThan(120);
  });
});

describe('a result', () => {
  test('carries surface, white and amounts only where they were stated', () => {
    const bare = strengthOf(flat(0.3), flat(0.25));
    for (const field of ['surface', 'amounts', 'interval', 'tristimulus', 'roots']) {
      expect(Object.keys(bare)).not.toContain(field);
    }
    expect(bare).toMatchObject({ whiteSubtracted: false, replicates: { reference: 1, trial: 1 } });
    expect(Object.keys(bare.replicates)).not.toContain('white');
    const full = strengthOf(flat(0.3), flat(0.25), { surface: PAINT_SURFACE, white: [flat(0.9), flat(0.91)] });
    expect(full.surface).toEqual(PAINT_SURFACE);
    expect(full.replicates).toEqual({ reference: 1, trial: 1, white: 2 });
  });

  test('names its wavelength only by the criterion that has one', () => {
    expect(Object.keys(strengthOf(flat(0.3), flat(0.25)))).toContain('wavelength');
    expect(Object.keys(strengthOf(flat(0.3), flat(0.25), { criterion: 'kubelka-munk-sum' }))).not.toContain(
      'wavelength',
    );
  });

  test.each([
    ['X', bell(600, 40, 0.8)],
    ['Y', bell(545, 30, 0.8)],
    ['Z', bell(450, 40, 0.8)],
  ])('by the lowest tristimulus value is by %s where the colorant absorbs there', (name, curve) => {
    const result = strengthOf(reduction(curve, 1), reduction(curve, 1.2), { white, criterion: 'lowest-tristimulus' });
    expect(result.tristimulus).toBe(name);
  });
});
