import { describe, expect, test } from 'vitest';
import {
  type Control,
  type ControlChartOptions,
  type ControlPoint,
  type ControlsOptions,
  chartControls,
  compareSides,
  precisionFromControls,
} from '../../../src/evidence/index.js';
import { seededNormal } from '../../study/seeded-normal.js';

const points = (...values: number[]) => values.map((value) => ({ value }));

describe('chartControls', () => {
  test('estimates the process from moving ranges of the baseline', () => {
    const { centre, standardDeviation, limitsFrom, limits } = chartControls(points(10, 12, 10, 12, 10, 50), {
      baseline: 5,
    });
    expect(centre).toBeCloseTo(10.8, 12);
    // mean moving range 2; 1.128 for two values (ISO 7870-2)
    expect(standardDeviation).toBeCloseTo(2 / 1.128, 12);
    expect(limitsFrom).toBe(5);
    expect(limits.individual.high).toBeCloseTo(10.8 + 3 * (2 / 1.128), 12);
  });

  test('only the moving average signals; the other charts are marked', () => {
    const chart = chartControls(points(0, 0, 3.5, 0), { centre: 0, standardDeviation: 1 });
    expect(chart.signals).toEqual([]);
    expect(chart.points[2].beyond).toEqual(['individual']);
    const jump = chartControls(points(-2, 2), { centre: 0, standardDeviation: 1 });
    expect(jump.points[1]).toMatchObject({ movingRange: 4, beyond: ['moving-range'] });
    expect(jump.points[0]).not.toHaveProperty('movingRange');
  });

  test('a lasting shift signals, and says where to', () => {
    // the limit is 3 √(0.25 / 1.75) = 1.134, the third average 2 (1 - 0.75³) = 1.156
    const { signals } = chartControls(points(-2, -2, -2, -2, -2), { centre: 0, standardDeviation: 1 });
    expect(signals[0]).toEqual({ index: 2, direction: 'low' });
  });

  test('stated limits are told from estimated ones', () => {
    expect(chartControls(points(1), { centre: 0, standardDeviation: 1 })).not.toHaveProperty('limitsFrom');
    expect(chartControls(points(1, 2), { standardDeviation: 1 }).limitsFrom).toBe(2);
  });

  test.each<[unknown, unknown, string, string]>([
    [[], {}, 'empty', 'points'],
    [[1], {}, 'wrong-type', 'points[0]'],
    [points(1, Number.NaN), {}, 'not-finite', 'points[1].value'],
    [points(1, 2, 3), {}, 'too-few-points', 'points'],
    [points(1, 1, 1, 1, 1), {}, 'too-few-points', 'points'],
    [points(1, 2), { standardDeviation: 0 }, 'invalid-option', 'options.standardDeviation'],
    [points(1, 2), { standardDeviation: 1, baseline: 3 }, 'invalid-option', 'options.baseline'],
    [points(1, 2), { standardDeviation: 1, weight: 0 }, 'invalid-option', 'options.weight'],
    [points(1, 2), { standardDeviation: 1, lambda: 0.2 }, 'invalid-option', 'options.lambda'],
  ])('%j with %j: %s', (given, options, code, path) => {
    expect(() => chartControls(given as ControlPoint[], options as ControlChartOptions)).toThrow(
      expect.objectContaining({ code, path }),
    );
  });
});

describe('precisionFromControls', () => {
  const normal = seededNormal(8);
  const controls: Control[] = Array.from({ length: 60 }, (_, i) => {
    const made = 100 + 2 * normal();
    return {
      date: `2026-${i < 30 ? '01' : '02'}-${String((i % 28) + 1).padStart(2, '0')}`,
      value: { spot: [1, 2, 3].map(() => made + 0.5 * normal()) },
    };
  });

  test('finds what controls were made with (seed 8)', () => {
    const { precision, chart, from, to } = precisionFromControls(controls);
    // 59 degrees of freedom: one standard error is 9 % of the standard deviation, for 120 it is 6.5 %
    expect(Math.abs((precision.weighing ?? 0) / 2 - 1)).toBeLessThan(0.27);
    expect(Math.abs((precision.spot ?? 0) / 0.5 - 1)).toBeLessThan(0.2);
    expect(precision.degreesOfFreedom).toMatchObject({ spot: 120 });
    expect([from, to]).toEqual(['2026-01-01', '2026-02-28']);
    expect(precision.source).toContain('60');
    expect(chart.limitsFrom).toBe(60);
  });

  test('is what a comparison takes', () => {
    const { precision } = precisionFromControls(controls);
    const { claim, fromHistory } = compareSides([{ sides: { R: 100, A: 120 }, reference: 'R' }], { precision })
      .groups[0].againstReference[0];
    expect({ claim, fromHistory }).toEqual({ claim: 'mill-base', fromHistory: ['weighing', 'spot'] });
  });

  test('of grinds where every control was ground', () => {
    const ground = controls.map(({ value }) => ({ value }));
    expect(precisionFromControls(ground, { level: 'grind' }).precision.grind).toBeCloseTo(
      precisionFromControls(controls).precision.weighing ?? 0,
      12,
    );
  });

  test.each<[unknown, unknown, string, string]>([
    [[], {}, 'empty', 'controls'],
    [controls.slice(0, 4), {}, 'too-few-points', 'controls'],
    [controls, { level: 'day' }, 'invalid-option', 'options.level'],
    [controls, { level: 'spot' }, 'level-misplaced', 'controls[0].value'],
    [[1, 2, 3, 4, 5], {}, 'wrong-type', 'controls[0]'],
    [controls.map(() => ({ value: [1, 2] })), {}, 'repetition-unstated', 'controls[0].value'],
  ])('%#: %s', (given, options, code, path) => {
    expect(() => precisionFromControls(given as Control[], options as ControlsOptions)).toThrow(
      expect.objectContaining({ code, path }),
    );
  });
});
