import { readFileSync } from 'node:fs';
import { describe, expect, test } from 'vitest';
import { type Conditions, D65_10, type Reading, type Spectrum } from '../../src/colorimetry/index.js';
import { groupReadings, mapRepeated } from '../../src/evidence/index.js';
import { readMeasurements, writeMeasurements } from '../../src/exchange/index.js';
import { compareStrengthCriteria, type StrengthReading } from '../../src/strength/index.js';
import { COLORANTS, PAINT_SURFACE, reduction } from './simulated-reductions.js';
import { codesOf, noteOf, strengthOf } from './strength-of.js';

const surface = PAINT_SURFACE;
const [white, reference, trial] = [0, 1, 1.2].map((amount) => reduction(COLORANTS.blue, amount, { surface }));
const read = (spectrum: Spectrum, conditions: Conditions): Reading => ({ name: 'x', spectrum, conditions });
const both = { criterion: 'absorption-maximum', viewing: D65_10, surface } as const;

/** Strength, and every criterion: both keep the rule. */
const FUNCTIONS = {
  relativeTintingStrength: (one: StrengthReading, other: StrengthReading, base?: StrengthReading) =>
    strengthOf(one, other, { surface, white: base }),
  compareStrengthCriteria: (one: StrengthReading, other: StrengthReading, base?: StrengthReading) =>
    compareStrengthCriteria(one, other, { viewing: D65_10, surface, white: base }),
};

describe.each(Object.entries(FUNCTIONS))('%s', (_, act) => {
  test.each<[string, StrengthReading, StrengthReading, StrengthReading | undefined]>([
    [
      'trial.conditions.specular',
      read(reference, { specular: 'included' }),
      read(trial, { specular: 'excluded' }),
      white,
    ],
    [
      'white.conditions.specular',
      read(reference, { specular: 'included' }),
      trial,
      read(white, { specular: 'excluded' }),
    ],
    [
      'trial.conditions.geometry',
      read(reference, { geometry: 'di:8°' }),
      read(trial, { geometry: '45°a:0°' }),
      undefined,
    ],
  ])('refuses readings under different conditions: %s', (path, one, other, base) => {
    expect(() => act(one, other, base)).toThrow(expect.objectContaining({ code: 'conditions-mismatch', path }));
  });

  test.each<[string, Conditions]>([
    ['reference.conditions.specular', { specular: 'excluded' }],
    ['reference.conditions.geometry', { geometry: '45°a:0°' }],
  ])('refuses readings that agree, but not with the surface: %s', (path, conditions) => {
    expect(() => act(read(reference, conditions), read(trial, conditions), read(white, conditions))).toThrow(
      expect.objectContaining({ code: 'conditions-mismatch', path }),
    );
  });

  test('gives the figures of the spectra, whether they come with conditions or without', () => {
    const conditions: Conditions = { specular: 'included', geometry: 'di:8°', instrument: 'A', session: '1' };
    const found = act(read(reference, conditions), read(trial, conditions), read(white, conditions));
    expect(found).toEqual(act(reference, trial, white));
  });

  test('refuses a reading that holds no spectrum, or conditions that are none', () => {
    const lab: Reading = { name: 'x', lab: { L: 50, a: 0, b: 0 }, conditions: {} };
    expect(() => act(reference, lab)).toThrow(expect.objectContaining({ code: 'kinds-mixed', path: 'trial.spectrum' }));
    const misspelt = { name: 'x', spectrum: trial, conditions: { specular: 'include' } } as unknown as Reading;
    expect(() => act(reference, misspelt)).toThrow(
      expect.objectContaining({ code: 'invalid-option', path: 'trial.conditions.specular' }),
    );
  });
});

describe('readings in a nest', () => {
  const weighing = (...instruments: string[]) => ({
    weighing: instruments.map((instrument) => read(reference, { instrument })),
  });

  test('a fault names the unit', () => {
    const mixed = { weighing: [read(trial, { specular: 'included' }), read(trial, { specular: 'excluded' })] };
    expect(() => strengthOf(reference, mixed, { surface: 'none' })).toThrow(
      expect.objectContaining({ code: 'conditions-mismatch', path: 'trial.weighing[1].conditions.specular' }),
    );
  });

  test('another instrument, and what only some state, is one warning; the surface is no reading that states nothing', () => {
    const differing = strengthOf(weighing('A', 'A'), weighing('A', 'B'), { surface });
    expect(noteOf(differing, 'instruments-differ')?.figures).toEqual({
      names: ['reference.weighing[0]', 'trial.weighing[1]'],
      values: ['A', 'B'],
    });
    const silent = strengthOf(weighing('A', 'A'), trial, { surface, white });
    expect(noteOf(silent, 'condition-not-stated')?.figures).toMatchObject({ notStated: ['trial', 'white'] });
    const alike = read(reference, { specular: 'included', instrument: 'A' });
    expect(codesOf(alike, alike, { surface })).not.toContain('condition-not-stated');
  });
});

describe('measurements straight from a file', () => {
  test('are taken as they come, repeated by their names', () => {
    const { measurements } = readMeasurements(readFileSync('examples/dispersant-screening/readings.csv'));
    const groups = (pattern: string) => groupReadings(measurements, pattern).groups.map(({ readings }) => readings);
    const [base] = groups('WB white {drawdown}');
    const [first, second] = groups('WB {package} unrubbed {weighing}-{spot}');
    const spectra = (given: typeof base) =>
      mapRepeated(given, ({ spectrum, name }) => {
        if (spectrum) return spectrum;
        throw new Error(`${name} has no spectrum`);
      });
    expect(strengthOf(first, second, { ...both, white: base })).toEqual(
      strengthOf(spectra(first), spectra(second), { ...both, white: spectra(base) }),
    );
  });

  test('are refused by the conditions that the file states', () => {
    const written = writeMeasurements(
      [
        { ...read(reference, { specular: 'included' }), name: 'R', fields: {} },
        { ...read(trial, { specular: 'excluded' }), name: 'T', fields: {} },
      ],
      { format: 'iso-17972' },
    );
    const [first, second] = readMeasurements(written).measurements;
    expect(() => strengthOf(first, second, { surface })).toThrow(
      expect.objectContaining({ code: 'conditions-mismatch', path: 'trial.conditions.specular' }),
    );
  });
});
