import { describe, expect, test } from 'vitest';
import { createSpectrum, D65_10, meanSpectrum, xyzFromSpectrum } from '../../src/colorimetry/index.js';
import { STRENGTH_CRITERIA } from '../../src/strength/index.js';
import { bell, COLORANTS, type Curve, GRID, PAINT_SURFACE, RUTILE, reduction } from './simulated-reductions.js';
import { strengthOf } from './strength-of.js';

const fault = (code: string, path: string | RegExp) =>
  expect.objectContaining({ code, path: typeof path === 'string' ? path : expect.stringMatching(path) });

const { blue } = COLORANTS;
const [white, reference, trial] = [0, 1, 1.2].map((amount) => reduction(blue, amount));
const spectrumOf = (curve: Curve, grid = GRID) =>
  createSpectrum({
    start: grid.start,
    step: grid.step,
    values: Array.from({ length: grid.count }, (_, i) => curve(grid.start + i * grid.step)),
    scale: 'fraction',
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
    expect(() => strengthOf(reference, { spot: [trial, withOne(0)] })).toThrow(
      fault('zero-reflectance', 'trial.spot[1] at 430 nm'),
    );
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
    ['trial.spot[1]', () => strengthOf(reference, { spot: [trial, shorter] })],
    [
      'reference.weighing[1].spot[1]',
      () => strengthOf({ weighing: [reference, { spot: [reference, shorter] }] }, trial),
    ],
    ['white', () => strengthOf(reference, trial, { white: shorter })],
    ['readings[1]', () => meanSpectrum([reference, shorter])],
  ])('%s on another grid is refused', (path, run) => {
    expect(run).toThrow(fault('grid-mismatch', path));
  });

  test.each([
    ['reference.spot', () => strengthOf({ spot: [] }, trial)],
    ['trial.weighing', () => strengthOf(reference, { weighing: [] })],
    ['white.spot', () => strengthOf(reference, trial, { white: { spot: [] } })],
    ['readings', () => meanSpectrum([])],
  ])('an empty %s is refused', (path, run) => {
    expect(run).toThrow(fault('empty', path));
  });

  test('a grid without readings between 400 and 700 nm', () => {
    const infrared = reduction(blue, 1, { grid: { start: 710, step: 10, count: 5 } });
    expect(() => strengthOf(infrared, infrared)).toThrow(fault('grid-invalid', 'grid.start'));
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
    // the last digits are rounding
    const received = expect.closeTo(Y, 9);
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

test('every result is finite', () => {
  for (const colorant of Object.values(COLORANTS)) {
    for (const amount of [0.001, 1, 100]) {
      const result = strengthOf(reduction(colorant, amount), reduction(colorant, amount * 1.1), {
        white: spectrumOf((wavelength) => 1 / (1 + RUTILE(wavelength) * 4)),
        criterion: 'absorption-maximum',
      });
      const { kind: _, ...residual } = result.residual;
      for (const value of [result.percent, ...Object.values(residual), ...result.matched.values]) {
        expect(Number.isFinite(value)).toBe(true);
      }
    }
  }
});
