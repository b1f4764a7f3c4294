import { describe, expect, test } from 'vitest';
import { deltaE2000 } from '../../../src/colorimetry/index.js';
import { solveSmallestDifference } from '../../../src/strength/criteria/smallest-difference.js';
import { type Dilution, dilutedLab, dilutedReflectances, labOf } from '../../../src/strength/reduction/dilution.js';
import { BANDS, flatBands, GREY } from '../grey-dilution.js';

describe('the smallest difference', () => {
  type Thirds = readonly [blue: number, green: number, red: number];
  /** K/S in the blue to 500, the green to 600 and the red beyond. */
  const thirds = ([blue, green, red]: Thirds) => flatBands(0).map((_, i) => (i < 12 ? blue : i < 22 ? green : red));
  const dilutionOf = (white: number, reference: Thirds, trial: Thirds): Dilution => {
    const known = { ...GREY, white: flatBands(white), reference: thirds(reference) };
    const measuredReference = dilutedReflectances({ ...known, trial: known.reference }, 1);
    return { ...known, trial: thirds(trial), measuredReference };
  };
  const differenceIn = (dilution: Dilution) => (factor: number) =>
    deltaE2000(labOf(BANDS, dilution.measuredReference), dilutedLab(dilution, factor));
  /** Whether the difference is larger 5 % to either side. */
  const dips = (difference: (factor: number) => number, factor: number) =>
    difference(factor) < Math.min(difference(factor * 1.05), difference(factor / 1.05));

  test('is no solution where the white without any colorant is closer still', () => {
    // a cyan reference and a magenta trial
    const dilution = dilutionOf(0, [0, 0, 0.3], [0.001, 3, 0.3]);
    const difference = differenceIn(dilution);
    expect(dips(difference, 0.0542)).toBe(true);
    expect(difference(1e-3)).toBeLessThan(difference(0.0542));
    expect(difference(1e3)).toBeGreaterThan(difference(0.0542));
    expect(() => solveSmallestDifference(dilution)).toThrow(
      expect.objectContaining({ code: 'no-solution', path: 'trial' }),
    );
  });

  test.each([
    [
      'is the only solution where another dip is more than ΔE00 1 above it',
      1,
      [0.3, 0.01, 0.001],
      [10, 3, 0.3],
      0.0347,
      294,
    ],
    [
      'shares the place with a dip that is less than ΔE00 1 above it',
      0,
      [0.1, 0.001, 0.1],
      [0.003, 0, 3],
      0.0228,
      79.5,
    ],
  ] as const)('%s', (_, white, reference, trial, first, second) => {
    const dilution = dilutionOf(white, reference, trial);
    const difference = differenceIn(dilution);
    expect([first, second].map((factor) => dips(difference, factor))).toEqual([true, true]);
    const rival = difference(second) - difference(first) < 1;
    const { factor, roots, warnings } = solveSmallestDifference(dilution);
    expect(factor / first).toBeCloseTo(1, 2);
    expect(roots?.map((root) => root.toPrecision(3))).toEqual(
      rival ? [first, second].map((dip) => dip.toPrecision(3)) : undefined,
    );
    expect(warnings.map(({ code }) => code)).toEqual(rival ? ['several-solutions'] : []);
  });
});
