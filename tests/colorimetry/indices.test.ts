import { describe, expect, test } from 'vitest';
import {
  A_2,
  A_10,
  createSpectrum,
  D65_2,
  D65_10,
  daylightIlluminant,
  deltaEab,
  FL11_10,
  labFromSpectrum,
  labFromXyz,
  metamerismIndex,
  type Spectrum,
  whiteness,
  whitePoint,
  xyzFromSpectrum,
  yellowness,
} from '../../src/colorimetry/index.js';

const white = whitePoint(D65_10);

/** XYZ of a chromaticity. */
const from = (x: number, y: number, Y: number) => ({ X: (x * Y) / y, Y, Z: ((1 - x - y) * Y) / y });

describe('whiteness', () => {
  const sum = white.X + white.Y + white.Z;
  const [xn, yn] = [white.X / sum, white.Y / sum];

  test('follows the CIE formula with each observer’s coefficient of tint', () => {
    // By hand: x 0.0028 and y 0.0023 above the white, Y 90.
    const ten = whiteness(from(xn + 0.0028, yn + 0.0023, 90), D65_10);
    expect(ten.whiteness).toBeCloseTo(90 - 2.24 - 3.91, 9);
    expect(ten.tint).toBeCloseTo(-2.52 + 1.495, 9);
    const two = whitePoint(D65_2);
    const total = two.X + two.Y + two.Z;
    const { tint } = whiteness(from(two.X / total + 0.0028, two.Y / total + 0.0023, 90), D65_2);
    expect(tint).toBeCloseTo(-2.8 + 1.495, 9);
  });

  test.each([
    ['too dark', from(xn, yn, 39)],
    ['too blue', from(xn - 0.03, yn - 0.06, 80)],
    ['too green', from(xn - 0.008, yn + 0.004, 85)],
    ['too red', from(xn + 0.01, yn + 0.002, 85)],
  ])('a sample that is %s is outside the limits, with a warning', (_, xyz) => {
    const { withinLimits, warnings } = whiteness(xyz, D65_10);
    expect(withinLimits).toBe(false);
    expect(warnings).toMatchObject([{ code: 'whiteness-out-of-limits' }]);
  });

  test.each([
    ['unknown-illuminant', 'viewing.illuminant', () => whiteness(white, A_10)],
    [
      'unknown-illuminant',
      'viewing.illuminant',
      () => whiteness(white, { illuminant: daylightIlluminant(6504), observer: '2' }),
    ],
    ['unknown-observer', 'viewing.observer', () => whiteness(white, { illuminant: 'D65', observer: '5' as '2' })],
    ['not-finite', 'xyz.Y', () => whiteness({ ...white, Y: Number.NaN }, D65_10)],
    ['out-of-range', 'xyz.X + Y + Z', () => whiteness({ X: 0, Y: 0, Z: 0 }, D65_10)],
  ])('refuses %s at %s', (code, path, call) => {
    expect(call).toThrow(expect.objectContaining({ code, path }));
  });
});

describe('yellowness', () => {
  test('follows the formula', () => {
    expect(yellowness({ X: 80, Y: 85, Z: 80 }, D65_2)).toBeCloseTo((100 * (1.2985 * 80 - 1.1335 * 80)) / 85, 12);
  });

  test.each([
    ['unknown-illuminant', 'viewing', () => yellowness(white, A_2)],
    ['unknown-observer', 'viewing.observer', () => yellowness(white, { illuminant: 'D65', observer: '5' as '2' })],
    // The coefficients belong to CIE's D65 and not to whatever bears its name.
    [
      'unknown-illuminant',
      'viewing',
      () => yellowness(white, { illuminant: { ...daylightIlluminant(6504), name: 'D65' }, observer: '10' }),
    ],
    ['not-finite', 'xyz.Z', () => yellowness({ ...white, Z: Infinity }, D65_10)],
    ['out-of-range', 'xyz.Y', () => yellowness({ ...white, Y: 0 }, D65_10)],
  ])('refuses %s at %s', (code, path, call) => {
    expect(call).toThrow(expect.objectContaining({ code, path }));
  });
});

