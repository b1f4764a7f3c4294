import { describe, expect, test } from 'vitest';
import { type Repeated, varianceComponents } from '../../../src/evidence/index.js';
import { seededNormal } from '../../study/seeded-normal.js';

describe('varianceComponents', () => {
  test('the mean squares of a balanced design by hand', () => {
    // two weigh-ups with means 1.5 and 4.5, spots half a unit either side: 2 * (1.5² + 1.5²) / 1 = 9 and 1 / 2
    const { components } = varianceComponents([{ weighing: [{ spot: [1, 2] }, { spot: [4, 5] }] }]);
    expect(components).toMatchObject([
      { level: 'weighing', meanSquare: 9, meanSquareDegreesOfFreedom: 1 },
      { level: 'spot', meanSquare: 0.5, standardDeviation: Math.sqrt(0.5), degreesOfFreedom: 2 },
    ]);
    expect(components[0].standardDeviation).toBeCloseTo(Math.sqrt((9 - 0.5) / 2), 12);
    // Satterthwaite: (9/2 - 0.5/2)² / ((9/2)²/1 + (0.5/2)²/2)
    expect(components[0].degreesOfFreedom).toBeCloseTo(4.25 ** 2 / (4.5 ** 2 + 0.25 ** 2 / 2), 10);
  });

  test('a level whose units differ by less than their parts explain has none of its own', () => {
    const { components } = varianceComponents([{ weighing: [{ spot: [1, 5] }, { spot: [2, 4] }] }]);
    expect(components[0]).toMatchObject({ level: 'weighing', standardDeviation: 0, degreesOfFreedom: 1 });
  });

  test('a level of which nothing was repeated is left out', () => {
    expect(varianceComponents([3]).components).toEqual([]);
    expect(varianceComponents([{ weighing: [{ spot: [1, 2] }] }]).components.map(({ level }) => level)).toEqual([
      'spot',
    ]);
  });

  test('sides that differ don’t count as scatter', () => {
    const near = varianceComponents([{ weighing: [1, 2, 3] }, { weighing: [4, 6] }]).components;
    const far = varianceComponents([{ weighing: [1, 2, 3] }, { weighing: [1004, 1006] }]).components;
    expect(far[0].standardDeviation).toBeCloseTo(near[0].standardDeviation, 9);
    expect(near[0].meanSquareDegreesOfFreedom).toBe(3);
  });

  test('unbalanced designs are unbiased (seed 4)', () => {
    // Variances 4, 1 and 0.25; the mean of 1,500 designs of about 8 weigh-ups errs by less than 5 % (standard error 1.4 to 2 %).
    const normal = seededNormal(4);
    const film = (level: number, spots: number): Repeated<number> => ({
      spot: Array.from({ length: spots }, () => level + 0.5 * normal()),
    });
    const sums = { grind: 0, weighing: 0, drawdown: 0, spot: 0 };
    for (let n = 0; n < 1500; n++) {
      const sides = [3, 5].map((weighings) => ({
        weighing: Array.from({ length: weighings }, (_, w) => {
          const weighing = 2 * normal();
          return {
            drawdown: Array.from({ length: 1 + (w % 3) }, (_, d) => film(weighing + normal(), 1 + ((d + w) % 4))),
          };
        }),
      })) as Repeated<number>[];
      for (const { level, standardDeviation } of varianceComponents(sides).components)
        sums[level] += standardDeviation ** 2 / 1500;
    }
    expect(Math.abs(sums.weighing / 4 - 1)).toBeLessThan(0.05);
    expect(Math.abs(sums.drawdown / 1 - 1)).toBeLessThan(0.05);
    expect(Math.abs(sums.spot / 0.25 - 1)).toBeLessThan(0.05);
  });
});
