import { describe, expect, test } from 'vitest';
import { fitGrindCurve } from '../../../src/fits/index.js';
import { coverage, medianError, noiseFrom } from '../noise.js';

const SEED = 20260303;
const TIMES = [5, 10, 15, 20, 30, 45, 60, 90];
const ladder = (at: (time: number) => number) => TIMES.map((time) => ({ time, strength: at(time) }));
const halfTimeCurve = (time: number) => (110 * time) / (time + 12);
const exponentialCurve = (time: number) => 110 - 80 * Math.exp(-time / 15);

describe(`the intervals of the right form over 300 ladders of eight points with 1 % noise (seed ${SEED})`, () => {
  const truths = {
    'half-time': { curve: halfTimeCurve, half: 12, to90: 108 },
    exponential: { curve: exponentialCurve, half: 15 * Math.log(80 / 55), to90: 15 * Math.log(80 / 11) },
  };

  test.each(['half-time', 'exponential'] as const)(
    '%s form: intervals hold the truth in about 95 of 100',
    (name) => {
      const { curve, half, to90 } = truths[name];
      const noise = noiseFrom(SEED);
      const fits = Array.from({ length: 300 }, () => fitGrindCurve(ladder((time) => curve(time) + 1.1 * noise())));
      const own = fits.flatMap(({ forms }) => forms.filter(({ form }) => form === name));
      const covered = [
        coverage(
          110,
          own.map((fit) => fit.finalStrength.interval),
        ),
        coverage(
          half,
          own.map((fit) => fit.halfTime.interval),
        ),
        coverage(
          to90,
          own.map((fit) => fit.timeTo90.interval),
        ),
      ];
      for (const share of covered) {
        expect(share, covered.join(', ')).toBeGreaterThanOrEqual(91);
        expect(share, covered.join(', ')).toBeLessThanOrEqual(99);
      }
      // a typical ladder: as many errors below as above
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

// Five truths that no single form fits. Samples of a run scatter by 1.5 % from weigh-up to weigh-up and spots of one film by 0.3 %, one standard
// deviation each.
const TRUTHS: Readonly<Record<string, (time: number) => number>> = {
  'half-time': halfTimeCurve,
  exponential: exponentialCurve,
  stretched: (time) => 110 - 90 * Math.exp(-Math.sqrt(time / 10)),
  'of two stages': (time) => 110 - 50 * Math.exp(-time / 6) - 40 * Math.exp(-time / 40),
  'of a late start': (time) => 108 * (1 - Math.exp(-((time / 15) ** 1.4))),
};

/** The time at which a rising curve reaches a strength, by halving. */
function timeTo(curve: (time: number) => number, strength: number): number {
  let [low, high] = [TIMES[0], TIMES[TIMES.length - 1]];
  for (let i = 0; i < 60; i++) {
    const middle = (low + high) / 2;
    if (curve(middle) < strength) low = middle;
    else high = middle;
  }
  return low;
}

describe.each([1, 3])('with %d weigh-ups a time', (weighUps) => {
  test.each(Object.keys(TRUTHS))(
    'the time to a stated strength of a curve %s is held in 90 of 100',
    (name) => {
      const curve = TRUTHS[name];
      const noise = noiseFrom(SEED + weighUps);
      const strength = 0.9 * curve(90);
      const truth = timeTo(curve, strength);
      let held = 0;
      const ladders = 60;
      for (let i = 0; i < ladders; i++) {
        const points = TIMES.map((time) => ({
          time,
          strength: { weighing: Array.from({ length: weighUps }, () => curve(time) * (1 + 0.015 * noise())) },
        }));
        const { interval, atLeast } = fitGrindCurve(points, { strength }).timeToStrength ?? {};
        const [low, high] = interval
          ? [interval.low, interval.high]
          : [atLeast ?? Number.POSITIVE_INFINITY, Number.POSITIVE_INFINITY];
        if (low <= truth && truth <= high) held++;
      }
      // 91-97 % are aimed at, and the standard error of 60 ladders is 2.8
      expect((100 * held) / ladders).toBeGreaterThanOrEqual(86);
    },
    60_000,
  );
});

test.each([1, 3])(
  'spots a time, %d of them: a right curve shows no lack of fit',
  (spots) => {
    const noise = noiseFrom(SEED);
    const lacking = Array.from({ length: 60 }, () => {
      const points = TIMES.map((time) => {
        const film = halfTimeCurve(time) * (1 + 0.015 * noise());
        return { time, strength: { spot: Array.from({ length: spots }, () => film * (1 + 0.003 * noise())) } };
      });
      return fitGrindCurve(points).warnings.some(({ code }) => code === 'lack-of-fit');
    });
    expect(lacking.filter(Boolean)).toHaveLength(0);
  },
  60_000,
);

test.each(['half-time', 'exponential'])(
  'weigh-ups a time: a right curve, %s, shows a lack of fit in about 5 of 100',
  (name) => {
    const noise = noiseFrom(SEED);
    const lacking = Array.from({ length: 150 }, () => {
      const points = TIMES.map((time) => ({
        time,
        strength: { weighing: Array.from({ length: 3 }, () => TRUTHS[name](time) + 1.1 * noise()) },
      }));
      return fitGrindCurve(points, { scatter: 'constant' }).warnings.some(({ code }) => code === 'lack-of-fit');
    });
    // 5 % of 150 is 7.5, with a standard error of 2.7
    expect(lacking.filter(Boolean).length).toBeLessThanOrEqual(15);
  },
  60_000,
);
