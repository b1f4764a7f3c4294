import { describe, expect, test } from 'vitest';
import { type CompareSidesOptions, compareSides, type Repeated, type SideGroup } from '../../../src/evidence/index.js';
import { fisherQuantile, studentQuantile } from '../../../src/numeric/student-t.js';

type Sides = Record<string, Repeated<number>>;

const one = (sides: Sides, options?: CompareSidesOptions, white?: SideGroup['white']) =>
  compareSides([{ sides, reference: 'R', white }], options).groups[0];
const first = (sides: Sides, options?: CompareSidesOptions) => one(sides, options).againstReference[0];
const halfWidth = ({ interval }: { readonly interval?: { readonly low: number; readonly high: number } }) =>
  interval ? (interval.high - interval.low) / 2 : Number.NaN;

/** Three values around a middle with a standard deviation of exactly 1. */
const three = (middle: number) => ({ weighing: [middle - 1, middle, middle + 1] });

describe('the interval of a difference', () => {
  test('from means of the top units, pooled, by Student’s t', () => {
    const comparison = first({ R: three(0), A: three(5) });
    expect(comparison).toMatchObject({
      trial: 'A',
      reference: 'R',
      difference: 5,
      claim: 'mill-base',
      basis: 'pooled',
    });
    expect(comparison.degreesOfFreedom).toBeCloseTo(4, 10);
    expect(halfWidth(comparison)).toBeCloseTo(studentQuantile(0.975, 4) * Math.sqrt(2 / 3), 10);
  });

  test('more spots of the same films change nothing', () => {
    const spots = ({ weighing }: { weighing: number[] }) => ({
      weighing: weighing.map((value) => ({ spot: [value - 0.5, value, value + 0.5] })),
    });
    const read = first({ R: spots(three(0)), A: spots(three(5)) });
    expect(halfWidth(read)).toBeCloseTo(halfWidth(first({ R: three(0), A: three(5) })), 10);
  });

  test('other packages lend their degrees of freedom', () => {
    const { againstReference, scatter } = one({ R: three(0), A: three(5), B: three(2), C: three(1) });
    expect(againstReference[0].degreesOfFreedom).toBeCloseTo(8, 10);
    expect(scatter).toEqual([
      {
        level: 'weighing',
        standardDeviation: 1,
        degreesOfFreedom: 8,
        sides: ['R', 'A', 'B', 'C'],
        blocks: 0,
        wider: [],
      },
    ]);
  });

  test('one comparison has a joint interval like its own, several have wider ones', () => {
    const alone = first({ R: three(0), A: three(5) });
    expect(alone.joint).toEqual(alone.interval);
    for (const { interval, joint } of one({ R: three(0), A: three(5), B: three(2) }).againstReference) {
      expect(joint?.low).toBeLessThan(interval?.low ?? Number.NaN);
      expect(joint?.high).toBeGreaterThan(interval?.high ?? Number.NaN);
    }
  });

  test('groups of a study share one rate', () => {
    const group = { sides: { R: three(0), A: three(5) }, reference: 'R' };
    const [alone, shared] = [[group], [group, group]].map((groups) => compareSides(groups));
    expect(alone.singleRate).toBe(0.05);
    // two independent comparisons: 1 - √0.95
    expect(shared.singleRate).toBeCloseTo(1 - Math.sqrt(0.95), 4);
  });

  test('a package that scatters more is not covered by the others', () => {
    const calm = { R: three(0), B: three(2), C: three(1), D: three(4) };
    const wide = { weighing: [2, 5, 8] };
    const { againstReference, scatter } = one({ ...calm, A: wide });
    // variance 9 against 1 of the others is beyond F at 80 % with 2 and 8 degrees of freedom
    expect(9).toBeGreaterThan(fisherQuantile(0.8, 2, 8));
    expect(scatter[0].wider).toEqual(['A']);
    const own = againstReference.find(({ trial }) => trial === 'A');
    expect(own).toMatchObject({ basis: 'own' });
    expect(own?.standardDeviation).toBeCloseTo(Math.sqrt(9 / 3 + 1 / 3), 10);
    expect(againstReference.find(({ trial }) => trial === 'B')).toMatchObject({ basis: 'pooled' });
  });
});

