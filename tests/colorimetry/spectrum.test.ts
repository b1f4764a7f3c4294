import { describe, expect, test } from 'vitest';
import { createSpectrum, gridOf, spectrumWarnings, TintladderError } from '../../src/colorimetry/index.js';
import { PIGMENTS } from './pigments.js';

const good = { start: 400, interval: 10, values: [0.1, 0.2, 0.3], scale: 'fraction' } as const;

describe('createSpectrum', () => {
  test('copies the values, scales percent, and freezes', () => {
    const values = [10, 20, 30];
    const spectrum = createSpectrum({ ...good, values, scale: 'percent' });
    values[0] = 99;
    expect([...spectrum.values]).toEqual([0.1, 0.2, 0.3]);
    expect(Object.isFrozen(spectrum)).toBe(true);
    expect(gridOf(spectrum)).toEqual({ start: 400, interval: 10, count: 3 });
  });

  test('takes the widest grid, a fluorescent white and a perfect black', () => {
    createSpectrum({ start: 360, interval: 1, values: Array(471).fill(0), scale: 'fraction' });
    createSpectrum({ ...good, values: [1.2, 2, 0] });
  });

  test.each([
    ['invalid-option', 'scale', { scale: undefined as unknown as 'percent' }],
    ['grid-invalid', 'grid.count', { values: [0.5] }],
    ['grid-invalid', 'grid.interval', { interval: 25 }],
    ['grid-invalid', 'grid.interval', { interval: 0.5 }],
    ['grid-invalid', 'grid.interval', { interval: Number.NaN }],
    ['grid-invalid', 'grid.start', { start: 350 }],
    ['grid-invalid', 'grid.start', { start: Number.NaN }],
    ['grid-invalid', 'grid.end', { start: 815 }],
    ['not-finite', 'reflectance at 410 nm (index 1)', { values: [0.1, Number.NaN] }],
    ['not-finite', 'reflectance at 410 nm (index 1)', { values: [0.1, Infinity] }],
    ['not-finite', 'reflectance at 410 nm (index 1)', { values: [0.1, '0.2' as unknown as number] }],
    ['reflectance-out-of-range', 'reflectance at 410 nm (index 1)', { values: [0.1, -0.001] }],
    ['reflectance-out-of-range', 'reflectance at 400 nm (index 0)', { values: [57.2, 0.1] }],
    ['reflectance-out-of-range', 'reflectance at 400 nm (index 0)', { values: [201, 1], scale: 'percent' as const }],
  ])('refuses %s at %s', (code, place, change) => {
    expect(() => createSpectrum({ ...good, ...change })).toThrow(TintladderError);
    expect(() => createSpectrum({ ...good, ...change })).toThrow(expect.objectContaining({ code, place }));
  });

  test('says how to mend percent passed as fractions', () => {
    expect(() => createSpectrum({ ...good, values: [57.2, 1] })).toThrow(
      "reflectance at 400 nm (index 0) is 57.2; a fraction from 0 to 2 is expected. Pass scale: 'percent'?",
    );
  });
});

describe('spectrumWarnings', () => {
  test.each(PIGMENTS)('has nothing to say of $name, smooth at 10 nm', ({ reflectance }) => {
    const values = Array.from({ length: 31 }, (_, i) => reflectance(400 + 10 * i));
    expect(spectrumWarnings(createSpectrum({ start: 400, interval: 10, values, scale: 'fraction' }))).toEqual([]);
  });

  test('notes an absorption line narrower than the interval', () => {
    const values = Array.from({ length: 31 }, (_, i) => 0.6 - 0.3 * Math.exp(-(((400 + 10 * i - 583) / 5) ** 2)));
    const [warning, ...others] = spectrumWarnings(
      createSpectrum({ start: 400, interval: 10, values, scale: 'fraction' }),
    );
    expect(others).toEqual([]);
    expect(warning).toMatchObject({ code: 'narrow-features', place: '580 nm' });
  });

  test('notes a reflectance factor above 1 where it is highest', () => {
    const spectrum = createSpectrum({ start: 430, interval: 10, values: [1.01, 1.2, 0.95], scale: 'fraction' });
    expect(spectrumWarnings(spectrum)).toMatchObject([{ code: 'reflectance-above-one', place: '440 nm' }]);
  });
});
