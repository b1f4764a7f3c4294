import fc from 'fast-check';
import jstat from 'jstat';
import { describe, expect, test } from 'vitest';
import { conformanceProbability, type DecisionRule, decide, decideAtOneRisk, judge } from '../../src/evidence/index.js';

const { jStat } = jstat;
const AT_FIVE: DecisionRule = { rule: 'conformance-probability', risk: 0.05 };

describe('probability of conformance', () => {
  // jstat ends its continued fraction at 3e-7
  test('is Student’s t beyond the limit, against jstat', () => {
    for (const n of [2, 4.5, 30]) {
      const figure = { value: 3, standardDeviation: 2, degreesOfFreedom: n };
      expect(conformanceProbability(figure, { upper: 5 })).toBeCloseTo(jStat.studentt.cdf(1, n), 6);
      expect(conformanceProbability(figure, { lower: 1, upper: 5 })).toBeCloseTo(2 * jStat.studentt.cdf(1, n) - 1, 6);
    }
    const known = { value: 3, standardDeviation: 2 };
    expect(conformanceProbability(known, { lower: 1 })).toBeCloseTo(jStat.normal.cdf(1, 0, 1), 6);
  });

  test.each<[unknown, unknown, string]>([
    [{ value: 1, standardDeviation: 0 }, { upper: 2 }, 'invalid-option'],
    [{ value: 1, standardDeviation: 1, degreesOfFreedom: 0 }, { upper: 2 }, 'invalid-option'],
    [{ value: Number.NaN, standardDeviation: 1 }, { upper: 2 }, 'not-finite'],
    [{ value: 1, standardDeviation: 1 }, {}, 'invalid-limit'],
    [null, { upper: 2 }, 'wrong-type'],
    [{ value: 1, standardDeviation: 1 }, null, 'wrong-type'],
  ])('%j with %j: %s', (figure, limit, code) => {
    expect(() => conformanceProbability(figure as never, limit as never)).toThrow(expect.objectContaining({ code }));
  });
});

describe('a decision by a stated rule', () => {
  const figure = { value: 0.8, interval: { low: 0.6, high: 1.02 }, standardDeviation: 0.1, degreesOfFreedom: 10 };

  test('the rule decides, the probability stands beside either', () => {
    const byInterval = decide(figure, { upper: 1 }, { rule: 'interval' });
    const byProbability = decide(figure, { upper: 1 }, AT_FIVE);
    expect(byInterval).toMatchObject({ outcome: 'undecided', consumersRisk: 0.025 });
    expect(byProbability).toMatchObject({ outcome: 'meets', consumersRisk: 0.05, simpleAcceptance: false });
    expect(byInterval.conformance).toBe(byProbability.conformance);
  });

  test('a figure without uncertainty decides nothing, unless it is exact or accepted as supplied', () => {
    expect(decide({ value: 0.8 }, { upper: 1 }, AT_FIVE)).toMatchObject({ outcome: 'undecided' });
    expect(decide({ value: 3, without: 'exact' }, { upper: 3 }, AT_FIVE)).toEqual({
      outcome: 'meets',
      consumersRisk: 0,
      simpleAcceptance: false,
    });
    expect(decide({ value: 4, without: 'supplied' }, { upper: 3 }, AT_FIVE)).toEqual({
      outcome: 'fails',
      consumersRisk: 0.5,
      simpleAcceptance: true,
    });
  });

  test('at 2.5 % a limit it says what a 95 % interval says (seed 3)', () => {
    const quantile = jStat.studentt.inv(0.975, 10);
    fc.assert(
      fc.property(fc.double({ min: -3, max: 3, noNaN: true }), (value) => {
        const given = { value, standardDeviation: 1, degreesOfFreedom: 10 };
        const interval = { low: value - quantile, high: value + quantile };
        // at the end itself rounding decides
        fc.pre(Math.abs(Math.abs(value) - quantile) > 1e-6);
        const { outcome } = decide(given, { upper: 0 }, { rule: 'conformance-probability', risk: 0.025 });
        expect(outcome).toBe(judge(value, interval, { upper: 0 }));
      }),
      { seed: 3 },
    );
  });

  test.each<[unknown, string, string]>([
    [{ rule: 'guess' }, 'invalid-option', 'rule.rule'],
    [{ rule: 'conformance-probability', risk: 0.5 }, 'invalid-option', 'rule.risk'],
    [{ rule: 'interval', risk: 0.05 }, 'invalid-option', 'rule.risk'],
    [undefined, 'wrong-type', 'rule'],
  ])('the rule %j is refused', (rule, code, path) => {
    expect(() => decide({ value: 1 }, { upper: 2 }, rule as DecisionRule)).toThrow(
      expect.objectContaining({ code, path }),
    );
  });
});

describe('several packages at one risk', () => {
  const at = (value: number) => ({ value, standardDeviation: 1, limit: { lower: 0 } });
  const outcomes = (...values: number[][]) =>
    decideAtOneRisk(
      values.map((figures, i) => ({ name: `${i}`, figures: figures.map(at) })),
      AT_FIVE,
    ).items.map(({ outcome }) => outcome);

  test('one package has the whole risk, over all that it must meet', () => {
    // 1.645 standard deviations within the limit is 5 %
    expect(outcomes([1.65])).toEqual(['meets']);
    expect(outcomes([1.64])).toEqual(['undecided']);
    expect(outcomes([1.65, 9, 1.7])).toEqual(['meets']);
  });

  test('several share it', () => {
    expect(outcomes([1.65], [1.65], [1.65])).toEqual(['undecided', 'undecided', 'undecided']);
    // 5 % / 3: 2.13 standard deviations
    expect(outcomes([2.15], [0], [0])).toEqual(['meets', 'undecided', 'undecided']);
  });

  test('those that are decided leave their share to the others', () => {
    expect(outcomes([9], [9], [1.65])).toEqual(['meets', 'meets', 'meets']);
  });

  test('any figure fails a package', () => {
    expect(outcomes([9, -9])).toEqual(['fails']);
    // with two figures one of them may lie so far out by chance
    expect(outcomes([9, -1.7])).toEqual(['undecided']);
    expect(outcomes([9, -2.3])).toEqual(['fails']);
  });

  test('by the interval the intervals decide, which hold jointly', () => {
    const figure = { value: 1, interval: { low: 0.1, high: 1.9 }, limit: { lower: 0 } };
    const { items, risk } = decideAtOneRisk([{ name: 'A', figures: [figure] }], { rule: 'interval' });
    expect(items[0].outcome).toBe('meets');
    expect(risk).toBe(0.025);
  });

  test('a package without figures is no package that meets them', () => {
    expect(() => decideAtOneRisk([{ name: 'A', figures: [] }], AT_FIVE)).toThrow(
      expect.objectContaining({ code: 'empty', path: 'items[0].figures' }),
    );
  });
});
