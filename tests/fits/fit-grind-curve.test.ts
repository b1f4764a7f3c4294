import { describe, expect, test } from 'vitest';
import { fitGrindCurve, type GrindPoint } from '../../src/fits/index.js';
import { coverage, medianError, noiseFrom } from './noise.js';

const fault = (code: string, path: string) => expect.objectContaining({ code, path });
const SEED = 20260303;
const TIMES = [5, 10, 15, 20, 30, 45, 60, 90];
const ladder = (at: (time: number) => number, times: readonly number[] = TIMES): GrindPoint[] =>
  times.map((time) => ({ time, strength: at(time) }));
const halfTimeCurve = (time: number) => (110 * time) / (time + 12);
const exponentialCurve = (time: number) => 110 - 80 * Math.exp(-time / 15);

describe('a grind curve without noise', () => {
  test('gives back the half-time form it was made from', () => {
    const fit = fitGrindCurve(ladder(halfTimeCurve));
    expect(fit).toMatchObject({ form: 'half-time', chosenBy: 'aicc', formsUndecided: false });
    expect(fit.finalStrength.value).toBeCloseTo(110, 5);
    expect(fit.halfTime.value).toBeCloseTo(12, 5);
    expect(fit.timeTo90.value).toBeCloseTo(9 * 12, 4);
    expect(fit.timeTo95.value).toBeCloseTo(19 * 12, 4);
    expect(fit.residualDeviation).toBeLessThan(1e-6);
  });

  test('gives back the exponential form it was made from', () => {
    const fit = fitGrindCurve(ladder(exponentialCurve));
    expect(fit).toMatchObject({ form: 'exponential', chosenBy: 'aicc', formsUndecided: false });
    expect(fit.finalStrength.value).toBeCloseTo(110, 5);
    expect(fit.halfTime.value).toBeCloseTo(15 * Math.log(80 / 55), 5);
    expect(fit.timeTo90.value).toBeCloseTo(15 * Math.log(80 / 11), 5);
    expect(fit.timeTo95.value).toBeCloseTo(15 * Math.log(80 / 5.5), 5);
  });

  test('does not depend on the units of time and strength', () => {
    const noise = noiseFrom(SEED);
    const points = ladder((time) => halfTimeCurve(time) + noise());
    const fit = fitGrindCurve(points);
    const hours = fitGrindCurve(points.map(({ time, strength }) => ({ time: time / 60, strength: strength / 100 })));
    expect(hours.halfTime.value * 60).toBeCloseTo(fit.halfTime.value, 5);
    expect((hours.finalStrength.interval?.high ?? 0) * 100).toBeCloseTo(fit.finalStrength.interval?.high ?? 1, 3);
  });
});

test('an exponential form with noise is the one that scipy 1.x curve_fit finds for the same eight points', () => {
  const strengths = [52.1, 68.9, 80.7, 88.4, 99.8, 104.9, 109.2, 109.6];
  const points = TIMES.map((time, i) => ({ time, strength: strengths[i] }));
  const fit = fitGrindCurve(points, { form: 'exponential', scatter: 'constant' });
  // curve_fit: F∞ 109.86317148, D 80.75024961, τ 14.83285054, s 0.70035782
  expect(fit.finalStrength.value).toBeCloseTo(109.86317, 4);
  expect(fit.timeTo90.value).toBeCloseTo(14.83285054 * Math.log(80.75024961 / 10.986317148), 4);
  expect(fit.residualDeviation).toBeCloseTo(0.70035782, 6);
});

