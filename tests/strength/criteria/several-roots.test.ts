import { describe, expect, test } from 'vitest';
import { nearestOrClosestInColour } from '../../../src/strength/criteria/several-roots.js';
import { GREY } from '../grey-dilution.js';

describe('of several solutions', () => {
  test('a single one is taken without a word', () => {
    expect(nearestOrClosestInColour(GREY, [2], undefined)).toEqual({ factor: 2, warnings: [] });
  });

  test('the one closest in colour is taken, wherever it stands in the list', () => {
    for (const roots of [
      [0.25, 1.1, 40],
      [1.1, 0.25, 40],
      [40, 0.25, 1.1],
    ]) {
      const { factor, roots: all, warnings } = nearestOrClosestInColour(GREY, roots, undefined);
      expect(factor).toBe(1.1);
      expect(all).toEqual(roots);
      expect(warnings.map(({ code }) => code)).toEqual(['several-solutions']);
    }
  });

  test('the nearest by ratio to an expected one is taken', () => {
    expect(nearestOrClosestInColour(GREY, [1.1, 10], 4).factor).toBe(10);
    expect(nearestOrClosestInColour(GREY, [10, 1.1], 3).factor).toBe(1.1);
    expect(nearestOrClosestInColour(GREY, [0.1, 1.1], 0.2).factor).toBe(0.1);
  });
});
