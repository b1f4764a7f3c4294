import { describe, expect, test } from 'vitest';
import { D65_10, deltaE2000 } from '../../src/colorimetry/index.js';
import { listBands, spectralBands } from '../../src/strength/bands.js';
import { noteDarkerWhite } from '../../src/strength/colorant-absorption.js';
import { solveAbsorptionMaximum } from '../../src/strength/criteria/absorption-maximum.js';
import { findMinima, findRoots, scannedFactors, solutionsNear } from '../../src/strength/criteria/scan.js';
import { nearestOrClosestInColour } from '../../src/strength/criteria/several-roots.js';
import { solveSmallestDifference } from '../../src/strength/criteria/smallest-difference.js';
import {
  assertReachable,
  type Dilution,
  dilutedLab,
  dilutedReflectances,
  factorRange,
  labOf,
} from '../../src/strength/dilution.js';
import { findingOf } from '../../src/strength/replicates/finding.js';
import { GRID } from './simulated-reductions.js';

const bands = spectralBands(D65_10, GRID);
const even = (value: number) => new Float64Array(bands.count).fill(value);

/** A grey in a white without absorption: factors from a thousandth to a thousand. */
const GREY: Dilution = {
  bands,
  surface: undefined,
  white: even(0),
  reference: even(0.5),
  trial: even(0.5),
  measuredReference: even(0.381966),
};

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

  test('end where the diluted K/S of a band would be negative beyond noise, which is named', () => {
    const trial = even(0.5);
    trial[10] = -0.045;
    const white = even(0.02);
    // 0.02 / (0.045 - 1 % of 0.5)
    expect(factorRange({ ...GREY, white, trial })).toEqual({
      low: 1e-3,
      high: expect.closeTo(0.5, 9),
      endedBy: '480 nm',
    });
    // less, or as much: the first such band is named
    for (const other of [-0.025, -0.045]) {
      trial[20] = other;
      expect(factorRange({ ...GREY, white, trial }).endedBy).toBe('480 nm');
    }
    trial[20] = -0.085;
    expect(factorRange({ ...GREY, white, trial })).toEqual({
      low: 1e-3,
      high: expect.closeTo(0.25, 9),
      endedBy: '580 nm',
    });
  });

  test('are all that a criterion may give: their ends are, and beyond them the band that ends them is named', () => {
    const trial = even(0.5);
    trial[10] = -0.045;
    // 0.02 / (0.045 - 1 % of 0.5) is 0.5
    const ended: Dilution = { ...GREY, white: even(0.02), trial };
    for (const factor of [1e-3, 1, 1e3]) expect(() => assertReachable(GREY, factor)).not.toThrow();
    for (const [dilution, factor, path] of [
      [GREY, 0.99e-3, 'trial'],
      [GREY, 1.01e3, 'trial'],
      [ended, 0.99e-3, 'trial'],
      [ended, 0.51, 'trial at 480 nm'],
    ] as const) {
      expect(() => assertReachable(dilution, factor)).toThrow(expect.objectContaining({ code: 'no-solution', path }));
    }
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

describe('the smallest difference', () => {
  type Thirds = readonly [blue: number, green: number, red: number];
  /** K/S in the blue to 500, the green to 600 and the red beyond. */
  const thirds = ([blue, green, red]: Thirds) => even(0).map((_, i) => (i < 12 ? blue : i < 22 ? green : red));
  const dilutionOf = (white: number, reference: Thirds, trial: Thirds): Dilution => {
    const known = { ...GREY, white: even(white), reference: thirds(reference) };
    const measuredReference = dilutedReflectances({ ...known, trial: known.reference }, 1);
    return { ...known, trial: thirds(trial), measuredReference };
  };
  const differenceIn = (dilution: Dilution) => (factor: number) =>
    deltaE2000(labOf(bands, dilution.measuredReference), dilutedLab(dilution, factor));
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

describe('notes on the shape of an absorption', () => {
  test.each([
    [1.4, []],
    [1.41, ['near-neutral']],
  ])('with a maximum of 2 an even one is one whose least is above 1.4 (0.7 of it): %d', (least, expected) => {
    // wherever the least is, the ends of the range included
    for (const band of [bands.first, 10, bands.last]) {
      const reference = even(1.5);
      reference[band] = least;
      // away from the ends, and neither dark nor pale
      reference[20] = 2;
      const { warnings } = solveAbsorptionMaximum({ ...GREY, reference });
      expect(warnings.map(({ code }) => code)).toEqual(expected);
    }
  });

  test.each([
    ['a billionth of the largest is rounding', 100, [-0.9e-7], undefined],
    ['more than that is none', 100, [-1.1e-7], '480 nm'],
    ['a small colorant has a small limit', 1e-3, [-1.1e-12], '480 nm'],
    ['of the bands darker than the white the worst is named', 1, [-0.1, -0.2, -0.1], '490 nm'],
    ['of equally dark ones the first', 1, [-0.1, -0.1], '480 nm'],
  ])('a darker white: %s', (_, largest, negative, path) => {
    const added = even(largest);
    added.set(negative, 10);
    expect(noteDarkerWhite(added, bands, 'trial').map((note) => note.path)).toEqual(path ? [`trial at ${path}`] : []);
  });
});

describe('names of bands', () => {
  test('draw neighbours together', () => {
    expect(listBands(bands, [2])).toBe('400 nm');
    expect(listBands(bands, [2, 3])).toBe('400 nm to 410 nm');
    expect(listBands(bands, [2, 3, 4, 7, 9, 10])).toBe('400 nm to 420 nm, 450 nm, 470 nm to 480 nm');
    expect(listBands(bands, [])).toBe('');
  });

  test('the range of absorption maximum and sum is 400 to 700 nm, both included', () => {
    expect([bands.nameOf(bands.first), bands.nameOf(bands.last)]).toEqual(['400 nm', '700 nm']);
    const own = spectralBands(D65_10, { start: 450, step: 20, count: 11 });
    expect([own.first, own.last]).toEqual([0, 10]);
    expect(() => spectralBands(D65_10, { start: 720, step: 10, count: 5 })).toThrow(
      expect.objectContaining({ code: 'grid-invalid', path: 'grid.start' }),
    );
  });
});

describe('what an interval proves', () => {
  const between = (low: number, high: number) =>
    ({ low, high, standardDeviation: 1, level: 0.95, basis: 'replicates' }) as const;

  test.each([
    [100.1, 104, undefined, 'stronger'],
    [100, 104, undefined, 'undecided'],
    [96, 100, undefined, 'undecided'],
    [96, 99.9, undefined, 'weaker'],
    [98, 102, 2, 'equal-within-margin'],
    [97.9, 102, 2, 'undecided'],
    [98, 102.1, 2, 'undecided'],
    [101, 101.5, 2, 'equal-within-margin'],
    [103, 104, 2, 'stronger'],
  ] as const)('%d to %d %% with a margin of %s: %s', (low, high, margin, finding) => {
    expect(findingOf(between(low, high), margin)).toBe(finding);
  });

  test('nothing without one', () => {
    expect(findingOf(undefined, 2)).toBe('undecided');
  });
});
