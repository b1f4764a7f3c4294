import { describe, expect, test } from 'vitest';
import { correctBandPass, createSpectrum, type Grid, resample } from '../../src/colorimetry/index.js';
import { PIGMENTS } from './pigments.js';

const read = (curve: (nm: number) => number, { start, step, count }: Grid) =>
  createSpectrum({
    start,
    step,
    values: Array.from({ length: count }, (_, i) => curve(start + i * step)),
    scale: 'fraction',
  });

const TEN = { start: 400, step: 10, count: 31 };
const FIVE = { start: 400, step: 5, count: 61 };

describe('resample', () => {
  test('is exact for a polynomial of fourth degree, up to the ends', () => {
    const quartic = (nm: number) => {
      const t = (nm - 550) / 150;
      return 0.5 + 0.2 * t - 0.1 * t ** 2 + 0.15 * t ** 3 + 0.1 * t ** 4;
    };
    const fine = resample(read(quartic, TEN), { start: 401, step: 3, count: 100 });
    fine.values.forEach((value, i) => {
      expect(value).toBeCloseTo(quartic(401 + 3 * i), 12);
    });
  });

  test('is exact for a polynomial of fourth degree from six readings on', () => {
    const quartic = (nm: number) => 0.2 + 0.5 * ((nm - 400) / 50) ** 4;
    resample(read(quartic, { ...TEN, count: 6 }), { ...FIVE, count: 11 }).values.forEach((value, i) => {
      expect(value).toBeCloseTo(quartic(400 + 5 * i), 12);
    });
  });

  test('is the cubic Lagrange polynomial for fewer than six readings', () => {
    const cubic = (nm: number) => 0.3 + ((nm - 420) / 40) ** 3 * 0.1;
    const fine = resample(read(cubic, { start: 400, step: 10, count: 4 }), { start: 410, step: 5, count: 3 });
    fine.values.forEach((value, i) => {
      expect(value).toBeCloseTo(cubic(410 + 5 * i), 12);
    });
  });

  test.each(PIGMENTS)('comes within 0.002 of $name between readings 10 nm apart', ({ reflectance }) => {
    resample(read(reflectance, TEN), FIVE).values.forEach((value, i) => {
      expect(Math.abs(value - reflectance(400 + 5 * i))).toBeLessThan(0.002);
    });
  });

  test('keeps every reading, to the bit, there and back', () => {
    const spectrum = read(PIGMENTS[7].reflectance, TEN);
    expect(resample(resample(spectrum, FIVE), TEN)).toEqual(spectrum);
    expect(resample(spectrum, TEN)).toEqual(spectrum);
  });

  test('takes part of the range', () => {
    const spectrum = read(PIGMENTS[3].reflectance, TEN);
    const part = resample(spectrum, { start: 500, step: 20, count: 6 });
    expect([...part.values]).toEqual([10, 12, 14, 16, 18, 20].map((i) => spectrum.values[i]));
  });

  test.each([
    ['out-of-range', 'grid', { ...TEN, start: 395 }, { ...TEN, start: 395 }],
    ['out-of-range', 'grid', { ...TEN, count: 32 }, { ...TEN, count: 32 }],
    ['grid-invalid', 'grid.step', 0.1, { ...TEN, step: 0.1 }],
    ['grid-invalid', 'grid.start', 300, { ...TEN, start: 300 }],
  ])('refuses %s at %s, %j: it never reaches beyond the readings', (code, path, received, grid) => {
    expect(() =>
      resample(
        read(() => 0.5, TEN),
        grid,
      ),
    ).toThrow(expect.objectContaining({ code, path, received }));
  });

  test('refuses a curve that swings below 0 between readings instead of clamping it', () => {
    const step = read((nm) => (nm < 550 ? 0 : 0.9), TEN);
    expect(() => resample(step, FIVE)).toThrow(expect.objectContaining({ code: 'reflectance-out-of-range' }));
  });
});

describe('correctBandPass', () => {
  test('undoes a triangular band-pass as wide as the step, to second order', () => {
    const { reflectance } = PIGMENTS[6];
    // The triangle of 10 nm half width, summed at 0.5 nm.
    const received = (nm: number) => {
      let [sum, weight] = [0, 0];
      for (let d = -10; d <= 10; d += 0.5) {
        sum += (10 - Math.abs(d)) * reflectance(nm + d);
        weight += 10 - Math.abs(d);
      }
      return sum / weight;
    };
    const blurred = read(received, TEN);
    const corrected = correctBandPass(blurred);
    const worst = (values: Float64Array) =>
      Math.max(...[...values.slice(1, -1)].map((value, i) => Math.abs(value - reflectance(410 + 10 * i))));
    expect(worst(corrected.values)).toBeLessThan(worst(blurred.values) / 5);
  });

  test('has the published end rules', () => {
    const [R0, R1, R2] = [0.2, 0.35, 0.4];
    const corrected = correctBandPass(
      createSpectrum({ start: 400, step: 10, values: [R0, R1, R2], scale: 'fraction' }),
    );
    const expected = [1.083 * R0 - 0.083 * R1, -0.083 * R0 + 1.166 * R1 - 0.083 * R2, 1.083 * R2 - 0.083 * R1];
    corrected.values.forEach((value, i) => {
      expect(value).toBeCloseTo(expected[i], 12);
    });
  });

  test('refuses to go below 0', () => {
    const spectrum = createSpectrum({ start: 400, step: 10, values: [0, 0.9, 0.9], scale: 'fraction' });
    expect(() => correctBandPass(spectrum)).toThrow(
      expect.objectContaining({ code: 'reflectance-out-of-range', path: 'reflectance at 400 nm (index 0)' }),
    );
  });
});
