import { describe, expect, test } from 'vitest';
import { colourDifference, type Lab } from '../../src/index.js';
import { differenceScatter, type SpotArea } from '../../src/rubout/difference-interval.js';
import { meanLab } from '../../src/rubout/scatter.js';

/** Spots around a colour with a standard deviation of exactly `scatter` in L*, and of nothing in a* and b*. */
const around = (L: number, a: number, b: number, scatter: number): Lab[] =>
  [-1, 0, 1].map((step) => ({ L: L + step * scatter, a, b }));
const scatterOf = (before: readonly Lab[], after: readonly Lab[], precision?: { spot: number; drawdown?: number }) => {
  const areas: [SpotArea, SpotArea] = [
    { name: 'unrubbed', labs: before },
    { name: 'rubbed', labs: after },
  ];
  return differenceScatter(areas, colourDifference(meanLab(before), meanLab(after)), precision);
};

describe('spots of one film', () => {
  test('scatter along the difference counts: lightness by 0.1, Student’s t at 4 degrees of freedom', () => {
    const { readingDeviation, interval } = scatterOf(around(60, -8, -34, 0.1), around(58, -8, -34, 0.1));
    expect(readingDeviation).toBeCloseTo(0.1, 10);
    expect(interval).toMatchObject({ degreesOfFreedom: 4, basis: 'spots' });
    // t is 2.776 (any table); times 0.1 √(2/3)
    expect(interval?.dEab.low).toBeCloseTo(2 - 2.776 * 0.1 * Math.sqrt(2 / 3), 2);
    expect(interval?.dEab.high).toBeCloseTo(2 + 2.776 * 0.1 * Math.sqrt(2 / 3), 2);
  });

  test('that scatter across the difference only have none along it', () => {
    expect(scatterOf(around(60, -8, -34, 0.1), around(60, -6, -34, 0.1)).readingDeviation).toBe(0);
  });

  test('pool both areas: variances 0.01 and 0.04 make 0.025', () => {
    expect(scatterOf(around(60, 0, 0, 0.1), around(58, 0, 0, 0.2)).readingDeviation).toBeCloseTo(Math.sqrt(0.025), 10);
  });

  test('without a difference have a third of the whole variance in any direction', () => {
    expect(scatterOf(around(60, 0, 0, 0.3), around(60, 0, 0, 0.3)).readingDeviation).toBeCloseTo(
      Math.sqrt(0.09 / 3),
      10,
    );
  });

  test('lend their scatter to an area that was read once, and a note says so', () => {
    const { warnings, interval } = scatterOf(around(60, 0, 0, 0.1), [{ L: 58, a: 0, b: 0 }]);
    expect(interval?.degreesOfFreedom).toBe(2);
    expect(warnings).toMatchObject([{ code: 'scatter-borrowed', path: 'rubbed' }]);
  });

  test('that are all the same show no scatter', () => {
    const same = (L: number) => [1, 2, 3].map(() => ({ L, a: 0.1, b: -34 }));
    const { interval, warnings } = scatterOf(same(60), same(58));
    expect(interval).toBeUndefined();
    expect(warnings.map(({ code, path }) => `${code} ${path}`)).toEqual([
      'replicates-identical unrubbed',
      'replicates-identical rubbed',
    ]);
  });
});

describe('a stated precision', () => {
  const once = (L: number) => [{ L, a: 0, b: 0 }];

  test('gives one spot per side the interval of the normal distribution, 1.96 √2 σ far from zero', () => {
    const { interval } = scatterOf(once(60), once(50), { spot: 0.1 });
    expect(interval).toMatchObject({ basis: 'precision' });
    expect(Object.keys(interval ?? {})).not.toContain('degreesOfFreedom');
    expect(interval?.dEab.low).toBeCloseTo(10 - 1.96 * Math.SQRT2 * 0.1, 2);
  });

  test('adds what lies between drawdowns: 0.3² + 2 · 0.1²', () => {
    const { interval } = scatterOf(once(60), once(50), { spot: 0.1, drawdown: 0.3 });
    // the scatter across adds a little to a length: 0.11 / 20
    expect(interval?.dEab.high).toBeCloseTo(10 + 1.96 * Math.sqrt(0.09 + 0.02), 1);
  });

  test('is a floor: the larger of it and of what the spots show counts', () => {
    const [before, after] = [around(60, 0, 0, 0.3), around(58, 0, 0, 0.3)];
    expect(scatterOf(before, after, { spot: 0.01 }).interval?.basis).toBe('spots');
    expect(scatterOf(before, after, { spot: 1 }).interval?.basis).toBe('precision');
  });
});

