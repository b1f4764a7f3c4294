import { describe, expect, test } from 'vitest';
import { createSpectrum, D65_10, labFromSpectrum, type Spectrum } from '../../src/colorimetry/index.js';

const input = { start: 400, step: 10, values: [10, 20, 30], scale: 'percent' } as const;
const spectrum = createSpectrum(input);

describe('a spectrum in JSON', () => {
  test('is plain data, with its values as a list', () => {
    expect(JSON.parse(JSON.stringify(spectrum))).toStrictEqual({
      start: 400,
      step: 10,
      values: [0.1, 0.2, 0.3],
      scale: 'fraction',
    });
  });

  test.each([
    ['JSON', (given: Spectrum): Spectrum => JSON.parse(JSON.stringify(given))],
    ['a structured clone', (given: Spectrum): Spectrum => structuredClone(given)],
  ])('back from %s it is taken by every function, and made anew by createSpectrum', (_, through) => {
    const back = through(spectrum);
    expect(labFromSpectrum(back, D65_10)).toStrictEqual(labFromSpectrum(spectrum, D65_10));
    expect(createSpectrum(back)).toStrictEqual(spectrum);
  });

  test('what was changed on the way is checked', () => {
    const back = { ...spectrum, values: Float64Array.of(0.1, 57, 0.3) };
    expect(() => labFromSpectrum(back, D65_10)).toThrow(
      expect.objectContaining({ code: 'reflectance-out-of-range', received: 57 }),
    );
  });
});