describe('what a figure may claim', () => {
  test('spots of one film say nothing about the mill base', () => {
    const comparison = first({ R: { spot: [0, 0.1, -0.1] }, A: { spot: [5, 5.1, 4.9] } });
    expect(comparison).toMatchObject({ claim: 'film', finding: 'undecided', shortfall: { wanted: 'mill-base' } });
    expect(comparison.shortfall).toMatchObject({ level: 'weighing', more: { R: 1, A: 1 } });
    expect(halfWidth(comparison)).toBeLessThan(0.5);
  });

  test('unless the film is all that is claimed', () => {
    const sides = { R: { spot: [0, 0.1, -0.1] }, A: { spot: [5, 5.1, 4.9] } };
    expect(first(sides, { claim: 'film' })).toMatchObject({ claim: 'film', finding: 'higher' });
  });

  test('weigh-ups of one grind say nothing about the package', () => {
    const comparison = first({ R: three(0), A: three(50) }, { claim: 'package' });
    expect(comparison).toMatchObject({ claim: 'mill-base', finding: 'undecided', shortfall: { level: 'grind' } });
    expect(first({ R: three(0), A: three(50) })).toMatchObject({ claim: 'mill-base', finding: 'higher' });
  });

  test('grinds do', () => {
    const grinds = (middle: number) => ({ grind: [three(middle - 1), three(middle + 1)] });
    expect(first({ R: grinds(0), A: grinds(50) })).toMatchObject({ claim: 'package', finding: 'higher' });
  });

  test('of a batch, weigh-ups carry the claim', () => {
    expect(first({ R: three(0), A: three(9) }, { population: 'batch' })).toMatchObject({
      claim: 'batch',
      finding: 'higher',
    });
    expect(first({ R: 0, A: 9 }, { population: 'batch' })).toMatchObject({ finding: 'undecided' });
  });

  test('what proves nothing can’t drop a package from the best', () => {
    const spots = (middle: number) => ({ spot: [middle - 0.1, middle + 0.1] });
    expect(one({ R: spots(0), A: spots(5), B: spots(9) }).best.notProvenWorse).toEqual(['A', 'B']);
    expect(one({ R: three(0), A: three(5), B: three(19) }).best.notProvenWorse).toEqual(['B']);
  });
});

describe('history', () => {
  const precision = {
    weighing: 2,
    drawdown: 1,
    spot: 0.3,
    degreesOfFreedom: { weighing: 20, drawdown: 40, spot: 100 },
  };

  test('tells the scatter of what was not repeated', () => {
    const comparison = first({ R: 0, A: 9 }, { precision });
    expect(comparison).toMatchObject({ claim: 'mill-base', fromHistory: ['weighing', 'drawdown', 'spot'] });
    expect(comparison.standardDeviation).toBeCloseTo(Math.sqrt(2 * (4 + 1 + 0.09)), 10);
    // Satterthwaite over the three components
    const n = (4 + 1 + 0.09) ** 2 / (16 / 20 + 1 / 40 + 0.09 ** 2 / 100);
    expect(comparison.degreesOfFreedom).toBeCloseTo(n, 8);
  });

  test('is a floor under today’s scatter, with its own degrees of freedom', () => {
    const comparison = first({ R: three(0), A: three(9) }, { precision });
    expect(comparison).toMatchObject({ basis: 'history', fromHistory: [] });
    expect(comparison.standardDeviation).toBeCloseTo(Math.sqrt((2 / 3) * (4 + 1 + 0.09)), 10);
    const calm = { weighing: 0.5, degreesOfFreedom: 20 };
    expect(first({ R: three(0), A: three(9) }, { precision: calm })).toMatchObject({ basis: 'pooled' });
  });

  test('of grinds lifts weigh-ups of one grind to the package', () => {
    const comparison = first({ R: three(0), A: three(9) }, { precision: { grind: 3, degreesOfFreedom: 10 } });
    expect(comparison).toMatchObject({ claim: 'package', fromHistory: ['grind'] });
    expect(comparison.standardDeviation).toBeCloseTo(Math.sqrt(2 / 3 + 2 * 9), 10);
  });

  test.each([
    [{ weighing: 1 }, 'options.precision.degreesOfFreedom'],
    [{ weighing: 1, degreesOfFreedom: { spot: 3 } }, 'options.precision.degreesOfFreedom'],
    [{ weighing: -1, degreesOfFreedom: 3 }, 'options.precision.weighing'],
    [{ weihing: 1, degreesOfFreedom: 3 }, 'options.precision.weihing'],
    [{ degreesOfFreedom: 3 }, 'options.precision'],
    [[1], 'options.precision'],
  ])('%j is refused', (given, path) => {
    const options = { precision: given } as unknown as CompareSidesOptions;
    expect(() => first({ R: 0, A: 1 }, options)).toThrow(expect.objectContaining({ code: 'precision-invalid', path }));
  });

  test('without it, one reading has no interval', () => {
    const comparison = first({ R: three(0), A: 9 });
    expect(comparison).toMatchObject({ claim: 'film', finding: 'undecided', basis: 'none' });
    expect(comparison).not.toHaveProperty('interval');
  });
});

describe('readings that are rounded', () => {
  test('scatter at least by their last digit', () => {
    const equal = (value: number) => ({ weighing: [value, value, value] });
    expect(first({ R: equal(0), A: equal(1) })).not.toHaveProperty('interval');
    const comparison = first({ R: equal(0), A: equal(1) }, { resolution: 0.1 });
    expect(comparison).toMatchObject({ basis: 'resolution', finding: 'higher' });
    // JCGM 100:2008, F.2.2: d / √12 for each reading
    expect(comparison.standardDeviation).toBeCloseTo((0.1 / Math.sqrt(12)) * Math.sqrt(2 / 3), 12);
  });
});

