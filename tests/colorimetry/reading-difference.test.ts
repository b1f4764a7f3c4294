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
      kind: 'reading-difference',
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

  test('a condition that one of them does not state is noted once', () => {
    const { warnings, conditions: common } = compare(standard, { ...batch, conditions: { viewing: D65_10 } });
    expect(warnings.map(({ code, path, figures }) => ({ code, path, figures }))).toEqual(
      ['specular', 'geometry', 'instrument'].map((path) => ({
        code: 'condition-not-stated',
        path,
        figures: { stated: ['reference'], notStated: ['sample'] },
      })),
    );
    expect(common).toStrictEqual({ viewing: D65_10 });
  });

  test('a colour that states no viewing is taken to belong to the one asked for, and that is noted', () => {
    const { viewing: _, ...others } = conditions;
    const { dE2000, warnings } = compare(standard, { ...batch, conditions: others });
    expect(dE2000).toBe(compare(standard, batch).dE2000);
    expect(warnings).toMatchObject([{ code: 'condition-not-stated', path: 'sample.conditions.viewing' }]);
  });

  test('of several colours the one under the viewing asked for is taken', () => {
    const underA = { lab: { L: 52, a: 12, b: 9 }, viewing: A_10 };
    const several: Reading = { ...batch, colours: [underA] };
    const read: Reading = { name: 'x', lab: underA.lab, conditions: { ...conditions, viewing: A_10 } };
    expect(colourDifferenceOfReadings(read, several, { viewing: A_10 }).dEab).toBe(0);
    expect(compare(standard, several).dEab).toBe(compare(standard, batch).dEab);
  });

  const bare: Reading = { name: 'bare', lab: { L: 50, a: 10, b: 5 }, conditions: { viewing: D65_10 } };
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
