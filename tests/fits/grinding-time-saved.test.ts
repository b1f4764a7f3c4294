import { expect, test } from 'vitest';
import { fitGrindCurve, grindingTimeSaved } from '../../src/fits/index.js';
import { coverage, noiseFrom } from './noise.js';

const fault = (code: string, path: string) => expect.objectContaining({ code, path });
const SEED = 20260304;
const TIMES = [5, 8, 12, 18, 27, 40, 60, 90];
const ladder = (half: number, noise = () => 0, final = 110) =>
  TIMES.map((time) => ({ time, strength: (final * time) / (time + half) + noise() }));

test('is the difference of the times to the same strength', () => {
  const found = grindingTimeSaved(fitGrindCurve(ladder(12)), fitGrindCurve(ladder(7)), { strength: 88 });
  expect(found.referenceTime).toBeCloseTo(48, 4);
  expect(found.sampleTime).toBeCloseTo(28, 4);
  expect(found.saved.value).toBeCloseTo(20, 4);
  expect(found.saved.extrapolated).toBe(false);
});

test('is asked at 90 % of the final strength of the reference by default, and marked beyond the ladder', () => {
  const found = grindingTimeSaved(fitGrindCurve(ladder(12)), fitGrindCurve(ladder(7)));
  expect(found.strength).toBeCloseTo(99, 4);
  expect(found.saved.extrapolated).toBe(true);
  expect(found.warnings).toContainEqual(expect.objectContaining({ code: 'extrapolated', path: 'reference' }));
});

test('changes its sign with the order', () => {
  const noise = noiseFrom(SEED);
  const [a, b] = [fitGrindCurve(ladder(12, noise)), fitGrindCurve(ladder(7, noise))];
  const [forth, back] = [grindingTimeSaved(a, b, { strength: 80 }), grindingTimeSaved(b, a, { strength: 80 })];
  expect(back.saved.value).toBeCloseTo(-forth.saved.value, 10);
  expect(back.saved.interval?.low).toBeCloseTo(-(forth.saved.interval?.high ?? 0), 10);
});

test(`has an interval that holds the truth in 93-97 % of 500 pairs of ladders (seed ${SEED})`, () => {
  const noise = noiseFrom(SEED);
  const one = (half: number) => fitGrindCurve(ladder(half, noise), { form: 'half-time', scatter: 'constant' });
  const intervals = Array.from(
    { length: 500 },
    () => grindingTimeSaved(one(12), one(7), { strength: 88 }).saved.interval,
  );
  const share = coverage(20, intervals);
  expect(share).toBeGreaterThanOrEqual(93);
  expect(share).toBeLessThanOrEqual(97);
}, 60_000);

test('is refused where a curve does not reach the strength or starts above it', () => {
  const [strong, weak] = [fitGrindCurve(ladder(12)), fitGrindCurve(ladder(12, () => 0, 90))];
  expect(() => grindingTimeSaved(strong, weak, { strength: 95 })).toThrow(
    fault('no-solution', 'strength on the sample'),
  );
  const early = fitGrindCurve(TIMES.map((time) => ({ time, strength: 110 - 40 * Math.exp(-time / 25) })));
  expect(() => grindingTimeSaved(strong, early, { strength: 50 })).toThrow(
    fault('no-solution', 'strength on the sample'),
  );
  expect(() => grindingTimeSaved(strong, weak, { strength: 0 })).toThrow(fault('out-of-range', 'options.strength'));
});
