import { differenceCiede2000 } from 'culori';
import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import {
  A_2,
  createSpectrum,
  D65_10,
  labFromSpectrum,
  type Spectrum,
  whitePoint,
  xyzFromSpectrum,
} from '../../src/colorimetry/index.js';
import {
  internalReflectance,
  kOverS,
  relativeTintingStrength,
  STRENGTH_CRITERIA,
  type StrengthOptions,
} from '../../src/strength/index.js';
import { bell, COLORANTS, GRID, PAINT_SURFACE, reduction } from './simulated-reductions.js';
import { strengthOf } from './strength-of.js';

const { blue } = COLORANTS;

const SEED = 20262;

describe('only strength changed, no noise: every criterion gives it back', () => {
  const cases = Object.keys(COLORANTS).flatMap((name) =>
    (['none', PAINT_SURFACE, { ...PAINT_SURFACE, specular: 'excluded' }] as const).flatMap((surface) =>
      [D65_10, A_2].map((viewing) => ({
        name,
        surface,
        viewing,
        mode: surface === 'none' ? surface : surface.specular,
      })),
    ),
  );

  test.each(cases)('$name, surface $mode, illuminant $viewing.illuminant', ({ name, surface, viewing }) => {
    const colorant = COLORANTS[name];
    const white = reduction(colorant, 0, { surface });
    const reference = reduction(colorant, 1, { surface });
    for (const strength of [0.5, 0.8, 1, 1.25, 2]) {
      const trial = reduction(colorant, strength, { surface });
      for (const criterion of STRENGTH_CRITERIA) {
        const result = relativeTintingStrength(reference, trial, { criterion, viewing, white, surface });
        const maximum = criterion === 'absorption-maximum';
        expect(Math.abs(result.percent / (100 * strength) - 1)).toBeLessThanOrEqual(maximum ? 1e-9 : 1e-7);
        expect(result.residual.dE2000).toBeLessThanOrEqual(maximum ? 1e-6 : 1e-5);
        expect(result.factor * strength).toBeCloseTo(1, 6);
      }
    }
  });

  test(`any colorant, strength and white (seed ${SEED})`, () => {
    const colorant = fc.record({
      peak: fc.double({ min: 410, max: 690, noNaN: true }),
      width: fc.double({ min: 30, max: 90, noNaN: true }),
      height: fc.double({ min: 0.2, max: 3, noNaN: true }),
      ground: fc.double({ min: 0.001, max: 0.1, noNaN: true }),
    });
    fc.assert(
      fc.property(
        colorant,
        fc.double({ min: 0.5, max: 2, noNaN: true }),
        fc.double({ min: 0, max: 0.02, noNaN: true }),
        fc.constantFrom(...STRENGTH_CRITERIA),
        ({ peak, width, height, ground }, strength, whiteRatio, criterion) => {
          const curve = bell(peak, width, height, ground);
          const made = { surface: PAINT_SURFACE, white: () => whiteRatio };
          const { percent, residual } = relativeTintingStrength(
            reduction(curve, 1, made),
            reduction(curve, strength, made),
            { criterion, viewing: D65_10, surface: PAINT_SURFACE, white: reduction(curve, 0, made) },
          );
          expect(Math.abs(percent / (100 * strength) - 1)).toBeLessThanOrEqual(1e-7);
          expect(residual.dE2000).toBeLessThanOrEqual(1e-5);
        },
      ),
      { seed: SEED, numRuns: 200 },
    );
  });
});

