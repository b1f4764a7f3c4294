import { describe, expect, test } from 'vitest';
import { findMinima, findRoots, scannedFactors, solutionsNear } from '../../../src/strength/criteria/scan.js';
import { GREY } from '../grey-dilution.js';

describe('the factors that are looked at', () => {
  test('cover the whole range evenly in the logarithm, in steps of at most a quarter', () => {
    const factors = scannedFactors(GREY);
    expect(factors[0]).toBeCloseTo(1e-3, 12);
    expect(factors.at(-1)).toBe(1e3);
    const ratios = factors.slice(1).map((factor, i) => factor / factors[i]);
    expect(Math.max(...ratios)).toBeLessThanOrEqual(1.25);
    expect(Math.max(...ratios) - Math.min(...ratios)).toBeLessThan(1e-9);
    // the fewest steps of a quarter that cover six decades
    expect(factors).toHaveLength(1 + Math.ceil(Math.log(1e6) / Math.log(1.25)));
  });

  test('are two steps either side where a solution is expected', () => {
    const factors = scannedFactors(GREY, 2);
    expect(factors[0]).toBeCloseTo(2 / 1.25 ** 2, 12);
    expect(factors.at(-1)).toBeCloseTo(2 * 1.25 ** 2, 12);
  });

  test('never leave the range, and are none outside it', () => {
    expect(scannedFactors(GREY, 1e-3)[0]).toBeCloseTo(1e-3, 12);
    // not by the last digit either, which low · (high / low) is off by for the others
    for (const near of [1e3, 670, 770]) expect(scannedFactors(GREY, near).at(-1)).toBe(1e3);
    expect(scannedFactors(GREY, 1e5)).toEqual([]);
  });
});

describe('solutions', () => {
  const asked: (number | undefined)[] = [];
  const find = (answer: readonly number[]) => (near?: number) => {
    asked.push(near);
    return near === undefined ? [...answer, 9] : [...answer];
  };

  test('near an expected one are enough', () => {
    asked.length = 0;
    expect(solutionsNear(2, find([2.1]))).toEqual([2.1]);
    expect(asked).toEqual([2]);
  });

  test('are looked for everywhere if there is none near, or none is expected', () => {
    asked.length = 0;
    expect(solutionsNear(2, find([]))).toEqual([9]);
    expect(solutionsNear(undefined, find([1]))).toEqual([1, 9]);
    expect(asked).toEqual([2, undefined, undefined]);
  });

  test('are all the roots of an equation, to ten digits', () => {
    const roots = findRoots([0.1, 0.5, 1, 3, 10, 30], (t) => (t - 0.2) * (t - 2) * (t - 20));
    expect(roots.map((root) => root.toPrecision(10))).toEqual(['0.2000000000', '2.000000000', '20.00000000']);
  });

  test('count a root on a looked-at factor once', () => {
    expect(findRoots([0.5, 1, 2], (t) => t - 1)).toHaveLength(1);
    expect(findRoots([0.5, 1, 2], (t) => 1 - t)).toHaveLength(1);
  });

  test('are all the minima, the flat-bottomed among them, and not the ends', () => {
    const f = (t: number) => Math.min((Math.log(t) - Math.log(0.3)) ** 2, (Math.log(t) - Math.log(30)) ** 2 + 0.1);
    const factors = Array.from({ length: 41 }, (_, i) => 10 ** (-2 + i / 10));
    const minima = findMinima(factors, f);
    expect(minima).toHaveLength(2);
    expect(minima[0]).toBeCloseTo(0.3, 3);
    expect(minima[1]).toBeCloseTo(30, 1);
    // one between two looked-at factors that are equally low
    const [between, ...others] = findMinima([0.25, 0.5, 2, 4], (t) => Math.log(t) ** 2);
    expect(between).toBeCloseTo(1, 6);
    expect(others).toEqual([]);
    expect(findMinima(factors, (t) => t)).toEqual([]);
    expect(findMinima(factors, (t) => -t)).toEqual([]);
  });
});