describe('figures beyond the ladder', () => {
  test('are marked and noted, and the curve for plotting ends with the points', () => {
    const fit = fitGrindCurve(ladder(halfTimeCurve));
    expect(fit.halfTime.extrapolated).toBe(false);
    expect(fit.timeTo95.extrapolated).toBe(true);
    expect(fit.warnings).toContainEqual(expect.objectContaining({ code: 'extrapolated', path: 'time to 95 %' }));
    expect([fit.curve[0].time, fit.curve[100].time]).toEqual([5, 90]);
    expect(fit.curve[100].strength).toBeCloseTo(halfTimeCurve(90), 5);
  });

  test('are marked below the first time too', () => {
    const fit = fitGrindCurve(ladder(halfTimeCurve, [20, 30, 45, 60, 90]), { form: 'half-time' });
    expect(fit.halfTime.extrapolated).toBe(true);
  });

  test('a curve that starts above half its final strength has a half-time of 0, and says so', () => {
    const fit = fitGrindCurve(ladder((time) => 110 - 40 * Math.exp(-time / 25)));
    expect(fit.form).toBe('exponential');
    expect(fit.halfTime.value).toBe(0);
    expect(fit.warnings).toContainEqual(expect.objectContaining({ code: 'reached-at-start', path: 'half-time' }));
  });

  test('an end that the data leave open gives no interval, and the warning names the other end', () => {
    const noise = noiseFrom(SEED);
    const fit = fitGrindCurve(
      ladder((time) => (150 * time) / (time + 120) + 2 * noise(), [5, 10, 15, 20, 30, 40]),
      {
        form: 'half-time',
        scatter: 'constant',
      },
    );
    const open = fit.warnings.filter(({ code }) => code === 'interval-open');
    expect(open.length).toBeGreaterThan(0);
    expect(fit.finalStrength.interval).toBeUndefined();
    const { figures } = open.find(({ path }) => path === 'final strength') ?? {};
    expect(figures).toMatchObject({ low: expect.any(Number) });
    expect(figures).not.toHaveProperty('high');
  });
});

describe('the choice of form', () => {
  test('is left to the caller on request', () => {
    const fit = fitGrindCurve(ladder(exponentialCurve), { form: 'half-time' });
    expect(fit).toMatchObject({ form: 'half-time', chosenBy: 'caller' });
    expect(fit.forms).toHaveLength(1);
  });

  test('falls to fewer parameters where there are too few points for AICc', () => {
    const noise = noiseFrom(SEED);
    const fit = fitGrindCurve(ladder((time) => exponentialCurve(time) + 0.1 * noise(), [5, 10, 20, 40, 80]));
    expect(fit).toMatchObject({ form: 'half-time', chosenBy: 'fewer-parameters' });
    expect(fit.forms).toHaveLength(2);
  });

  test('is none with four times, which carry one form only', () => {
    const fit = fitGrindCurve(ladder(halfTimeCurve, [5, 10, 20, 40]));
    expect(fit.chosenBy).toBe('only-form');
    expect(fit.warnings).toContainEqual(expect.objectContaining({ code: 'form-not-compared' }));
  });

  test('is undecided where both forms fit about as well; the intervals span both', () => {
    const noise = noiseFrom(SEED);
    const points = ladder((time) => exponentialCurve(time) + 3 * noise());
    const fit = fitGrindCurve(points);
    expect(fit.formsUndecided).toBe(true);
    expect(fit.warnings).toContainEqual(expect.objectContaining({ code: 'forms-undecided' }));
    const lows = fit.forms.map(({ finalStrength }) => finalStrength.interval?.low ?? Number.NaN);
    const highs = fit.forms.map(({ finalStrength }) => finalStrength.interval?.high ?? Number.NaN);
    expect(fit.finalStrength.interval).toEqual({ low: Math.min(...lows), high: Math.max(...highs) });
  });
});

test('points at the same time are replicates, and a curve that misses their means is noted', () => {
  const noise = noiseFrom(SEED);
  const wavy = (time: number) => halfTimeCurve(time) + 5 * Math.sin(time);
  const points = TIMES.flatMap((time) => [time, time]).map((time) => ({ time, strength: wavy(time) + 0.2 * noise() }));
  const codes = fitGrindCurve(points).warnings.map(({ code }) => code);
  expect(codes).toContain('replicates');
  expect(codes).toContain('lack-of-fit');
});

