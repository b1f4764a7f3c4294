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

const SEED = 20262;

describe('only strength changed, no noise: every criterion gives it back', () => {
  const cases = Object.keys(COLORANTS).flatMap((name) =>
    [undefined, PAINT_SURFACE, { ...PAINT_SURFACE, specular: 'excluded' as const }].flatMap((surface) =>
      [D65_10, A_2].map((viewing) => ({ name, surface, viewing, mode: surface?.specular ?? 'none' })),
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

test('the band edge of a rutile white never is the absorption maximum', () => {
  const options = { criterion: 'absorption-maximum', viewing: D65_10 } as const;
  const [reference, trial] = [1, 1.1].map((amount) => reduction(COLORANTS.red, amount));
  expect(Math.min(...reference.values)).toBe(reference.values[0]);
  expect(relativeTintingStrength(reference, trial, options).wavelength).toBe(520);
});

describe('amounts', () => {
  const blue = COLORANTS.blue;
  const white = reduction(blue, 0);
  const amounts = { reference: { colorant: 2, white: 25 }, trial: { colorant: 3, white: 20 } };

  test('strength is per colorant and white: twice the colorant of half the strength is 50 %', () => {
    const perWhite = ({ colorant, white }: { colorant: number; white: number }) => colorant / white;
    const reference = reduction(blue, 10 * perWhite(amounts.reference));
    const trial = reduction(blue, 0.5 * 10 * perWhite(amounts.trial));
    for (const criterion of STRENGTH_CRITERIA) {
      const result = relativeTintingStrength(reference, trial, { criterion, viewing: D65_10, white, amounts });
      expect(result.percent).toBeCloseTo(50, 5);
    }
  });

  test.each([
    ['reference', 'colorant', 0],
    ['reference', 'white', -1],
    ['trial', 'colorant', Number.NaN],
    ['trial', 'white', 0],
  ] as const)('%s.%s of %d is refused', (side, part, received) => {
    const wrong = { ...amounts, [side]: { ...amounts[side], [part]: received } };
    const spectrum = reduction(blue, 1);
    expect(() =>
      relativeTintingStrength(spectrum, spectrum, { criterion: 'tristimulus-y', viewing: D65_10, amounts: wrong }),
    ).toThrow(expect.objectContaining({ code: 'invalid-option', path: `options.amounts.${side}.${part}`, received }));
  });
});

test('swapping reference and trial inverts the figure where the same thing is looked at', () => {
  const white = reduction(COLORANTS.green, 0);
  const [one, other] = [1, 1.3].map((amount) => reduction(COLORANTS.green, amount));
  for (const criterion of STRENGTH_CRITERIA) {
    const options = { criterion, viewing: D65_10, white };
    const there = relativeTintingStrength(one, other, options).percent;
    const back = relativeTintingStrength(other, one, options).percent;
    expect((there * back) / 1e4).toBeCloseTo(1, 6);
  }
});

test('inputs are left alone', () => {
  const [reference, trial, white] = [1, 1.3, 0].map((amount) => reduction(COLORANTS.red, amount));
  const before = [reference, trial, white].map(({ values }) => Array.from(values));
  for (const criterion of STRENGTH_CRITERIA) {
    relativeTintingStrength([reference, reference], trial, { criterion, viewing: D65_10, white });
  }
  expect([reference, trial, white].map(({ values }) => Array.from(values))).toEqual(before);
});
