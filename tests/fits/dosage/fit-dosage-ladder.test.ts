import { describe, expect, test } from 'vitest';
import { type DosageReadings, fitDosageLadder } from '../../../src/fits/index.js';
import { noiseFrom } from '../noise.js';

const fault = (code: string, path: string) => expect.objectContaining({ code, path });
const SEED = 20260305;
const DOSAGES = [2, 4, 6, 8, 10, 12, 14, 16];
const strength = (dosage: number) => 110 - 0.4 * Math.max(0, 11 - dosage) ** 2;
const ladder = (at: (dosage: number) => number, dosages: readonly number[] = DOSAGES): DosageReadings[] =>
  dosages.map((dosage) => ({ dosage, response: at(dosage) }));
/** Every dosage ground three times, `spread` either side of its response. */
const ground = (at: (dosage: number) => number, spread: number, dosages: readonly number[] = DOSAGES) =>
  dosages.map((dosage) => ({ dosage, response: { grind: [-spread, 0, spread].map((off) => at(dosage) + off) } }));

describe('the dosage that suffices', () => {
  // 2 % of 110 is 2.2; at 10 the ladder gives away 0.4, at 8 it gives away 3.6. Scatter 0.3, so that t = 1.746 (16 degrees of freedom,
  // NIST/SEMATECH e-Handbook, 1.3.6.7.2) times 0.3 √(2/3) is 0.43.
  test('is the smallest shown to lie within 2 % of the best', () => {
    const fit = fitDosageLadder(ground(strength, 0.3));
    expect(fit.margin).toBeCloseTo(2.2, 10);
    expect(fit.sufficient).toEqual({ dosage: 10, response: expect.closeTo(109.6, 9), noun: '3 grinds' });
    expect(fit.scatter).toEqual({ standardDeviation: expect.closeTo(0.3, 9), degreesOfFreedom: 16, basis: 'units' });
  });

  test.each([
    // what 10 gives away is 0.4, and 0.43 more is not excluded
    [0.8, 12],
    [0.9, 10],
    // what 8 gives away is 3.6
    [4, 10],
    [4.1, 8],
  ])('with a margin of %d in the unit of the response is %d', (margin, dosage) => {
    expect(fitDosageLadder(ground(strength, 0.3), { margin: (100 * margin) / 110 }).sufficient?.dosage).toBe(dosage);
  });

  test('is undecided where the scatter is too large, which says what to make', () => {
    const fit = fitDosageLadder(ground(strength, 3));
    expect(fit).not.toHaveProperty('sufficient');
    expect(fit.warnings).toContainEqual(
      expect.objectContaining({
        code: 'margin-not-shown',
        figures: expect.objectContaining({ standardDeviation: expect.closeTo(3, 9), basis: 'units' }),
      }),
    );
  });

  test('rests on no less scatter than the history tells', () => {
    const precision = { grind: 3, degreesOfFreedom: 20 };
    const fit = fitDosageLadder(ground(strength, 0.3), { precision });
    expect(fit.scatter).toEqual({ standardDeviation: 3, degreesOfFreedom: expect.closeTo(20, 9), basis: 'history' });
    expect(fit).not.toHaveProperty('sufficient');
    expect(fitDosageLadder(ground(strength, 0.3), { precision: { ...precision, grind: 0.1 } }).scatter.basis).toBe(
      'units',
    );
  });

  test('is looked for from the best downwards: an island below a gap is none', () => {
    const island = (x: number) => (x === 4 ? 109.9 : strength(x));
    expect(fitDosageLadder(ground(island, 0.3)).sufficient?.dosage).toBe(10);
  });

  test('of the lowest response takes its margin in the unit of the response', () => {
    const rubOut = (dosage: number) => 0.3 + 0.05 * Math.max(0, 9 - dosage) ** 2;
    const fit = fitDosageLadder(ground(rubOut, 0.02), { best: 'lowest', margin: 0.1 });
    // at 8 it gives away 0.05, and t √(2/3) 0.02 = 0.029 more is not excluded
    expect(fit).toMatchObject({ sufficient: { dosage: 8 }, direction: 'falling' });
    expect(() => fitDosageLadder(ground(rubOut, 0.02), { best: 'lowest' })).toThrow(
      fault('invalid-option', 'options.margin'),
    );
  });

  test('spots of one film are averaged and lend no scatter', () => {
    const noise = noiseFrom(SEED);
    const spots = DOSAGES.map((dosage) => {
      const film = strength(dosage) + noise();
      return { dosage, response: { spot: [film - 0.01, film + 0.01] } };
    });
    const fit = fitDosageLadder(spots);
    expect(fit.scatter.basis).toBe('curve');
    expect(fit.scatter.standardDeviation).toBeGreaterThan(0.3);
    expect(fit.points[0].noun).toBe('2 spots of one film');
    expect(fit.warnings.map(({ code }) => code)).not.toContain('lack-of-fit');
  });
});