describe('metamerismIndex', () => {
  const count = 31;
  const grey = spectrumOf(() => 0.5);
  const wavy = spectrumOf((i) => 0.5 + 0.1 * Math.sin(i / 2));

  function spectrumOf(value: (i: number) => number): Spectrum {
    return createSpectrum({
      start: 400,
      step: 10,
      values: Array.from({ length: count }, (_, i) => value(i)),
      scale: 'fraction',
    });
  }

  /** `spectrum` changed by three smooth functions so that its XYZ under D65/10° are those of `target`. */
  function matched(spectrum: Spectrum, target: Spectrum): Spectrum {
    const shapes = [(i: number) => 1 + 0 * i, (i: number) => i / 30, (i: number) => (i / 30) ** 2].map((f) =>
      Array.from({ length: count }, (_, i) => f(i)),
    );
    const xyz = (values: ArrayLike<number>) => {
      const { X, Y, Z } = xyzFromSpectrum(createSpectrum({ start: 400, step: 10, values, scale: 'fraction' }), D65_10);
      return [X, Y, Z];
    };
    const columns = shapes.map(xyz);
    const goal = xyz(target.values).map((value, k) => value - xyz(spectrum.values)[k]);
    const det = (m: number[][]) =>
      m[0][0] * (m[1][1] * m[2][2] - m[1][2] * m[2][1]) -
      m[0][1] * (m[1][0] * m[2][2] - m[1][2] * m[2][0]) +
      m[0][2] * (m[1][0] * m[2][1] - m[1][1] * m[2][0]);
    const all = det(columns);
    const amounts = columns.map((_, j) => det(columns.map((column, k) => (k === j ? goal : column))) / all);
    return spectrumOf((i) => spectrum.values[i] + amounts.reduce((sum, amount, j) => sum + amount * shapes[j][i], 0));
  }

  const metamer = matched(wavy, grey);

  test.each(['multiplicative', 'additive'] as const)(
    'of an exact match is the plain ΔE*ab, with %s correction',
    (correction) => {
      const { index, matchDifference, change } = metamerismIndex(grey, metamer, {
        match: D65_10,
        test: A_10,
        correction,
      });
      expect(matchDifference).toBeLessThan(1e-9);
      expect(index).toBeGreaterThan(1);
      expect(index).toBeCloseTo(deltaEab(labFromSpectrum(grey, A_10), labFromSpectrum(metamer, A_10)), 8);
      expect(change).toBe('illuminant');
    },
  );

  test('of a paler copy of one spectrum is 0 when multiplied out: it is no metamer', () => {
    const paler = spectrumOf((i) => 1.1 * wavy.values[i]);
    const { index, index2000, matchDifference } = metamerismIndex(wavy, paler, { match: D65_10, test: FL11_10 });
    expect(matchDifference).toBeGreaterThan(2);
    expect(index).toBeCloseTo(0, 10);
    expect(index2000).toBeCloseTo(0, 10);
  });

  test('additive correction takes away the Lab difference of the match', () => {
    const other = spectrumOf((i) => 0.45 + 0.01 * i);
    const { index } = metamerismIndex(wavy, other, { match: D65_10, test: A_10, correction: 'additive' });
    const d = (viewing: typeof A_10) => {
      const [r, s] = [labFromSpectrum(wavy, viewing), labFromSpectrum(other, viewing)];
      return [s.L - r.L, s.a - r.a, s.b - r.b];
    };
    const [under, test] = [d(D65_10), d(A_10)];
    expect(index).toBeCloseTo(Math.hypot(...test.map((value, i) => value - under[i])), 10);
  });

  test('multiplicative correction scales the sample as CIE 015 says', () => {
    const other = spectrumOf((i) => 0.45 + 0.01 * i);
    const [r1, s1] = [xyzFromSpectrum(wavy, D65_10), xyzFromSpectrum(other, D65_10)];
    const [r2, s2] = [xyzFromSpectrum(wavy, A_10), xyzFromSpectrum(other, A_10)];
    const corrected = { X: (s2.X * r1.X) / s1.X, Y: (s2.Y * r1.Y) / s1.Y, Z: (s2.Z * r1.Z) / s1.Z };
    const A = whitePoint(A_10);
    const expected = deltaEab(labFromXyz(r2, A), labFromXyz(corrected, A));
    expect(metamerismIndex(wavy, other, { match: D65_10, test: A_10 }).index).toBeCloseTo(expected, 10);
  });

  test('takes a change of observer', () => {
    expect(metamerismIndex(grey, metamer, { match: D65_10, test: D65_2 })).toMatchObject({ change: 'observer' });
  });

  test.each([
    ['invalid-option', 'options.test', () => metamerismIndex(grey, wavy, { match: D65_10, test: D65_10 })],
    ['invalid-option', 'options.test', () => metamerismIndex(grey, wavy, { match: D65_10, test: A_2 })],
    [
      'invalid-option',
      'options.correction',
      () => metamerismIndex(grey, wavy, { match: D65_10, test: A_10, correction: 'none' as 'additive' }),
    ],
    [
      'out-of-range',
      'sample.X under options.match',
      () =>
        metamerismIndex(
          grey,
          spectrumOf(() => 0),
          { match: D65_10, test: A_10 },
        ),
    ],
  ])('refuses %s at %s', (code, path, call) => {
    expect(call).toThrow(expect.objectContaining({ code, path }));
  });
});