describe('days', () => {
  const days = ['Mo', 'Tu', 'We'];
  const onDays = (values: number[]) => ({ weighing: values, day: days });

  test('are taken out where they connect the packages', () => {
    const { againstReference, scatter } = one({
      R: onDays([0, 10, 20]),
      A: onDays([5.1, 15, 24.9]),
      B: onDays([1, 11.1, 20.9]),
    });
    expect(scatter[0]).toMatchObject({ blocks: 3, degreesOfFreedom: 4 });
    expect(againstReference[0].difference).toBeCloseTo(5, 10);
    expect(halfWidth(againstReference[0])).toBeLessThan(0.5);
  });

  test('are estimated where blocks are incomplete', () => {
    const { againstReference } = one({
      R: { weighing: [0, 0.1, 10], day: ['Mo', 'Mo', 'Tu'] },
      A: { weighing: [15, 15.1, 5], day: ['Tu', 'Tu', 'Mo'] },
    });
    // the plain difference of means would be 8.3
    expect(againstReference[0].difference).toBeCloseTo(5, 1);
  });

  test('that keep two packages apart are told', () => {
    const { warnings, scatter } = one({
      R: { weighing: [0, 1, 2], day: ['Mo', 'Mo', 'Mo'] },
      A: { weighing: [5, 6, 7], day: ['Tu', 'Tu', 'Tu'] },
    });
    expect(scatter[0].blocks).toBe(0);
    expect(warnings.map(({ code }) => code)).toEqual(['never-in-one-session', 'blocks-not-separable']);
  });
});

describe('the white', () => {
  test('read once counts as exact, and that is said', () => {
    expect(one({ R: three(0), A: three(5) }, {}, { A: 5 }).warnings).toMatchObject([{ code: 'white-exact' }]);
  });

  test('read several times adds its scatter', () => {
    const white = { spot: [{ A: 4.9 }, { A: 5.1 }] };
    const { againstReference, warnings } = one({ R: three(0), A: three(5) }, {}, white);
    expect(warnings).toEqual([]);
    // variance of two readings 0.1 either side of their mean, halved
    expect(againstReference[0].standardDeviation).toBeCloseTo(Math.sqrt(2 / 3 + 0.02 / 2), 10);
  });
});

describe('the best', () => {
  test('is named with what to expect of it', () => {
    const { best } = one({ R: three(0), A: three(3), B: three(1), C: three(2) });
    expect(best.leader).toMatchObject({ trial: 'A', difference: 3 });
    // spread of 1, 2, 3: variance 1, of which 1/3 is scatter of a mean
    expect(best.leader?.shrunk).toBeCloseTo(2 + (1 - 1 / 3) * 1, 10);
    expect(one({ R: three(0), A: three(3), B: three(-1) }, { best: 'lowest' }).best.leader?.trial).toBe('B');
  });

  test('a single trial is not drawn anywhere', () => {
    expect(one({ R: three(0), A: three(3) }).best.leader).toEqual({ trial: 'A', difference: 3, shrunk: 3 });
  });
});

test('results survive JSON', () => {
  const result = compareSides([{ name: 'W', sides: { R: three(0), A: three(5) }, reference: 'R' }], {
    precision: { weighing: 3, degreesOfFreedom: 1e9 },
  });
  expect(JSON.parse(JSON.stringify(result))).toEqual(result);
  expect(result).toMatchObject({ kind: 'side-comparisons', version: 1 });
});

describe('faults', () => {
  const sides = { R: three(0), A: three(1) };
  test.each<[unknown, unknown, string, string]>([
    [[], {}, 'empty', 'groups'],
    [null, {}, 'wrong-type', 'groups'],
    [[{ sides, reference: 'Q' }], {}, 'no-reference', 'groups[0].reference'],
    [[{ sides: { ...sides, B: [1, 2] }, reference: 'R' }], {}, 'repetition-unstated', 'B'],
    [[{ sides: { ...sides, B: { weighing: [1, Number.NaN] } }, reference: 'R' }], {}, 'not-finite', 'B.weighing[1]'],
    [[{ sides, reference: 'R' }], { rate: 5 }, 'invalid-option', 'options.rate'],
    [[{ sides, reference: 'R' }], { claim: 'everything' }, 'invalid-option', 'options.claim'],
    [[{ sides, reference: 'R' }], { resolution: -1 }, 'invalid-option', 'options.resolution'],
    [[{ sides, reference: 'R' }], { precison: {} }, 'invalid-option', 'options.precison'],
  ])('%j with %j: %s', (groups, options, code, path) => {
    expect(() => compareSides(groups as SideGroup[], options as CompareSidesOptions)).toThrow(
      expect.objectContaining({ code, path }),
    );
  });
});
