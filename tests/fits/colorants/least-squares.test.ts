import { describe, expect, test } from 'vitest';
import { factorLeastSquares } from '../../../src/fits/colorants/least-squares.js';

describe('linear least squares', () => {
  test('solves a consistent system whatever the units of its columns', () => {
    const { solve, condition } = factorLeastSquares([
      [1e6, 2e6, 3e6],
      [1e-6, 0, 1e-6],
    ]);
    const [x, y] = solve([3e6 + 2e-6, 6e6, 9e6 + 2e-6]);
    expect(x).toBeCloseTo(3, 12);
    expect(y).toBeGreaterThan(1.9);
    expect(condition).toBeLessThan(10);
  });

  test('leaves residuals at right angles to the columns', () => {
    const columns = [
      [1, 1, 1, 1, 1],
      [0, 1, 2, 3, 4],
    ];
    const target = [1.1, 2.9, 5.2, 6.8, 9.1];
    const [a, b] = factorLeastSquares(columns).solve(target);
    const rest = target.map((value, i) => value - a - b * i);
    for (const column of columns) expect(column.reduce((sum, value, i) => sum + value * rest[i], 0)).toBeCloseTo(0, 12);
  });

  test('has a condition number of 1 for columns at right angles, and grows as they close up', () => {
    const condition = (angle: number) =>
      factorLeastSquares([
        [1, 0, 0],
        [Math.cos(angle), Math.sin(angle), 0],
      ]).condition;
    expect(condition(Math.PI / 2)).toBeCloseTo(1, 12);
    // two unit columns at an angle have singular values √(1 ± cos), so a ratio of cot(angle / 2)
    for (const angle of [0.1, 1e-3, 1e-6]) {
      const exact = 1 / Math.tan(angle / 2);
      expect(condition(angle) / exact).toBeCloseTo(1, 3);
    }
  });

  test('has no finite condition number for dependent or empty columns', () => {
    expect(
      factorLeastSquares([
        [1, 2, 3],
        [2, 4, 6],
      ]).condition,
    ).toBe(Infinity);
    expect(
      factorLeastSquares([
        [1, 2, 3],
        [0, 0, 0],
      ]).condition,
    ).toBe(Infinity);
  });
});
