import { describe, expect, test } from 'vitest';
import {
  A_10,
  colourDifference,
  colourDifferenceOfReadings,
  createSpectrum,
  D65_2,
  D65_10,
  labFromSpectrum,
  type Reading,
  whitePoint,
  xyzFromLab,
} from '../../src/colorimetry/index.js';

const conditions = { viewing: D65_10, specular: 'included', geometry: 'di:8°', instrument: 'lab 1' } as const;
const standard: Reading = { name: 'standard', lab: { L: 50, a: 10, b: 5 }, conditions };
const batch: Reading = { name: 'batch', lab: { L: 51, a: 10.5, b: 4 }, conditions };
const compare = (reference: Reading, sample: Reading) =>
  colourDifferenceOfReadings(reference, sample, { viewing: D65_10 });

describe('colourDifferenceOfReadings', () => {
  test('is the colour difference with its conditions', () => {
    expect(compare(standard, batch)).toEqual({
      ...colourDifference({ L: 50, a: 10, b: 5 }, { L: 51, a: 10.5, b: 4 }),
      viewing: D65_10,
      conditions,
      warnings: [],
    });
  });

  test('takes spectra, Lab and XYZ together', () => {
    const spectrum = createSpectrum({ start: 400, step: 10, values: [0.2, 0.3, 0.4], scale: 'fraction' });
    const lab = labFromSpectrum(spectrum, D65_10);
    const read = (colour: Partial<Reading>): Reading => ({ name: 'x', conditions, ...colour });
    const xyz = xyzFromLab(lab, whitePoint(D65_10));
    expect(compare(read({ spectrum }), read({ lab })).dE2000).toBe(0);
    expect(compare(read({ spectrum }), read({ xyz })).dE2000).toBeLessThan(1e-10);
  });

  test.each([
    ['specular', 'excluded', { specular: 'excluded' as const }],
    ['geometry', '45°a:0°', { geometry: '45°a:0°' }],
    ['viewing', 'A/10°', { viewing: A_10 }],
    ['viewing', 'D65/2°', { viewing: D65_2 }],
    ['viewing', undefined, { viewing: undefined }],
  ])('refuses a sample read under another %s: %s', (condition, received, change) => {
    const other = { ...batch, conditions: { ...conditions, ...change } };
    expect(() => compare(standard, other)).toThrow(
      expect.objectContaining({ code: 'conditions-mismatch', path: `sample.conditions.${condition}`, received }),
    );
  });

  test('a viewing that neither colour belongs to is refused', () => {
    expect(() => colourDifferenceOfReadings(standard, batch, { viewing: A_10 })).toThrow(
      expect.objectContaining({ code: 'conditions-mismatch', path: 'reference.conditions.viewing' }),
    );
  });

  test('a condition that one of them does not state is noted, as is another instrument', () => {
    const { warnings, conditions: common } = compare(standard, { ...batch, conditions: { viewing: D65_10 } });
    expect(warnings.map(({ code, path }) => `${code} ${path}`)).toEqual([
      'condition-not-stated specular',
      'condition-not-stated geometry',
      'instruments-differ instrument',
    ]);
    expect(common).toStrictEqual({ viewing: D65_10 });
  });

  const bare: Reading = { name: 'bare', lab: standard.lab, conditions: { viewing: D65_10 } };
  test.each([
    ['the sample', standard, bare, '"standard" but not for "bare"', 'lab 1', 'one that is not stated'],
    ['the reference', bare, standard, '"standard" but not for "bare"', 'an instrument that is not stated', 'lab 1'],
  ])('what %s does not state is named in words', (_, reference, sample, which, first, second) => {
    expect(compare(reference, sample).warnings.map(({ message }) => message)).toEqual([
      `Specular treatment is stated for ${which}; they are taken to agree.`,
      `Geometry is stated for ${which}; they are taken to agree.`,
      `The reference was read with ${first}, the sample with ${second}; part of the difference may be the instruments'.`,
    ]);
  });

  test('what neither states is absent from what they have in common, and no cause for a note', () => {
    const { warnings, conditions: common } = compare(bare, bare);
    expect(warnings).toEqual([]);
    expect(common).toStrictEqual({ viewing: D65_10 });
  });

  test.each([conditions, {}])('a reading without a colour is refused as that under the conditions %j', (stated) => {
    expect(() => compare(standard, { name: 'none', conditions: stated })).toThrow(
      expect.objectContaining({ code: 'empty', path: 'sample' }),
    );
  });
});
