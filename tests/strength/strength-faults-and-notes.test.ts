import { describe, expect, test } from 'vitest';
import { createSpectrum, D65_10, meanSpectrum, type Spectrum, xyzFromSpectrum } from '../../src/colorimetry/index.js';
import {
  relativeTintingStrength,
  STRENGTH_CRITERIA,
  type StrengthCriterion,
  type StrengthOptions,
} from '../../src/strength/index.js';
import { bell, COLORANTS, type Curve, GRID, PAINT_SURFACE, RUTILE, reduction } from './simulated-reductions.js';

type Options = Partial<StrengthOptions>;
const strengthOf = (
  reference: Spectrum | readonly Spectrum[],
  trial: Spectrum | readonly Spectrum[],
  options: Options = {},
) => relativeTintingStrength(reference, trial, { criterion: 'absorption-maximum', viewing: D65_10, ...options });
const codesOf = (...parameters: Parameters<typeof strengthOf>) =>
  strengthOf(...parameters).warnings.map(({ code }) => code);
const fault = (code: string, path: string | RegExp) =>
  expect.objectContaining({ code, path: typeof path === 'string' ? path : expect.stringMatching(path) });

const blue = COLORANTS.blue;
const white = reduction(blue, 0);
const reference = reduction(blue, 1);
const trial = reduction(blue, 1.2);
const spectrumOf = (curve: Curve, grid = GRID) =>
  createSpectrum({
    start: grid.start,
    step: grid.step,
    values: Array.from({ length: grid.count }, (_, i) => curve(grid.start + i * grid.step)),
    scale: 'fraction',
  });

test('a plain comparison has no notes', () => {
  for (const criterion of STRENGTH_CRITERIA) expect(codesOf(reference, trial, { white, criterion })).toEqual([]);
});

describe('readings that have no K/S', () => {
  const withOne = (value: number) => spectrumOf((wavelength) => (wavelength === 430 ? value : 0.4));

  test.each([
    ['reference', withOne(0), trial, undefined],
    ['trial', reference, withOne(0), undefined],
    ['white', reference, trial, withOne(0)],
  ] as const)('zero reflectance in the %s, with its wavelength', (side, first, second, base) => {
    expect(() => strengthOf(first, second, { white: base })).toThrow(fault('zero-reflectance', `${side} at 430 nm`));
  });

  test('in one of several readings, with its number', () => {
    expect(() => strengthOf(reference, [trial, withOne(0)])).toThrow(fault('zero-reflectance', 'trial[1] at 430 nm'));
  });

  test('at or below the surface reflection', () => {
    expect(() => strengthOf(withOne(0.04), trial, { surface: PAINT_SURFACE })).toThrow(
      fault('no-internal-reflectance', 'reference at 430 nm'),
    );
  });

  test('above 1, and above what a film can reflect without its surface', () => {
    expect(() => strengthOf(reference, withOne(1.02))).toThrow(fault('reflectance-out-of-range', 'trial at 430 nm'));
    const excluded = { ...PAINT_SURFACE, specular: 'excluded' as const };
    expect(() => strengthOf(reference, trial, { white: withOne(0.97), surface: excluded })).toThrow(
      fault('reflectance-out-of-range', /^white at 430 nm/),
    );
  });
});

describe('what belongs together', () => {
  const shorter = reduction(blue, 1, { grid: { start: 400, step: 10, count: 31 } });

  test.each([
    ['trial', () => strengthOf(reference, shorter)],
    ['trial[1]', () => strengthOf(reference, [trial, shorter])],
    ['reference[1]', () => strengthOf([reference, shorter], trial)],
    ['white', () => strengthOf(reference, trial, { white: shorter })],
    ['readings[1]', () => meanSpectrum([reference, shorter])],
  ])('%s on another grid is refused', (path, run) => {
    expect(run).toThrow(fault('grid-mismatch', path));
  });

  test.each([
    ['reference', () => strengthOf([], trial)],
    ['trial', () => strengthOf(reference, [])],
    ['white', () => strengthOf(reference, trial, { white: [] })],
    ['readings', () => meanSpectrum([])],
  ])('an empty %s is refused', (path, run) => {
    expect(run).toThrow(fault('empty', path));
  });

  test('a grid without readings between 400 and 700 nm', () => {
    const infrared = reduction(blue, 1, { grid: { start: 710, step: 10, count: 5 } });
    expect(() => strengthOf(infrared, infrared)).toThrow(fault('grid-invalid', 'grid.start'));
  });
});

describe('options', () => {
  test.each([
    [{ criterion: 'depth' as StrengthCriterion }, 'options.criterion'],
    [{ repeatability: 0 }, 'options.repeatability'],
    [{ margin: -1 }, 'options.margin'],
    [{ surface: { ...PAINT_SURFACE, external: 2 } }, 'surface.external'],
  ])('%o is refused', (options: Options, path) => {
    expect(() => strengthOf(reference, trial, options)).toThrow(fault('invalid-option', path));
  });
});

