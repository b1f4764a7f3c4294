import { describe, expect, test } from 'vitest';
import { D65_10 } from '../../src/colorimetry/index.js';
import {
  compareStrengthCriteria,
  internalReflectance,
  measuredReflectance,
  relativeTintingStrength,
  replicatesNeeded,
} from '../../src/strength/index.js';
import { intervalFromReplicates } from '../../src/strength/replicates/strength-interval.js';
import { bell, COLORANTS, PAINT_SURFACE, reduction } from './simulated-reductions.js';

const { blue } = COLORANTS;
const options = { criterion: 'kubelka-munk-sum', viewing: D65_10, white: reduction(blue, 0) } as const;
const codesOf = (first: readonly number[], second: readonly number[]) =>
  relativeTintingStrength(
    first.map((amount) => reduction(blue, amount)),
    second.map((amount) => reduction(blue, amount)),
    options,
  ).warnings.map(({ code, path }) => `${code} ${path}`);

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

describe('the variance of a strength', () => {
  const deviation = (sides: Parameters<typeof intervalFromReplicates>[1]) =>
    intervalFromReplicates(100, sides)?.standardDeviation;
  // two logarithms ±0.01 have the variance 2e-4
  const two = [-0.01, 0.01];

  test('adds the variances of the means: 2e-4 / 2 each', () => {
    expect(deviation({ reference: two, trial: two, white: [0] })).toBeCloseTo(100 * Math.sqrt(2e-4), 10);
    expect(deviation({ reference: two, trial: two, white: two })).toBeCloseTo(100 * Math.sqrt(3e-4), 10);
  });

  test('lends one side’s scatter to a single reading of the other, either way: 2e-4 / 2 + 2e-4', () => {
    expect(deviation({ reference: two, trial: [0], white: [0] })).toBeCloseTo(100 * Math.sqrt(3e-4), 10);
    expect(deviation({ reference: [0], trial: two, white: [0] })).toBeCloseTo(100 * Math.sqrt(3e-4), 10);
  });
});

describe('the comparison of criteria', () => {
  test('takes the largest residual, whichever criterion leaves it', () => {
    const trial = reduction(bell(560, 85, 0.9, 0.06), 1);
    for (const [first, second] of [
      [reduction(blue, 1), trial],
      [trial, reduction(blue, 1)],
    ]) {
      const { results, largestResidual } = compareStrengthCriteria(first, second, options);
      const residuals = results.map(({ residual }) => residual.dE2000);
      expect(largestResidual.dE2000).toBe(Math.max(...residuals));
      expect(results.find(({ criterion }) => criterion === largestResidual.criterion)?.residual.dE2000).toBe(
        Math.max(...residuals),
      );
    }
  });

  test('lets no figure stand for all where a criterion has no answer, and names it', () => {
    const none = (wavelength: number) => bell(430, 25, 0.4)(wavelength) - bell(610, 5, 1e-4)(wavelength);
    const { unsolved, quotable, warnings } = compareStrengthCriteria(reduction(blue, 1), reduction(none, 1), {
      ...options,
      shadeThreshold: 1000,
    });
    expect(unsolved.length).toBeGreaterThan(0);
    expect(quotable).toBe(false);
    const names = unsolved.map(({ criterion }) => criterion).join(', ');
    expect(warnings.map(({ message }) => message)).toEqual([
      `There is no strength by ${names}; the reasons are in unsolved.`,
    ]);
  });

  test('refuses an endless threshold', () => {
    expect(() =>
      compareStrengthCriteria(reduction(blue, 1), reduction(blue, 1), {
        ...options,
        shadeThreshold: Number.POSITIVE_INFINITY,
      }),
    ).toThrow(expect.objectContaining({ code: 'invalid-option', path: 'options.shadeThreshold' }));
  });
});

describe('ends of what is allowed', () => {
  test('a film read without its gloss may reflect nothing', () => {
    expect(internalReflectance(0, { ...PAINT_SURFACE, specular: 'excluded' })).toBe(0);
  });

  test('a reflectance that no surface lets through is told its bound, 1/k2', () => {
    expect(() => measuredReflectance(3, { ...PAINT_SURFACE, internal: 0.5 })).toThrow(
      /a fraction below 1\/k2, 2, is expected/,
    );
  });

  test('a power of one half is the least', () => {
    expect(replicatesNeeded({ standardDeviation: 1, difference: 1, power: 0.5 })).toBeLessThan(
      replicatesNeeded({ standardDeviation: 1, difference: 1, power: 0.8 }),
    );
    expect(() => replicatesNeeded({ standardDeviation: 1, difference: 1, power: 0.49 })).toThrow(
      expect.objectContaining({ path: 'options.power' }),
    );
  });

  test.each(['standardDeviation', 'difference'])('an endless %s is refused', (name) => {
    const given = { standardDeviation: 1, difference: 1, [name]: Number.POSITIVE_INFINITY };
    expect(() => replicatesNeeded(given)).toThrow(expect.objectContaining({ path: `options.${name}` }));
  });

  test.each(['colorant', 'white'])('an endless amount of %s is refused', (name) => {
    const usual = { colorant: 1, white: 10 };
    const amounts = { reference: { ...usual, [name]: Number.POSITIVE_INFINITY }, trial: usual };
    expect(() => relativeTintingStrength(reduction(blue, 1), reduction(blue, 1), { ...options, amounts })).toThrow(
      expect.objectContaining({ path: `options.amounts.reference.${name}` }),
    );
  });
});
