import { describe, expect, test } from 'vitest';
import { type DosagePoint, fitDosageLadder } from '../../src/fits/index.js';
import { coverage, noiseFrom } from './noise.js';

const fault = (code: string, path: string) => expect.objectContaining({ code, path });
const SEED = 20260305;
const DOSAGES = [2, 4, 6, 8, 10, 12, 14, 16];
const strength = (dosage: number) => 110 - 0.4 * Math.max(0, 11 - dosage) ** 2;
const ladder = (at: (dosage: number) => number, dosages: readonly number[] = DOSAGES): DosagePoint[] =>
  dosages.map((dosage) => ({ dosage, response: at(dosage) }));

describe('a dosage ladder', () => {
  test('gives back the plateau it was made from', () => {
    const fit = fitDosageLadder(ladder(strength));
    expect(fit).toMatchObject({ outcome: 'plateau', direction: 'rising', warnings: [] });
    expect(fit.optimum?.value).toBeCloseTo(11, 6);
    expect(fit.plateau?.value).toBeCloseTo(110, 6);
    expect([fit.curve[0].dosage, fit.curve[100].dosage]).toEqual([2, 16]);
  });

  test('may fall to its plateau, as a rub-out does, and come in any order', () => {
    const rubOut = (dosage: number) => 0.3 + 0.05 * Math.max(0, 9 - dosage) ** 2;
    const fit = fitDosageLadder(ladder(rubOut, [16, 2, 8, 6, 12, 4, 10, 14]));
    expect(fit).toMatchObject({ outcome: 'plateau', direction: 'falling' });
    expect(fit.optimum?.value).toBeCloseTo(9, 6);
    expect(fit.plateau?.value).toBeCloseTo(0.3, 6);
  });

  test('that still changes at its end reaches no plateau, and gives no optimum', () => {
    for (const at of [
      (x: number) => 50 + 3 * x,
      (x: number) => 60 + 0.2 * x * x,
      (x: number) => 110 - 0.1 * (20 - x) ** 2,
    ]) {
      const fit = fitDosageLadder(ladder(at));
      expect(fit.outcome).toBe('no-plateau-reached');
      expect([fit.optimum, fit.plateau]).toEqual([undefined, undefined]);
    }
  });

  test('without an effect says so', () => {
    const noise = noiseFrom(SEED);
    expect(fitDosageLadder(ladder(() => 100)).outcome).toBe('no-effect');
    expect(fitDosageLadder(ladder(() => 100 + noise())).outcome).toBe('no-effect');
  });

  test('takes points at the same dosage as replicates, and notes them', () => {
    const noise = noiseFrom(SEED);
    const fit = fitDosageLadder(ladder((x) => strength(x) + noise(), [2, 2, 5, 5, 8, 8, 11, 14, 17]));
    expect(fit.outcome).toBe('plateau');
    expect(fit.warnings).toContainEqual(expect.objectContaining({ code: 'replicates', path: '2, 5, 8' }));
  });

  test('notes a curve that misses the means of the replicates', () => {
    const noise = noiseFrom(SEED);
    const wavy = (x: number) => strength(x) + 6 * Math.cos(x) + 0.1 * noise();
    const fit = fitDosageLadder(
      ladder(
        wavy,
        DOSAGES.flatMap((x) => [x, x]),
      ),
    );
    expect(fit.warnings).toContainEqual(expect.objectContaining({ code: 'lack-of-fit' }));
  });

  test('notes a plateau that starts before any dosage could tell where', () => {
    const noise = noiseFrom(SEED);
    const fit = fitDosageLadder(ladder((x) => (x === 2 ? 80 : 110) + 0.5 * noise()));
    expect(fit.optimum?.interval?.low).toBe(2);
    expect(fit.warnings).toContainEqual(expect.objectContaining({ code: 'optimum-not-resolved' }));
  });

  test('notes a plateau that the last dosages do not prove', () => {
    const noise = noiseFrom(SEED);
    const fits = Array.from({ length: 20 }, () =>
      fitDosageLadder(ladder((x) => strength(x) + noise(), [2, 4, 6, 8, 10, 12])),
    );
    const codes = fits.flatMap(({ warnings }) => warnings.map(({ code }) => code));
    expect(codes).toContain('plateau-not-proven');
  });

  test('notes a response that falls off at the highest dosage', () => {
    const noise = noiseFrom(SEED);
    const overdosed = (x: number) => strength(x) - (x === 16 ? 4 : 0) + 0.3 * noise();
    expect(fitDosageLadder(ladder(overdosed)).warnings).toContainEqual(
      expect.objectContaining({ code: 'falls-off', path: '16' }),
    );
  });

  test('is refused with too few points or a single dosage, naming the place', () => {
    const path = 'number of different dosages';
    expect(() => fitDosageLadder([])).toThrow(fault('too-few-points', path));
    expect(() => fitDosageLadder(ladder(strength, [5, 5, 5, 5, 5, 5]))).toThrow(fault('too-few-points', path));
    expect(() => fitDosageLadder(ladder(strength, [2, 4, 6, 8]))).toThrow(fault('too-few-points', 'number of points'));
    expect(() => fitDosageLadder([{ dosage: Infinity, response: 1 }])).toThrow(fault('not-finite', 'points[0].dosage'));
    expect(() => fitDosageLadder([{ dosage: 1, response: -1 }])).toThrow(fault('out-of-range', 'points[0].response'));
  });

  test(`has intervals that hold the truth in 93-97 % of 1,000 ladders (seed ${SEED})`, () => {
    const noise = noiseFrom(SEED);
    const fits = Array.from({ length: 1000 }, () => fitDosageLadder(ladder((x) => strength(x) + 1.1 * noise())));
    const shares = [
      coverage(
        11,
        fits.map((fit) => fit.optimum?.interval),
      ),
      coverage(
        110,
        fits.map((fit) => fit.plateau?.interval),
      ),
    ];
    for (const share of shares) {
      expect(share, shares.join(', ')).toBeGreaterThanOrEqual(93);
      expect(share, shares.join(', ')).toBeLessThanOrEqual(97);
    }
  }, 60_000);
});