describe('no answer', () => {
  test.each(STRENGTH_CRITERIA)('%s: a reference no darker than its white', (criterion) => {
    const lighter = reduction(blue, 0.5, { white: () => 0 });
    const darkWhite = reduction(blue, 1);
    expect(() => strengthOf(lighter, trial, { white: darkWhite, criterion })).toThrow(
      fault('no-absorption', /^reference at \d+ nm$/),
    );
    expect(() => strengthOf(white, trial, { white, criterion })).toThrow(
      fault('no-absorption', /^reference at \d+ nm$/),
    );
  });

  test.each([
    ['absorption-maximum', 'no-absorption', 'trial at 610 nm'],
    ['kubelka-munk-sum', 'no-absorption', 'weighted sum of the trial'],
    ['weighted-sum', 'no-absorption', 'weighted sum of the trial'],
    ['lowest-tristimulus', 'no-solution', 'X of the trial'],
    ['tristimulus-y', 'no-solution', 'Y of the trial'],
    ['smallest-difference', 'no-solution', 'trial'],
  ] as const)('%s: a trial without colorant', (criterion, code, path) => {
    expect(() => strengthOf(reference, white, { white, criterion })).toThrow(fault(code, path));
  });

  test('the tristimulus value of a trial that cannot reach the reference is told as measured', () => {
    const { Y } = xyzFromSpectrum(white, D65_10);
    // its first eleven digits; the last ones are rounding
    const received = expect.stringMatching(new RegExp(`^${String(Y).slice(0, 12)}\\d* as measured$`));
    expect(() => strengthOf(reference, white, { white, criterion: 'tristimulus-y' })).toThrow(
      expect.objectContaining({ code: 'no-solution', received }),
    );
  });

  test('a reference darker than its white in places but lighter in Y', () => {
    // Absorption at 430 nm hardly counts for Y, and everywhere else the white is the darker one.
    const base = () => 0.05;
    const odd = reduction((wavelength) => bell(430, 30, 1)(wavelength) - 0.03, 1, { white: base });
    expect(() =>
      strengthOf(odd, odd, { white: reduction(blue, 0, { white: base }), criterion: 'tristimulus-y' }),
    ).toThrow(fault('no-absorption', 'Y of the reference'));
    const only = (wavelength: number) => bell(430, 30, 0.1)(wavelength) - 0.03;
    expect(() =>
      strengthOf(reduction(only, 1, { white: base }), trial, {
        white: reduction(blue, 0, { white: base }),
        criterion: 'kubelka-munk-sum',
      }),
    ).toThrow(fault('no-absorption', 'weighted sum of the reference'));
  });

  test('an amount that would make K/S negative, with the wavelength', () => {
    // The trial takes 0.004 of the white's 0.005 away at the red end, so twice its amount is impossible there.
    const base = () => 0.005;
    const bleached = (wavelength: number) => bell(520, 40, 0.3)(wavelength) - bell(690, 20, 0.004)(wavelength);
    expect(() =>
      strengthOf(reduction(COLORANTS.red, 3, { white: base }), reduction(bleached, 1, { white: base }), {
        white: reduction(blue, 0, { white: base }),
      }),
    ).toThrow(fault('no-solution', 'trial at 690 nm'));
  });
});

describe('notes', () => {
  test('a feature narrower than the interval is noted with its side and wavelength', () => {
    const spike = (wavelength: number) => (wavelength === 560 ? 0.35 : 0);
    const reference = reduction(COLORANTS.blue, 1);
    const trial = reduction(COLORANTS.blue, 1, { shift: spike });
    const { warnings } = relativeTintingStrength(reference, trial, { criterion: 'tristimulus-y', viewing: D65_10 });
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
    for (const root of roots) expect(note?.message).toContain(root.toPrecision(4));
  });

  test('readings in different specular modes', () => {
    const surface = PAINT_SURFACE;
    const made = { surface };
    const options = { surface, white: reduction(blue, 0, made) };
    const excluded = reduction(blue, 1.2, { ...made, shift: () => -0.04 });
    expect(codesOf(reduction(blue, 1, made), excluded, options)).toContain('specular-modes-differ');
    const included = reduction(blue, 1.2, { surface: { ...surface, specular: 'excluded' }, shift: () => 0.04 });
    const asExcluded = { ...surface, specular: 'excluded' as const };
    const plain = reduction(blue, 1, { surface: asExcluded });
    expect(
      codesOf(plain, included, { surface: asExcluded, white: reduction(blue, 0, { surface: asExcluded }) }),
    ).toContain('specular-modes-differ');
    expect(codesOf(reduction(blue, 1, made), reduction(blue, 1.2, made), options)).toEqual([]);
  });

  test('a range that stops short of 400 to 700 nm', () => {
    const grid = { start: 460, step: 10, count: 20 };
    const made = { grid };
    const codes = codesOf(reduction(blue, 1, made), reduction(blue, 1.2, made), { white: reduction(blue, 0, made) });
    expect(codes).toContain('range-cut-short');
  });
});

test('every result is finite', () => {
  for (const colorant of Object.values(COLORANTS)) {
    for (const amount of [0.001, 1, 100]) {
      const result = strengthOf(reduction(colorant, amount), reduction(colorant, amount * 1.1), {
        white: spectrumOf((wavelength) => 1 / (1 + RUTILE(wavelength) * 4)),
        criterion: 'absorption-maximum',
      });
      for (const value of [result.percent, ...Object.values(result.residual), ...result.matched.values]) {
        expect(Number.isFinite(value)).toBe(true);
      }
    }
  }
});
