import { describe, expect, test } from 'vitest';
import { fitGrindCurve, type GrindCurvePoint, type GrindPoint } from '../../../src/fits/index.js';
import { noiseFrom } from '../noise.js';

const fault = (code: string, path: string) => expect.objectContaining({ code, path });
const SEED = 20260303;
const TIMES = [5, 10, 15, 20, 30, 45, 60, 90];
const ladder = (at: (time: number) => number, times: readonly number[] = TIMES): GrindCurvePoint[] =>
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
    expect((hours.finalStrength.atLeast ?? 0) * 100).toBeCloseTo(fit.finalStrength.atLeast ?? 1, 3);
    expect((hours.timeToStrength?.interval?.high ?? 0) * 60).toBeCloseTo(fit.timeToStrength?.interval?.high ?? 1, 5);
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
    const [form] = fit.forms;
    expect(form.finalStrength).not.toHaveProperty('interval');
    expect(form.warnings).toContainEqual(
      expect.objectContaining({
        code: 'interval-open',
        path: 'final strength',
        figures: { value: form.finalStrength.value, low: form.finalStrength.atLeast },
      }),
    );
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

  test('is undecided where both forms fit about as well', () => {
    const noise = noiseFrom(SEED);
    const points = ladder((time) => exponentialCurve(time) + 3 * noise());
    const fit = fitGrindCurve(points);
    expect(fit.formsUndecided).toBe(true);
    expect(fit.warnings).toContainEqual(expect.objectContaining({ code: 'forms-undecided' }));
    // what hangs on the end is at least what both say
    const lows = fit.forms.map(({ finalStrength }) => finalStrength.interval?.low ?? Number.NaN);
    expect(fit.finalStrength).toEqual({
      value: expect.any(Number),
      atLeast: Math.min(...lows),
      extrapolated: true,
    });
  });
});

describe('what was repeated at a time', () => {
  const wavy = (time: number) => halfTimeCurve(time) + 5 * Math.sin(time);
  const repeated = (level: 'weighing' | 'spot', at: (time: number) => number) => {
    const noise = noiseFrom(SEED);
    return TIMES.map((time) => {
      const both = [at(time) + 0.2 * noise(), at(time) + 0.2 * noise()];
      return { time, strength: level === 'spot' ? { spot: both } : { weighing: both } };
    });
  };
  const codes = (points: readonly GrindPoint[]) => fitGrindCurve(points).warnings.map(({ code }) => code);

  test('counts each weigh-up, and a curve that misses their means is noted', () => {
    expect(codes(repeated('weighing', wavy))).toContain('lack-of-fit');
    expect(codes(repeated('weighing', halfTimeCurve))).not.toContain('lack-of-fit');
  });

  test('is averaged over spots of one film, which tell nothing of other films', () => {
    expect(codes(repeated('spot', wavy))).not.toContain('lack-of-fit');
    const { points, degreesOfFreedom } = fitGrindCurve(repeated('spot', halfTimeCurve), { form: 'half-time' });
    expect(points[0].noun).toBe('2 spots of one film');
    expect(degreesOfFreedom).toBe(TIMES.length - 2);
  });
});

describe('the time to a stated strength', () => {
  test('is read inside the ladder, whatever the form', () => {
    const points = ladder((time) => 108 * (1 - Math.exp(-((time / 15) ** 1.4))));
    const { timeToStrength } = fitGrindCurve(points, { strength: points[3].strength });
    expect(timeToStrength?.value).toBeCloseTo(20, 6);
    expect(timeToStrength?.strength).toBe(points[3].strength);
  });

  test('is by default that to 95 % of the highest strength read', () => {
    const fit = fitGrindCurve(ladder(halfTimeCurve));
    expect(fit.timeToStrength?.strength).toBeCloseTo(0.95 * halfTimeCurve(90), 9);
    // the half-time form reaches it after 12 · 0.838 / (1 - 0.838); the curve through the points knows no form
    const share = (0.95 * 90) / 102;
    expect((fit.timeToStrength?.value ?? 0) / ((12 * share) / (1 - share))).toBeCloseTo(1, 1);
  });

  test('outside the ladder is refused, never extrapolated', () => {
    for (const strength of [20, 100]) {
      expect(() => fitGrindCurve(ladder(halfTimeCurve), { strength })).toThrow(
        fault('no-solution', 'options.strength'),
      );
    }
  });

  test('that the last points do not surely reach has no upper end', () => {
    const noise = noiseFrom(SEED);
    const points = ladder((time) => halfTimeCurve(time) + 3 * noise());
    const fit = fitGrindCurve(points, { strength: 0.999 * Math.max(...points.map((point) => point.strength)) });
    expect(fit.timeToStrength).not.toHaveProperty('interval');
    expect(fit.warnings).toContainEqual(expect.objectContaining({ code: 'interval-open', path: 'time to strength' }));
  });
});

describe('grinding too long', () => {
  const overground = (time: number) => exponentialCurve(Math.min(time, 60)) - Math.max(0, time - 60) * 0.2;

  test('is noted with the time from which the strength falls, and left out of the curve', () => {
    const noise = noiseFrom(SEED);
    const times = [...TIMES, 120];
    const fit = fitGrindCurve(ladder((time) => overground(time) + 0.2 * noise(), times));
    expect(fit.warnings).toContainEqual(
      expect.objectContaining({ code: 'falls-off', path: '90', figures: { from: 90 } }),
    );
    expect(fit.risesUntil).toBe(60);
    expect(fit.points).toHaveLength(times.length);
    expect(fit.curve[100].time).toBe(60);
  });

  test('is found in at most 5 % of curves that level off', () => {
    const noise = noiseFrom(SEED);
    const level = (time: number) => 110 - 80 * Math.exp(-time / 5) + noise();
    const found = Array.from({ length: 300 }, () => fitGrindCurve(ladder(level)).risesUntil !== undefined);
    expect(found.filter(Boolean).length).toBeLessThanOrEqual(15);
  }, 60_000);
});

describe('is refused, naming the path, for', () => {
  test('too few points', () => {
    expect(() => fitGrindCurve([])).toThrow(fault('too-few-points', 'number of times'));
    expect(() => fitGrindCurve(ladder(halfTimeCurve, [5, 10, 20]))).toThrow(fault('too-few-points', 'number of times'));
    expect(() => fitGrindCurve(ladder(halfTimeCurve, [5, 10, 20, 40]), { form: 'exponential' })).toThrow(
      fault('too-few-points', 'number of times'),
    );
  });

  test('times out of order', () => {
    const points = ladder(halfTimeCurve, [5, 20, 10, 40]);
    expect(() => fitGrindCurve(points)).toThrow(fault('not-increasing', 'points[2].time'));
  });

  test('a time that stands there twice', () => {
    const points = ladder(halfTimeCurve, [5, 5, 10, 10, 20, 20]);
    expect(() => fitGrindCurve(points)).toThrow(fault('repetition-unstated', 'points[1].time'));
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

test('a ladder on which the search for an interval once went on for ever comes to an end', () => {
  const strengths = [
    69.59382444644146, 84.507887911684, 89.15476081579268, 96.15551573701316, 97.88874771257554, 101.9171676335062,
    101.76874439553653,
  ];
  const points = [10, 20, 30, 45, 60, 90, 120].map((time, i) => ({ time, strength: strengths[i] }));
  expect(fitGrindCurve(points).finalStrength.value).toBeGreaterThan(100);
});
