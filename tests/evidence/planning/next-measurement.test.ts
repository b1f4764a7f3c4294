import jstat from 'jstat';
import { describe, expect, test } from 'vitest';
import { type NextMeasurementOptions, nextMeasurement } from '../../../src/evidence/index.js';
import { costOf, varianceOfDesign } from '../../../src/evidence/planning/design.js';
import { criticalValues, designPower } from '../../../src/evidence/planning/design-power.js';

const { jStat } = jstat;
// standard deviations in % of strength, minutes of one invented laboratory
const components = { weighing: 2, drawdown: 1, spot: 0.3 };
const cost = { weighing: 30, drawdown: 10, spot: 1 };
const known = new Map();

describe('what a design costs and gives', () => {
  test('every unit at the cost of its level', () => {
    expect(costOf({ weighing: 5, drawdown: 1, spot: 1 }, cost)).toBe(205);
    expect(costOf({ weighing: 3, drawdown: 3, spot: 3 }, cost)).toBe(207);
  });

  test('inner units average only what lies below', () => {
    expect(varianceOfDesign({ weighing: 3, drawdown: 3, spot: 3 }, components)).toBeCloseTo(
      4 / 3 + 1 / 9 + 0.09 / 27,
      12,
    );
  });

  test('more weigh-ups beat more spots at the same cost, over eight packages', () => {
    const study = { components, known, sides: 8, criticalAt: criticalValues(2, 0.05) };
    const width = (design: object) => designPower(design, study)?.halfWidth;
    // 2.9 and 3.6 in the prototype; the expected half-width is a little below t times the standard deviation
    expect(width({ weighing: 5, drawdown: 1, spot: 1 })).toBeCloseTo(2.9, 1);
    expect(width({ weighing: 3, drawdown: 3, spot: 3 })).toBeCloseTo(3.6, 1);
  });

  test('power is that of the noncentral t distribution, against jstat', () => {
    const study = { components: { weighing: 1 }, known, sides: 2, criticalAt: criticalValues(2, 0.05) };
    for (const [n, difference] of [
      [3, 3],
      [5, 2],
      [10, 1],
    ]) {
      const noncentrality = difference / Math.sqrt(2 / n);
      const critical = jStat.studentt.inv(0.975, 2 * n - 2);
      const expected = 1 - jStat.noncentralt.cdf(critical, 2 * n - 2, noncentrality);
      expect(designPower({ weighing: n }, study)?.power(difference)).toBeCloseTo(expected, 3);
    }
  });
});

describe('what to make next', () => {
  test('the cheapest design that decides', () => {
    const { best, sentence } = nextMeasurement({ components, cost, goal: { difference: 5 } });
    expect(best).toMatchObject({ design: { weighing: 5, drawdown: 1, spot: 1 }, cost: 205 });
    expect(best?.power).toBeGreaterThanOrEqual(0.8);
    expect(sentence).toMatch(/^5 weigh-ups per side .* more drawdowns or spots alone will not\.$/);
  });

  test('on top of what was made', () => {
    const have = { weighing: 3, drawdown: 1, spot: 3 };
    const { best, alternatives, sentence } = nextMeasurement({ components, cost, goal: { difference: 5 }, have });
    expect(best).toMatchObject({ design: { weighing: 5, drawdown: 1, spot: 3 }, cost: 2 * 43 });
    expect(sentence).toMatch(/^2 more weigh-ups per side/);
    expect(alternatives.map(({ level, plan }) => [level, plan !== undefined])).toEqual([
      ['weighing', true],
      ['drawdown', false],
      ['spot', false],
    ]);
  });

  test('nothing where what was made is enough', () => {
    const { best } = nextMeasurement({ components, cost, goal: { difference: 5 }, have: { weighing: 6 } });
    expect(best).toMatchObject({ cost: 0 });
  });

  test('nothing helps where the difference is far below the scatter', () => {
    expect(nextMeasurement({ components, cost, goal: { difference: 0.1 } })).not.toHaveProperty('best');
  });

  test('one weigh-up is enough only with a history', () => {
    const precision = { ...components, degreesOfFreedom: 20 };
    const goal = { difference: 12 };
    expect(nextMeasurement({ components, cost, goal, precision }).best?.design.weighing).toBe(1);
    expect(nextMeasurement({ components, cost, goal }).best?.design.weighing).toBeGreaterThan(1);
  });

  test('a half-width can be the goal', () => {
    const { best } = nextMeasurement({ components, cost, goal: { halfWidth: 3 }, sides: 8 });
    expect(best?.halfWidth).toBeLessThanOrEqual(3);
    expect(best).not.toHaveProperty('power');
  });

  test.each<[unknown, string]>([
    [{ components: {}, cost, goal: { difference: 1 } }, 'options.components'],
    [{ components, cost: { spot: 1 }, goal: { difference: 1 } }, 'options.cost.weighing'],
    [{ components, cost, goal: { difference: 0 } }, 'options.goal.difference'],
    [{ components, cost, goal: { difference: 1, power: 2 } }, 'options.goal.power'],
    [{ components, cost, goal: { difference: 1, halfWidth: 2 } }, 'options.goal.difference'],
    [{ components, cost, goal: { halfWidth: -1 } }, 'options.goal.halfWidth'],
    [{ components, cost, goal: { difference: 1 }, have: { weighing: 1.5 } }, 'options.have.weighing'],
    [{ components, cost, goal: { difference: 1 }, have: { grind: 2 } }, 'options.have.grind'],
    [{ components, cost, goal: { difference: 1 }, sides: 1 }, 'options.sides'],
    [{ components, cost, goal: { difference: 1 }, rate: 0 }, 'options.rate'],
    [{ components: { weihing: 2 }, cost, goal: { difference: 1 } }, 'options.components.weihing'],
  ])('%j is refused', (options, path) => {
    expect(() => nextMeasurement(options as NextMeasurementOptions)).toThrow(
      expect.objectContaining({ code: 'invalid-option', path }),
    );
  });
});
