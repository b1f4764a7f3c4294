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
    const result = relativeTintingStrength({ weighing: [reference, reference] }, trial, {
      criterion: 'absorption-maximum',
      viewing: D65_10,
      surface: 'none',
      white: { spot: [white, white, white] },
      amounts: { reference: { colorant: 1, white: 10 }, trial: { colorant: 1, white: 10 } },
    });
    expect(result).toMatchObject({
      criterion: 'absorption-maximum',
      approximate: false,
      viewing: D65_10,
      surface: 'none',
      whiteSubtracted: true,
      amounts: { reference: { colorant: 1, white: 10 }, trial: { colorant: 1, white: 10 } },
      grid: GRID,
      repetition: {
        reference: { top: 'weighing', count: 2, noun: '2 weigh-ups' },
        trial: { count: 1, noun: 'one reading' },
        white: { top: 'spot', count: 3, noun: '3 spots of one film' },
      },
    });
    expect(result).not.toHaveProperty('tristimulus');
  });

  test('without white the reduction alone counts', () => {
    const result = relativeTintingStrength(reference, trial, {
      criterion: 'kubelka-munk-sum',
      viewing: D65_10,
      surface: 'none',
    });
    expect(result.whiteSubtracted).toBe(false);
    // The white's own K/S on both sides draws the figure towards 100.
    expect(result.percent).toBeGreaterThan(115);
    expect(result.percent).toBeLessThan(120);
  });
});

describe('a result', () => {
  test('carries white and amounts only where they were stated', () => {
    const bare = strengthOf(flat(0.3), flat(0.25));
    for (const field of ['amounts', 'interval', 'tristimulus', 'roots']) {
      expect(Object.keys(bare)).not.toContain(field);
    }
    expect(bare).toMatchObject({ whiteSubtracted: false, surface: 'none', repetition: { reference: { count: 1 } } });
    expect(Object.keys(bare.repetition)).not.toContain('white');
    const full = strengthOf(flat(0.3), flat(0.25), {
      surface: PAINT_SURFACE,
      white: { drawdown: [flat(0.9), flat(0.91)] },
    });
    expect(full.surface).toEqual(PAINT_SURFACE);
    expect(full.repetition.white).toMatchObject({ top: 'drawdown', count: 2 });
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

test('what the criterion names is known to the compiler where the criterion is', () => {
  const [one, other] = [1, 1.2].map((amount) => reduction(COLORANTS.blue, amount));
  const options = { viewing: D65_10, surface: 'none', white } as const;
  const maximum = relativeTintingStrength(one, other, { ...options, criterion: 'absorption-maximum' });
  const wavelength: number = maximum.wavelength;
  const byY = relativeTintingStrength(one, other, { ...options, criterion: 'tristimulus-y' });
  const tristimulus: 'Y' = byY.tristimulus;
  expect([wavelength, tristimulus]).toEqual([610, 'Y']);
  // @ts-expect-error a criterion that is any of six promises no wavelength
  const perhaps: number = strengthOf(one, other).wavelength;
  expect(perhaps).toBe(610);
});

test('a bare list is refused: what was repeated is stated', () => {
  // @ts-expect-error the compiler refuses it too
  expect(() => strengthOf([flat(0.3), flat(0.31)], flat(0.25))).toThrow(
    expect.objectContaining({ code: 'repetition-unstated', path: 'reference' }),
  );
});

test('every result names its kind and version', () => {
  expect(strengthOf(flat(0.3), flat(0.25))).toMatchObject({ kind: 'strength', version: 1 });
});