describe('the curve of a dosage ladder', () => {
  test('gives back the plateau it was made from', () => {
    const fit = fitDosageLadder(ladder(strength));
    expect(fit).toMatchObject({ kind: 'dosage-ladder', outcome: 'plateau', direction: 'rising' });
    expect(fit.plateau?.dosage).toBeCloseTo(11, 6);
    expect(fit.plateau?.response).toBeCloseTo(110, 6);
    expect([fit.curve[0].dosage, fit.curve[100].dosage]).toEqual([2, 16]);
  });

  test('comes from points in any order', () => {
    const fit = fitDosageLadder(ladder(strength, [16, 2, 8, 6, 12, 4, 10, 14]));
    expect(fit.plateau?.dosage).toBeCloseTo(11, 6);
    expect(fit.points.map(({ dosage }) => dosage)).toEqual(DOSAGES);
  });

  test('that still changes at its end reaches no plateau', () => {
    for (const at of [
      (x: number) => 50 + 3 * x,
      (x: number) => 60 + 0.2 * x * x,
      (x: number) => 110 - 0.1 * (20 - x) ** 2,
    ]) {
      const fit = fitDosageLadder(ladder(at));
      expect(fit.outcome).toBe('no-plateau-reached');
      expect(fit).not.toHaveProperty('plateau');
    }
  });

  test('without an effect says so', () => {
    const noise = noiseFrom(SEED);
    expect(fitDosageLadder(ladder(() => 100)).outcome).toBe('no-effect');
    expect(fitDosageLadder(ladder(() => 100 + noise())).outcome).toBe('no-effect');
  });

  test('is noted where it misses the means by more than grinds scatter', () => {
    const wavy = (x: number) => strength(x) + 6 * Math.cos(x);
    expect(fitDosageLadder(ground(wavy, 0.3)).warnings).toContainEqual(
      expect.objectContaining({ code: 'lack-of-fit' }),
    );
  });

  test('is noted where the response falls off at the highest dosage', () => {
    const overdosed = (x: number) => strength(x) - (x === 16 ? 4 : 0);
    expect(fitDosageLadder(ground(overdosed, 0.3)).warnings).toContainEqual(
      expect.objectContaining({ code: 'falls-off', path: '16' }),
    );
    expect(fitDosageLadder(ground(strength, 0.3)).warnings).toEqual([]);
  });
});

test('too few points, a repeated dosage and figures that are none are refused, naming the place', () => {
  const path = 'number of dosages';
  expect(() => fitDosageLadder([])).toThrow(fault('too-few-points', path));
  expect(() => fitDosageLadder(ladder(strength, [5, 6]))).toThrow(fault('too-few-points', path));
  expect(() => fitDosageLadder(ladder(strength, [5, 5]))).toThrow(fault('repetition-unstated', 'points[1].dosage'));
  expect(() => fitDosageLadder(ladder(strength, [2, 4, 6, 8]))).toThrow(fault('too-few-points', 'number of points'));
  expect(() => fitDosageLadder([{ dosage: Infinity, response: 1 }])).toThrow(fault('not-finite', 'points[0].dosage'));
  expect(() => fitDosageLadder([{ dosage: 1, response: -1 }])).toThrow(fault('out-of-range', 'points[0].response'));
  expect(() => fitDosageLadder(ladder(strength), { margin: 0 })).toThrow(fault('invalid-option', 'options.margin'));
});