describe('is refused, naming the path, for', () => {
  test('too few points', () => {
    expect(() => fitGrindCurve([])).toThrow(fault('too-few-points', 'number of different times'));
    expect(() => fitGrindCurve(ladder(halfTimeCurve, [5, 5, 10, 10, 20, 20]))).toThrow(
      fault('too-few-points', 'number of different times'),
    );
    expect(() => fitGrindCurve(ladder(halfTimeCurve, [5, 10, 20, 40]), { form: 'exponential' })).toThrow(
      fault('too-few-points', 'number of different times'),
    );
  });

  test('times out of order', () => {
    const points = ladder(halfTimeCurve, [5, 20, 10, 40]);
    expect(() => fitGrindCurve(points)).toThrow(fault('not-increasing', 'points[2].time'));
  });

  test('values that are no numbers, or below 0', () => {
    const points = ladder(halfTimeCurve);
    const with2 = (point: GrindPoint) => points.map((old, i) => (i === 2 ? point : old));
    expect(() => fitGrindCurve(with2({ time: Number.NaN, strength: 1 }))).toThrow(
      fault('not-finite', 'points[2].time'),
    );
    expect(() => fitGrindCurve(with2({ time: 15, strength: -1 }))).toThrow(fault('out-of-range', 'points[2].strength'));
  });

  test('a strength that does not rise, or does not level off', () => {
    expect(() => fitGrindCurve(ladder(() => 100))).toThrow(fault('ill-conditioned', 'points'));
    expect(() => fitGrindCurve(ladder((time) => 120 - time))).toThrow(fault('ill-conditioned', 'points'));
    expect(() => fitGrindCurve(ladder((time) => time))).toThrow(fault('ill-conditioned', 'points'));
    expect(() => fitGrindCurve(ladder(() => 0))).toThrow(fault('ill-conditioned', 'points'));
  });

  test('unknown options', () => {
    const points = ladder(halfTimeCurve);
    expect(() => fitGrindCurve(points, { form: 'straight' as 'half-time' })).toThrow(
      fault('invalid-option', 'options.form'),
    );
    expect(() => fitGrindCurve(points, { scatter: 'much' as 'constant' })).toThrow(
      fault('invalid-option', 'options.scatter'),
    );
  });
});

describe(`over 1,000 simulated ladders of eight points with 1 % noise (seed ${SEED})`, () => {
  const truths = {
    'half-time': { curve: halfTimeCurve, half: 12, to90: 108 },
    exponential: { curve: exponentialCurve, half: 15 * Math.log(80 / 55), to90: 15 * Math.log(80 / 11) },
  };

  test.each(['half-time', 'exponential'] as const)(
    '%s form: intervals hold the truth in 93 to 97 of 100',
    (name) => {
      const { curve, half, to90 } = truths[name];
      const noise = noiseFrom(SEED);
      const fits = Array.from({ length: 1000 }, () => fitGrindCurve(ladder((time) => curve(time) + 1.1 * noise())));
      const covered = [
        coverage(
          110,
          fits.map((fit) => fit.finalStrength.interval),
        ),
        coverage(
          half,
          fits.map((fit) => fit.halfTime.interval),
        ),
        coverage(
          to90,
          fits.map((fit) => fit.timeTo90.interval),
        ),
      ];
      for (const share of covered) {
        expect(share, covered.join(', ')).toBeGreaterThanOrEqual(93);
        expect(share, covered.join(', ')).toBeLessThanOrEqual(97);
      }
      // a typical ladder: as many errors below as above
      const own = fits.flatMap(({ forms }) => forms.filter(({ form }) => form === name));
      expect(
        medianError(
          110,
          own.map((fit) => fit.finalStrength.value),
        ),
      ).toBeLessThan(1);
      expect(
        medianError(
          half,
          own.map((fit) => fit.halfTime.value),
        ),
      ).toBeLessThan(5);
    },
    60_000,
  );
});

test('a ladder on which the search for an interval once went on for ever comes to an end', () => {
  const strengths = [
    69.59382444644146, 84.507887911684, 89.15476081579268, 96.15551573701316, 97.88874771257554, 101.9171676335062,
    101.76874439553653,
  ];
  const points = [10, 20, 30, 45, 60, 90, 120].map((time, i) => ({ time, strength: strengths[i] }));
  expect(fitGrindCurve(points).finalStrength.value).toBeGreaterThan(100);
});
