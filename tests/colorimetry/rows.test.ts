import { describe, expect, test } from 'vitest';
import {
  createSpectrum,
  D65_10,
  deltaE2000,
  deltaE2000Rows,
  FL11_2,
  labFromSpectrum,
  labRows,
} from '../../src/colorimetry/index.js';
import { randomNumbers } from './random-numbers.js';

const SEED = 30001;

function replaced(values: Float64Array, index: number, value: number): Float64Array {
  return values.map((old, i) => (i === index ? value : old));
}

describe('deltaE2000Rows', () => {
  const random = randomNumbers(SEED);
  const labs = (count: number) =>
    Float64Array.from({ length: 3 * count }, (_, i) => (i % 3 ? 200 * random() - 100 : 100 * random()));
  const references = labs(500);
  const samples = references.map((value, i) => (i % 2 ? value : value + 5 * random()));
  const labAt = (values: Float64Array, i: number) => ({ L: values[3 * i], a: values[3 * i + 1], b: values[3 * i + 2] });

  test.each([{}, { kL: 2, kC: 0.5, kH: 1.5 }])(
    `equals the single form to the bit with %o (seed ${SEED})`,
    (options) => {
      const differences = deltaE2000Rows(references, samples, undefined, options);
      expect(differences).toHaveLength(500);
      differences.forEach((difference, i) => {
        expect(difference).toBe(deltaE2000(labAt(references, i), labAt(samples, i), options));
      });
    },
  );

  test('writes into the array it is given and leaves its inputs alone', () => {
    const out = new Float64Array(500);
    const before = [references.slice(), samples.slice()];
    expect(deltaE2000Rows(references, samples, out)).toBe(out);
    expect(out).toEqual(deltaE2000Rows(references, samples));
    expect([references, samples]).toEqual(before);
  });

  const three = Float64Array.of(50, 1, 1);
  const six = Float64Array.of(50, 1, 1, 50, 2, 2);
  test.each([
    ['empty', 'references.length', () => deltaE2000Rows(new Float64Array(0), three)],
    ['not-a-multiple', 'references.length', () => deltaE2000Rows(six.subarray(0, 4), six)],
    ['wrong-length', 'samples.length', () => deltaE2000Rows(six, three)],
    ['wrong-length', 'out.length', () => deltaE2000Rows(six, six, new Float64Array(6))],
    ['invalid-option', 'options.kH', () => deltaE2000Rows(six, six, undefined, { kH: 0 })],
    ['not-finite', 'references[4]', () => deltaE2000Rows(replaced(six, 4, Number.NaN), six)],
    ['not-finite', 'samples[5]', () => deltaE2000Rows(six, replaced(six, 5, Infinity))],
    ['not-finite', 'references[0]', () => deltaE2000Rows(Float64Array.of(Number.NaN, 1, 1), three)],
  ])('refuses %s at %s', (code, path, call) => {
    expect(call).toThrow(expect.objectContaining({ code, path }));
  });
});

describe('labRows', () => {
  const random = randomNumbers(SEED);
  const grid = { start: 400, step: 10, count: 31 };
  const values = Float64Array.from({ length: 31 * 41 }, () => random());

  test.each([D65_10, FL11_2])(`equals the single form to the bit under %o (seed ${SEED})`, (viewing) => {
    const labs = labRows(values, grid, viewing);
    expect(labs).toHaveLength(3 * 41);
    for (let i = 0; i < 41; i++) {
      const spectrum = createSpectrum({ ...grid, values: values.subarray(31 * i, 31 * (i + 1)), scale: 'fraction' });
      const { L, a, b } = labFromSpectrum(spectrum, viewing);
      expect([...labs.subarray(3 * i, 3 * i + 3)]).toEqual([L, a, b]);
    }
  });

  test('writes into the array it is given', () => {
    const out = new Float64Array(3 * 41);
    expect(labRows(values, grid, D65_10, out)).toBe(out);
    expect(out).toEqual(labRows(values, grid, D65_10));
  });

  test.each([
    ['empty', 'values.length', () => labRows(new Float64Array(0), grid, D65_10)],
    ['not-a-multiple', 'values.length', () => labRows(values.subarray(1), grid, D65_10)],
    ['wrong-length', 'out.length', () => labRows(values, grid, D65_10, new Float64Array(3))],
    ['grid-invalid', 'grid.count', () => labRows(values, { ...grid, count: 1 }, D65_10)],
    ['not-finite', 'values[33]', () => labRows(replaced(values, 33, Number.NaN), grid, D65_10)],
    ['not-finite', 'values[2]', () => labRows(replaced(values.subarray(0, 31), 2, Number.NaN), grid, D65_10)],
    [
      'unknown-illuminant',
      'viewing.illuminant',
      () => labRows(values, grid, { illuminant: 'X' as 'A', observer: '2' }),
    ],
  ])('refuses %s at %s', (code, path, call) => {
    expect(call).toThrow(expect.objectContaining({ code, path }));
  });
});
