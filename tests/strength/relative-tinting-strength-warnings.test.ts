import { describe, expect, test } from 'vitest';
import { D65_10, xyzFromSpectrum } from '../../src/colorimetry/index.js';
import { relativeTintingStrength, STRENGTH_CRITERIA } from '../../src/strength/index.js';
import { bell, COLORANTS, type Curve, reduction } from './simulated-reductions.js';
import { codesOf, strengthOf } from './strength-of.js';

const { blue } = COLORANTS;
const [white, reference, trial] = [0, 1, 1.2].map((amount) => reduction(blue, amount));

test('a plain comparison has no notes', () => {
  for (const criterion of STRENGTH_CRITERIA) expect(codesOf(reference, trial, { white, criterion })).toEqual([]);
});

describe('notes', () => {
  test('a feature narrower than the interval is noted with its side and wavelength', () => {
    const spike = (wavelength: number) => (wavelength === 560 ? 0.35 : 0);
    const reference = reduction(COLORANTS.blue, 1);
    const trial = reduction(COLORANTS.blue, 1, { shift: spike });
    const { warnings } = relativeTintingStrength(reference, trial, {
      criterion: 'tristimulus-y',
      viewing: D65_10,
      surface: 'none',
    });
    expect(warnings).toContainEqual(expect.objectContaining({ code: 'narrow-features', path: 'trial at 560 nm' }));
  });

  test('white base darker than the reduction', () => {
    const bleached = (wavelength: number) => blue(wavelength) - bell(450, 20, 0.04)(wavelength);
    const base = () => 0.03;
    const result = strengthOf(reduction(blue, 1, { white: base }), reduction(bleached, 1, { white: base }), {
      white: reduction(blue, 0, { white: base }),
    });
    expect(result.warnings).toContainEqual(expect.objectContaining({ code: 'white-darker', path: 'trial at 450 nm' }));
    expect(result.percent).toBeCloseTo(100, 6);
  });

  test('a matched K/S a little below zero counts as zero and is named', () => {
    const base = () => 1e-4;
    const noisy = (wavelength: number) => {
      // Taken twice, -4e-5 leaves some of the white's 1e-4, and -9e-5 does not.
      if (wavelength > 690) return -9e-5;
      return wavelength > 670 ? -4e-5 : bell(520, 40, 0.3)(wavelength);
    };
    const made = { white: base };
    const result = strengthOf(reduction(bell(520, 40, 0.6), 1, made), reduction(noisy, 1, made), {
      white: reduction(blue, 0, made),
    });
    expect(result.percent).toBeCloseTo(50, 6);
    expect(result.warnings).toContainEqual(
      expect.objectContaining({ code: 'negative-absorption', path: 'trial at 700 nm' }),
    );
    expect(result.matched.values.at(-3)).toBe(1);
  });

  test('a band in which neither white nor colorant absorbs is no finding', () => {
    const made = { white: () => 0 };
    const nowhere = (wavelength: number) => (wavelength > 690 ? 0 : blue(wavelength));
    expect(
      codesOf(reduction(nowhere, 1, made), reduction(nowhere, 1.2, made), { white: reduction(blue, 0, made) }),
    ).not.toContain('negative-absorption');
  });

  test('absorption maximum at an end of the range', () => {
    const violet = bell(380, 60, 1, 0.01);
    const { warnings, wavelength } = strengthOf(reduction(violet, 1), reduction(violet, 1.2), { white });
    expect(wavelength).toBe(400);
    expect(warnings).toContainEqual(expect.objectContaining({ code: 'absorption-maximum-at-end', path: '400 nm' }));
  });

  test.each(['absorption-maximum', 'kubelka-munk-sum', 'weighted-sum'] as const)(
    '%s: saturated and weak absorption, by side',
    (criterion) => {
      const notes = (first: number, second: number) =>
        strengthOf(reduction(blue, first), reduction(blue, second), { white, criterion }).warnings.map(
          ({ code, path }) => `${code} ${path}`,
        );
      expect(notes(60, 70)).toEqual([
        'absorption-saturated reference at 610 nm',
        'absorption-saturated trial at 610 nm',
      ]);
      expect(notes(10, 60)).toEqual(['absorption-saturated trial at 610 nm']);
      expect(notes(0.001, 1)).toEqual(['absorption-weak reference at 610 nm']);
      expect(notes(1, 2)).toEqual([]);
    },
  );

  test('near-neutral reference', () => {
    const grey: Curve = () => 0.5;
    for (const criterion of ['absorption-maximum', 'lowest-tristimulus'] as const) {
      const codes = codesOf(reduction(grey, 1), reduction(grey, 1.2), { white, criterion });
      expect(codes).toContain('near-neutral');
    }
  });

  test('all solutions of a criterion that is not monotonic', () => {
    // With more of it, this trial first darkens the blue of a grey white, then brightens the rest: Y falls, then rises.
    const made = { white: () => 0.6 };
    const odd: Curve = (wavelength) => (wavelength < 500 ? 6 : -0.04);
    const slight: Curve = (wavelength) => (wavelength < 500 ? 0.03 : -0.0001);
    const target = reduction(slight, 1, made);
    const options = { white: reduction(blue, 0, made), criterion: 'tristimulus-y' } as const;
    const { roots = [], factor, warnings } = strengthOf(target, reduction(odd, 1, made), options);
    expect(roots).toHaveLength(2);
    for (const root of roots) {
      const matched = reduction(odd, root, made);
      expect(xyzFromSpectrum(matched, D65_10).Y).toBeCloseTo(xyzFromSpectrum(target, D65_10).Y, 10);
    }
    // The smaller one is the reference's own depth; the larger one is another colour altogether.
    expect(factor).toBe(Math.min(...roots));
    const note = warnings.find(({ code }) => code === 'several-solutions');
    expect(note?.figures).toEqual({ factors: roots });
  });

  test('a range that stops short of 400 to 700 nm', () => {
    const grid = { start: 460, step: 10, count: 20 };
    const made = { grid };
    const codes = codesOf(reduction(blue, 1, made), reduction(blue, 1.2, made), { white: reduction(blue, 0, made) });
    expect(codes).toContain('range-cut-short');
  });
});
