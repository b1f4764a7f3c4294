import { describe, expect, test } from 'vitest';
import { D65_10 } from '../../../src/colorimetry/index.js';
import { relativeTintingStrength } from '../../../src/strength/index.js';
import { COLORANTS, reduction } from '../simulated-reductions.js';

const { blue } = COLORANTS;
const options = { criterion: 'kubelka-munk-sum', viewing: D65_10, surface: 'none', white: reduction(blue, 0) } as const;
const weighUps = (amounts: readonly number[]) => ({ weighing: amounts.map((amount) => reduction(blue, amount)) });
const codesOf = (first: readonly number[], second: readonly number[]) =>
  relativeTintingStrength(weighUps(first), weighUps(second), options).warnings.map(
    ({ code, path }) => `${code} ${path}`,
  );

describe('what is said of replicates', () => {
  test('is nothing where both sides have real ones', () => {
    expect(codesOf([0.99, 1.01], [1.19, 1.21])).toEqual([]);
    expect(codesOf([1], [1.2])).toEqual([]);
  });

  test('is that one side lends its scatter to the other', () => {
    expect(codesOf([1], [1.19, 1.21])).toEqual(['scatter-borrowed reference']);
    expect(codesOf([0.99, 1.01], [1.2])).toEqual(['scatter-borrowed trial']);
  });

  test('is which side was copied', () => {
    expect(codesOf([1, 1], [1.19, 1.21])).toEqual(['replicates-identical reference']);
    expect(codesOf([0.99, 1.01], [1.2, 1.2])).toEqual(['replicates-identical trial']);
    // nothing is lent where there is no scatter to lend
    expect(codesOf([1], [1.2, 1.2])).toEqual(['replicates-identical trial']);
  });
});
