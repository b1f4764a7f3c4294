import { describe, expect, test } from 'vitest';
import { propagateParameters, type UncertainParameter } from '../../../src/evidence/index.js';

const tile: UncertainParameter = { value: 1, standardDeviation: 0.003 };

describe('propagateParameters', () => {
  test('what a session shares cancels in a ratio', () => {
    const ratio = propagateParameters(([only]) => (50 * only.tile) / (40 * only.tile), { tile });
    expect(ratio).toMatchObject({ kind: 'propagation', version: 1, value: 1.25 });
    expect(ratio.standardDeviation).toBeLessThan(1e-12);
  });

  test('between sessions it does not', () => {
    const across = propagateParameters(([one, other]) => one.tile / other.tile, { tile }, { sessions: 2, draws: 4000 });
    // √2 times 0.3 %; 4,000 draws know a standard deviation to 1.1 %, three of these
    expect(Math.abs(across.standardDeviation / (0.003 * Math.SQRT2) - 1)).toBeLessThan(0.035);
    expect((across.interval.high - across.interval.low) / (2 * 1.96 * 0.003 * Math.SQRT2)).toBeCloseTo(1, 1);
    expect(across.contributions.tile).toBeCloseTo(-0.003, 4);
  });

  test('unless it is the same everywhere', () => {
    const everywhere = { ...tile, everywhere: true };
    const across = propagateParameters(([one, other]) => one.tile / other.tile, { tile: everywhere }, { sessions: 2 });
    expect(across.standardDeviation).toBeLessThan(1e-12);
  });

  test('a rectangular parameter stays within √3 standard deviations', () => {
    const k1: UncertainParameter = { value: 0.04, standardDeviation: 0.01, distribution: 'rectangular' };
    const { interval, standardDeviation } = propagateParameters(([{ k1: of }]) => of, { k1 });
    expect(interval.low).toBeGreaterThanOrEqual(0.04 - 0.01 * Math.sqrt(3));
    expect(interval.high).toBeLessThanOrEqual(0.04 + 0.01 * Math.sqrt(3));
    expect(Math.abs(standardDeviation / 0.01 - 1)).toBeLessThan(0.05);
  });

  test('the same seed gives the same figures', () => {
    const run = (seed: number) => propagateParameters(([only]) => only.tile, { tile }, { seed });
    expect(run(3)).toEqual(run(3));
    expect(run(3).standardDeviation).not.toBe(run(4).standardDeviation);
  });

  test.each<[unknown[], string, string]>([
    [[1, { tile }], 'wrong-type', 'figure'],
    [[() => 1, null], 'wrong-type', 'parameters'],
    [[() => 1, { tile: { value: 1, standardDeviation: -1 } }], 'invalid-option', 'parameters.tile.standardDeviation'],
    [[() => 1, { tile: { ...tile, distribution: 'odd' } }], 'invalid-option', 'parameters.tile.distribution'],
    [[() => Number.NaN, { tile }], 'not-finite', 'figure(parameters)'],
    [[() => 1, { tile }, { draws: 5 }], 'invalid-option', 'options.draws'],
    [[() => 1, { tile }, { sessions: 0 }], 'invalid-option', 'options.sessions'],
  ])('%#: %s', (args, code, path) => {
    expect(() => Reflect.apply(propagateParameters, undefined, args)).toThrow(expect.objectContaining({ code, path }));
  });
});