test('drawdowns pair: differences 2, 2.1 and 1.9 have the interval of their mean, whatever the films are', () => {
  const films = [50, 60, 70];
  const units = [[0], [1], [2]];
  const before = films.map((L) => ({ L, a: 0, b: 0 }));
  const after = films.map((L, i) => ({ L: L - [2, 2.1, 1.9][i], a: 0, b: 0 }));
  const areas: [SpotArea, SpotArea] = [
    { name: 'unrubbed', labs: before, units },
    { name: 'rubbed', labs: after, units },
  ];
  const { interval } = differenceScatter(areas, colourDifference(meanLab(before), meanLab(after)), undefined);
  expect(interval).toMatchObject({ basis: 'drawdowns', degreesOfFreedom: 2 });
  // t at 2 degrees of freedom is 4.303 (any table); the differences have a standard deviation of 0.1
  expect(interval?.dEab.low).toBeCloseTo(2 - (4.303 * 0.1) / Math.sqrt(3), 2);
});

describe('the interval of ΔE00', () => {
  test('of a difference in lightness at L* 50 and C* 0 is that of ΔE*ab, since S_L is 1 there (ISO/CIE 11664-6)', () => {
    const { interval } = scatterOf(around(51, 0, 0, 0.1), around(49, 0, 0, 0.1));
    expect(interval?.dE2000.low).toBeCloseTo(interval?.dEab.low ?? 0, 2);
    expect(interval?.dE2000.high).toBeCloseTo(interval?.dEab.high ?? 0, 2);
  });

  test.each<[string, Lab, Lab, number]>([
    ['lightness at L* 30, by S_L', { L: 30, a: 0, b: 0 }, { L: 0.1, a: 0, b: 0 }, 1 + (0.015 * 400) / Math.sqrt(420)],
    ['chroma at b* 40, by S_C', { L: 50, a: 0, b: 40 }, { L: 0, a: 0, b: 0.1 }, 1 + 0.045 * 40],
    ['chroma at a* 80, by S_C', { L: 50, a: 80, b: 0 }, { L: 0, a: 0.1, b: 0 }, 1 + 0.045 * 80],
  ])('of noise in %s alone is narrower by that factor where there is no difference (ISO/CIE 11664-6)', (...row) => {
    const [, at, step, narrower] = row;
    const area = [-1, 0, 1].map((i) => ({ L: at.L + i * step.L, a: at.a + i * step.a, b: at.b + i * step.b }));
    const { interval } = scatterOf(area, area);
    // at a* 80 the rescaling of a*, G = 7e-5 and its slope, is all that is left: below 1 in 1000
    const found = (interval?.dEab.high ?? 0) / (interval?.dE2000.high ?? 0);
    expect(Math.abs(found / narrower - 1)).toBeLessThan(0.001);
  });

  test('lies around ΔE00 itself over a long way, where no space is even', () => {
    const [from, to] = [
      { L: 40, a: 40, b: 0 },
      { L: 60, a: 0, b: 30 },
    ];
    const { interval } = scatterOf([from], [to], { spot: 0.1 });
    // at hundreds of standard deviations both ends are equally far: the interval is Student's, and so symmetric
    const middle = ((interval?.dE2000.low ?? 0) + (interval?.dE2000.high ?? 0)) / 2;
    expect(middle).toBeCloseTo(colourDifference(from, to).dE2000, 2);
  });
});
