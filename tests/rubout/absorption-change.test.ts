import { describe, expect, test } from 'vitest';
import { assessRubOut, D65_10, type Lab, labFromXyz, type Spectrum, whitePoint } from '../../src/index.js';
import { absorptionChange } from '../../src/rubout/absorption-change.js';
import { filmOf } from './films.js';

const viewing = D65_10;

/** Reflectance of an opaque film of this K/S (Kubelka-Munk). */
const reflectanceOf = (ratio: number) => 1 + ratio - Math.sqrt(ratio * ratio + 2 * ratio);

/** Lab of a film with these K/S in X, Y and Z. */
const labOf = (ratios: readonly number[]): Lab => {
  const white = whitePoint(viewing);
  const [X, Y, Z] = ratios.map(reflectanceOf);
  return labFromXyz({ X: X * white.X, Y: Y * white.Y, Z: Z * white.Z }, white);
};
const ofLab = (from: readonly number[], to: readonly number[]) =>
  absorptionChange(
    [
      { name: 'unrubbed', labs: [labOf(from)] },
      { name: 'rubbed', labs: [labOf(to)] },
    ],
    { viewing },
  );
const ofSpectra = (from: Spectrum, to: Spectrum) =>
  absorptionChange(
    [
      { name: 'unrubbed', labs: [labOf([1, 1, 1])], spectra: [from] },
      { name: 'rubbed', labs: [labOf([1, 1, 1])], spectra: [to] },
    ],
    { viewing },
  );

describe('what rises and what falls in K/S', () => {
  test('is summed over X, Y and Z, each of them once', () => {
    // 0.1 + 0.02 rise, 0.3 falls; to rounding through Lab and back
    const change = ofLab([0.2, 0.5, 0.4], [0.3, 0.2, 0.42]);
    expect(change?.rises).toBeCloseTo(0.12, 9);
    expect(change?.falls).toBeCloseTo(0.3, 9);
  });

  test('is summed over the spectrum from its first to its last wavelength', () => {
    const steps: Readonly<Record<number, number>> = { 400: 0.1, 550: 0.2, 700: 0.4, 500: -0.05 };
    const change = ofSpectra(
      filmOf(() => 0.5),
      filmOf((nm) => 0.5 + (steps[nm] ?? 0)),
    );
    expect(change?.rises).toBeCloseTo(0.7, 9);
    expect(change?.falls).toBeCloseTo(0.05, 9);
  });
});

describe('the direction that it gives a tint of one pigment', () => {
  // The share of the difference that is no strength is left out of the question.
  const diagnose = (from: readonly number[], to: readonly number[]) =>
    assessRubOut(labOf(from), labOf(to), { viewing, thresholds: { shadeShare: 100 } }).diagnosis;

  test.each([
    ['0.8 up against 0.19 down, less than a quarter', [0.2, 0.5, 0.5], [1, 0.31, 0.5], 'coloured-pigment-flocculated'],
    ['0.8 up against 0.21 down, more than a quarter', [0.2, 0.5, 0.5], [1, 0.29, 0.5], 'undetermined'],
    ['0.19 up against 0.8 down, and lighter', [0.5, 1, 0.5], [0.69, 0.2, 0.5], 'white-pigment-flocculated'],
    ['0.21 up against 0.8 down, and lighter', [0.5, 1, 0.5], [0.71, 0.2, 0.5], 'undetermined'],
    ['0.02 up in Y against 8 down in Z, so weaker and darker', [0.02, 0.02, 24], [0.02, 0.04, 16], 'undetermined'],
    ['8 down in Z alone, so weaker and as light as before', [0.02, 0.02, 24], [0.02, 0.02, 16], 'undetermined'],
  ])('%s', (_, from, to, diagnosis) => {
    expect(diagnose(from, to)).toBe(diagnosis);
  });
});