describe('a trial of another shade: each criterion solves its own equation', () => {
  const colorant = COLORANTS.blue;
  const white = reduction(colorant, 0, { surface: PAINT_SURFACE });
  const reference = reduction(colorant, 1, { surface: PAINT_SURFACE });
  const trial = reduction(bell(585, 80, 0.95, 0.05), 1, { surface: PAINT_SURFACE });
  const options = { viewing: D65_10, white, surface: PAINT_SURFACE };
  const solve = (criterion: StrengthOptions['criterion']) =>
    relativeTintingStrength(reference, trial, { ...options, criterion });

  /** K/S that the colorant adds, by the public functions one value at a time. */
  const added = (spectrum: Spectrum) =>
    Array.from(
      spectrum.values,
      (value, i) =>
        kOverS(internalReflectance(value, PAINT_SURFACE)) - kOverS(internalReflectance(white.values[i], PAINT_SURFACE)),
    );
  const sum = (values: readonly number[]) => values.reduce((total, value) => total + value, 0);

  test('absorption maximum: K/S equal where the reference absorbs most', () => {
    const { matched, wavelength, residual } = solve('absorption-maximum');
    expect(wavelength).toBe(610);
    const at = (610 - GRID.start) / GRID.step;
    expect(matched.values[at]).toBeCloseTo(reference.values[at], 12);
    expect(residual.dE2000).toBeGreaterThan(0.5);
  });

  test('Kubelka-Munk sum: equal over the readings from 400 to 700 nm', () => {
    const within = (values: readonly number[]) => sum(values.slice(2, 33));
    expect(within(added(solve('kubelka-munk-sum').matched))).toBeCloseTo(within(added(reference)), 10);
  });

  test('weighted sum: equal with the weights of X + Y + Z', () => {
    // A spectrum of zeros with a single one reads the weight of that wavelength out of the tristimulus values.
    const weights = Array.from({ length: GRID.count }, (_, i) => {
      const values = Array.from({ length: GRID.count }, (_, j) => (i === j ? 1 : 0));
      const { X, Y, Z } = xyzFromSpectrum(createSpectrum({ start: 380, step: 10, values, scale: 'fraction' }), D65_10);
      return X + Y + Z;
    });
    const weighted = (values: readonly number[]) => sum(values.map((value, i) => value * weights[i]));
    expect(weighted(added(solve('weighted-sum').matched)) / weighted(added(reference))).toBeCloseTo(1, 12);
  });

  test('tristimulus Y: equal', () => {
    const result = solve('tristimulus-y');
    expect(xyzFromSpectrum(result.matched, D65_10).Y).toBeCloseTo(xyzFromSpectrum(reference, D65_10).Y, 11);
    expect(result.tristimulus).toBe('Y');
  });

  test('lowest tristimulus value: the one lowest relative to the white point, equal', () => {
    const result = solve('lowest-tristimulus');
    const [xyz, point] = [xyzFromSpectrum(reference, D65_10), whitePoint(D65_10)];
    expect(xyz.X / point.X).toBeLessThan(Math.min(xyz.Y / point.Y, xyz.Z / point.Z));
    expect(result.tristimulus).toBe('X');
    expect(xyzFromSpectrum(result.matched, D65_10).X).toBeCloseTo(xyz.X, 11);
  });

  test("smallest difference: no other amount is closer by culori's CIEDE2000", () => {
    const ciede2000 = differenceCiede2000();
    const target = labFromSpectrum(reference, D65_10);
    const distance = (spectrum: Spectrum) => {
      const { L, a, b } = labFromSpectrum(spectrum, D65_10);
      return ciede2000({ mode: 'lab65', l: target.L, a: target.a, b: target.b }, { mode: 'lab65', l: L, a, b });
    };
    const { factor, matched, residual } = solve('smallest-difference');
    const least = distance(matched);
    expect(residual.dE2000).toBeCloseTo(least, 9);
    const q = bell(585, 80, 0.95, 0.05);
    for (let other = 0.3; other < 3; other *= 1.01) {
      expect(distance(reduction(q, other, { surface: PAINT_SURFACE }))).toBeGreaterThanOrEqual(least - 1e-9);
    }
    for (const step of [0.9999, 1.0001]) {
      expect(distance(reduction(q, factor * step, { surface: PAINT_SURFACE }))).toBeGreaterThan(least);
    }
  });

  test('the parts of the difference are trial less reference, before and after matching', () => {
    const result = solve('tristimulus-y');
    const [a, b] = [labFromSpectrum(reference, D65_10), labFromSpectrum(trial, D65_10)];
    expect(result.difference.dL).toBeCloseTo(b.L - a.L, 12);
    expect(result.difference.db).toBeCloseTo(b.b - a.b, 12);
    expect(result.residual.dL).toBeCloseTo(0, 10);
  });
});

test('the band edge of a rutile white never is the absorption maximum', () => {
  const options = { criterion: 'absorption-maximum', viewing: D65_10, surface: 'none' } as const;
  const [reference, trial] = [1, 1.1].map((amount) => reduction(COLORANTS.red, amount));
  expect(Math.min(...reference.values)).toBe(reference.values[0]);
  expect(relativeTintingStrength(reference, trial, options).wavelength).toBe(520);
});

test('swapping reference and trial inverts the figure where the same thing is looked at', () => {
  const white = reduction(COLORANTS.green, 0);
  const [one, other] = [1, 1.3].map((amount) => reduction(COLORANTS.green, amount));
  for (const criterion of STRENGTH_CRITERIA) {
    const options = { criterion, viewing: D65_10, surface: 'none', white } as const;
    const there = relativeTintingStrength(one, other, options).percent;
    const back = relativeTintingStrength(other, one, options).percent;
    expect((there * back) / 1e4).toBeCloseTo(1, 6);
  }
});

test('inputs are left alone', () => {
  const [reference, trial, white] = [1, 1.3, 0].map((amount) => reduction(COLORANTS.red, amount));
  const before = [reference, trial, white].map(({ values }) => Array.from(values));
  for (const criterion of STRENGTH_CRITERIA) {
    relativeTintingStrength({ weighing: [reference, reference] }, trial, {
      criterion,
      viewing: D65_10,
      surface: 'none',
      white,
    });
  }
  expect([reference, trial, white].map(({ values }) => Array.from(values))).toEqual(before);
});

describe('the range that the criterion looks at', () => {
  const codes = (start: number, count: number, criterion: StrengthOptions['criterion'] = 'absorption-maximum') => {
    const grid = { start, step: 10, count };
    const made = { grid };
    return strengthOf(reduction(blue, 1, made), reduction(blue, 1.2, made), {
      white: reduction(blue, 0, made),
      criterion,
    }).warnings.map(({ code, path }) => `${code} ${path}`);
  };

  test.each([
    [420, 27, []],
    [430, 26, ['range-cut-short 430 nm to 680 nm']],
    [420, 26, ['range-cut-short 420 nm to 670 nm']],
    [400, 31, []],
  ])('from %d nm, %d readings', (start, count, expected) => {
    expect(codes(start, count)).toEqual(expected);
    expect(codes(start, count, 'kubelka-munk-sum')).toEqual(expected);
  });

  test('is all of the readings for the weighted and the tristimulus criteria', () => {
    expect(codes(440, 24, 'weighted-sum')).toEqual([]);
    expect(codes(440, 24, 'tristimulus-y')).toEqual([]);
  });
});
