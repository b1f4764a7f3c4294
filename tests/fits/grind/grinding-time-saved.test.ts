import { expect, test } from 'vitest';
import { fitGrindCurve, grindingTimeSaved } from '../../../src/fits/index.js';
import { coverage, noiseFrom } from '../noise.js';

const fault = (code: string, path: string) => expect.objectContaining({ code, path });
const SEED = 20260304;
const TIMES = [5, 8, 12, 18, 27, 40, 60, 90];
const ladder = (half: number, noise = () => 0, final = 110) =>
  TIMES.map((time) => ({ time, strength: (final * time) / (time + half) + noise() }));
const runs = (...halves: number[]) => ({ grind: halves.map((half) => fitGrindCurve(ladder(half))) });

test('is the difference of the times to the same strength', () => {
  // 75 is reached at 75 t½ / 35: 27 and 15 minutes
  const found = grindingTimeSaved(fitGrindCurve(ladder(12.6)), fitGrindCurve(ladder(7)), { strength: 75 });
  // read from a curve through the points, without the law they follow
  expect(found.referenceTime).toBeCloseTo(27, 4);
  expect(found.sampleTime / 15).toBeCloseTo(1, 2);
  expect(found.saved.value).toBeCloseTo(found.referenceTime - found.sampleTime, 12);
  expect(found).toMatchObject({ kind: 'grinding-time-saved', version: 1 });
});

test('is asked by default at 95 % of the highest strength that every run reaches', () => {
  const [strong, weak] = [ladder(12), ladder(7, () => 0, 90)];
  const { strength } = grindingTimeSaved(fitGrindCurve(strong), fitGrindCurve(weak));
  expect(strength).toBeCloseTo((0.95 * 90 * 90) / 97, 6);
});

test('of one run each proves nothing: an interval for these runs, the remedy, no finding', () => {
  const noise = noiseFrom(SEED);
  const [a, b] = [fitGrindCurve(ladder(12, noise)), fitGrindCurve(ladder(7, noise))];
  const found = grindingTimeSaved(a, b, { strength: 80 });
  expect(found).toMatchObject({ finding: 'undecided', runs: { reference: { count: 1 }, sample: { count: 1 } } });
  expect(found.claim).not.toBe('package');
  expect(found.saved).not.toHaveProperty('interval');
  expect(found.ofTheseRuns?.low).toBeLessThan(found.saved.value);
  expect(found.warnings).toContainEqual(expect.objectContaining({ code: 'runs-not-repeated', path: 'saved' }));
});

test('of repeated runs has the interval of Student’s t between runs, and a finding', () => {
  // at 75: t = 75/35 t½
  const found = grindingTimeSaved(runs(12, 13, 14), runs(6.5, 7.5, 8.5), { strength: 75 });
  const times = (halves: number[]) => halves.map((half) => (75 / 35) * half);
  const spread = Math.sqrt(((75 / 35) ** 2 * (2 + 2)) / 4);
  // t(0.975) with 4 degrees of freedom is 2.776 (NIST/SEMATECH e-Handbook, 1.3.6.7.2)
  const reach = 2.776 * spread * Math.sqrt(2 / 3);
  const truth = times([13])[0] - times([7.5])[0];
  expect(found.saved.value / truth).toBeCloseTo(1, 1);
  const width = (found.saved.interval?.high ?? 0) - (found.saved.interval?.low ?? 0);
  expect(width / (2 * reach)).toBeCloseTo(1, 1);
  expect(found).toMatchObject({ claim: 'package', finding: 'faster', runs: { sample: { noun: '3 grinds' } } });
  expect(grindingTimeSaved(runs(6.5, 7.5, 8.5), runs(12, 13, 14), { strength: 75 }).finding).toBe('slower');
});

test('of one run each with a known scatter of runs has an interval from that', () => {
  const precision = { grind: 2, degreesOfFreedom: 12 };
  const found = grindingTimeSaved(runs(13), runs(7), { strength: 75, precision });
  // t(0.975) with 12 degrees of freedom is 2.179, and both runs scatter by 2 minutes
  expect((found.saved.interval?.high ?? 0) - found.saved.value).toBeCloseTo(2.179 * 2 * Math.SQRT2, 2);
  expect(found).toMatchObject({ claim: 'package', finding: 'faster' });
});

test('changes its sign with the order', () => {
  const [forth, back] = [
    grindingTimeSaved(runs(12, 13), runs(7, 8), { strength: 80 }),
    grindingTimeSaved(runs(7, 8), runs(12, 13), { strength: 80 }),
  ];
  expect(back.saved.value).toBeCloseTo(-forth.saved.value, 10);
  expect(back.saved.interval?.low).toBeCloseTo(-(forth.saved.interval?.high ?? 0), 10);
});

test(`of two runs each: a useless aid is proven in at most 6 % of 400 studies (seed ${SEED})`, () => {
  const noise = noiseFrom(SEED);
  const run = () => fitGrindCurve(ladder(12 * Math.exp(0.1 * noise()), () => 0.5 * noise()));
  const intervals = Array.from({ length: 400 }, () => {
    const [a, b, c, d] = [run(), run(), run(), run()];
    return grindingTimeSaved({ grind: [a, b] }, { grind: [c, d] }, { strength: 80 }).saved.interval;
  });
  expect(coverage(0, intervals)).toBeGreaterThanOrEqual(94);
}, 60_000);

test('is refused for anything but runs, and where one does not pass the strength', () => {
  const [strong, weak] = [fitGrindCurve(ladder(12)), fitGrindCurve(ladder(12, () => 0, 90))];
  expect(() => grindingTimeSaved(strong, weak, { strength: 95 })).toThrow(
    fault('no-solution', 'sample at strength 95'),
  );
  expect(() => grindingTimeSaved({ grind: [strong, weak] }, strong, { strength: 95 })).toThrow(
    fault('no-solution', 'reference.grind[1] at strength 95'),
  );
  expect(() => grindingTimeSaved({ weighing: [strong, strong] }, weak)).toThrow(fault('level-misplaced', 'reference'));
  expect(() => grindingTimeSaved(strong, weak, { strength: 0 })).toThrow(fault('invalid-option', 'options.strength'));
});
