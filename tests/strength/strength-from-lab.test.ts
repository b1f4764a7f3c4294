import { describe, expect, test } from 'vitest';
import { D65_10, type Lab, labFromSpectrum, labFromXyz, whitePoint } from '../../src/colorimetry/index.js';
import type { Repeated } from '../../src/evidence/index.js';
import {
  kOverS,
  relativeTintingStrengthFromLab,
  STRENGTH_CRITERIA,
  type StrengthCriterion,
} from '../../src/strength/index.js';
import { COLORANTS, PAINT_SURFACE, reduction } from './simulated-reductions.js';

const point = whitePoint(D65_10);
/** The Lab of a colour with these shares of the white's X, Y and Z. */
const labOf = (X: number, Y: number, Z: number) =>
  labFromXyz({ X: X * point.X, Y: Y * point.Y, Z: Z * point.Z }, point);

describe('three broad bands, by hand', () => {
  const reference = labOf(0.4, 0.5, 0.8);
  const trial = labOf(0.35, 0.46, 0.75);
  const white = labOf(0.9, 0.91, 0.89);
  const q = (value: number, base: number) => kOverS(value) - kOverS(base);
  const bands = [
    [0.4, 0.35, 0.9],
    [0.5, 0.46, 0.91],
    [0.8, 0.75, 0.89],
  ];
  const added = (side: 0 | 1) => bands.map((band) => q(band[side], band[2]));

  test('the absorption maximum is the band of the largest added K/S', () => {
    const result = relativeTintingStrengthFromLab(reference, trial, { viewing: D65_10, surface: 'none', white });
    expect(result.percent).toBeCloseTo((100 * added(1)[0]) / added(0)[0], 9);
    expect(result).toMatchObject({ approximate: true, criterion: 'absorption-maximum', tristimulus: 'X' });
    // X is the first band, but no end of a range beyond which the maximum might lie
    expect(result.warnings).toEqual([]);
  });

  test('the Kubelka-Munk sum runs over the three bands', () => {
    const sum = (values: readonly number[]) => values.reduce((total, value) => total + value, 0);
    const options = { viewing: D65_10, surface: 'none', white, criterion: 'kubelka-munk-sum' } as const;
    const { percent } = relativeTintingStrengthFromLab(reference, trial, options);
    expect(percent).toBeCloseTo((100 * sum(added(1))) / sum(added(0)), 9);
  });

  test('tristimulus Y is equal after matching, as the lowest one is', () => {
    const by = (criterion: StrengthCriterion) =>
      relativeTintingStrengthFromLab(reference, trial, { viewing: D65_10, surface: 'none', white, criterion });
    expect(by('tristimulus-y').matched.L).toBeCloseTo(reference.L, 9);
    expect(by('tristimulus-y').tristimulus).toBe('Y');
    expect(by('lowest-tristimulus').tristimulus).toBe('X');
    expect(by('kubelka-munk-sum')).not.toHaveProperty('tristimulus');
    expect(by('lowest-tristimulus').percent).toBeCloseTo((100 * added(1)[0]) / added(0)[0], 6);
  });
});

describe('of simulated pigments', () => {
  const surface = PAINT_SURFACE;
  const lab = (name: string, amount: number) =>
    labFromSpectrum(reduction(COLORANTS[name], amount, { surface }), D65_10);

  test.each(Object.keys(COLORANTS))('%s: on the right side of 100 %%, and no further off than the truth', (name) => {
    for (const strength of [0.8, 1.25]) {
      for (const criterion of STRENGTH_CRITERIA) {
        const { percent, approximate } = relativeTintingStrengthFromLab(lab(name, 1), lab(name, strength), {
          criterion,
          viewing: D65_10,
          surface,
          white: lab(name, 0),
        });
        expect(approximate).toBe(true);
        expect((percent - 100) / (100 * strength - 100)).toBeGreaterThan(0.4);
        expect((percent - 100) / (100 * strength - 100)).toBeLessThan(1.05);
      }
    }
  });

  test('replicates and amounts count as they do for spectra', () => {
    const films = (factor: number) => ({ weighing: [0.99, 1, 1.01].map((amount) => lab('red', factor * amount)) });
    const options = { viewing: D65_10, surface, white: lab('red', 0) };
    const result = relativeTintingStrengthFromLab(films(1), films(1.2), options);
    expect(result.interval).toMatchObject({ basis: 'replicates', level: 0.95 });
    expect(result.repetition).toMatchObject({ reference: { count: 3 }, trial: { count: 3 }, white: { count: 1 } });
    expect(result.finding).toBe('stronger');
    const amounts = { reference: { colorant: 1, white: 10 }, trial: { colorant: 2, white: 10 } };
    expect(relativeTintingStrengthFromLab(films(1), films(1.2), { ...options, amounts }).percent).toBeCloseTo(
      result.percent / 2,
      10,
    );
  });
});

describe('refused', () => {
  const good: Lab = { L: 60, a: 5, b: 5 };
  const run = (trial: Repeated<Lab>, options = {}) =>
    relativeTintingStrengthFromLab(good, trial, { viewing: D65_10, surface: 'none', ...options });

  test.each([
    ['black', { L: 0, a: 0, b: 0 }, 'zero-reflectance', 'trial at X'],
    ['a colour no surface has', { L: 20, a: 0, b: 90 }, 'reflectance-out-of-range', 'trial at Z'],
    ['brighter than white', { L: 104, a: 0, b: 0 }, 'reflectance-out-of-range', /trial at [XYZ]/],
    ['no number', { L: Number.NaN, a: 0, b: 0 }, 'not-finite', /L$/],
  ] as const)('%s', (_, trial, code, path) => {
    const at = typeof path === 'string' ? path : expect.stringMatching(path);
    expect(() => run(trial)).toThrow(expect.objectContaining({ code, path: at }));
  });

  test('an empty side, an unknown criterion, a wrong surface', () => {
    expect(() => run({ spot: [] })).toThrow(expect.objectContaining({ code: 'empty', path: 'trial.spot' }));
    expect(() => run(good, { criterion: 'depth' })).toThrow(
      expect.objectContaining({ code: 'invalid-option', path: 'options.criterion' }),
    );
    expect(() => run(good, { surface: { ...PAINT_SURFACE, internal: 1 } })).toThrow(
      expect.objectContaining({ code: 'invalid-option', path: 'options.surface.internal' }),
    );
  });
});
