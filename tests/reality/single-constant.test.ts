import { describe, expect, test } from 'vitest';
import { amountTerm, OIL_PAINT_PAIRS, oilPaintExponent, STRENGTH_CRITERIA } from '../../src/strength/index.js';
import { PAIRS, ratioOf, singleConstantPercent } from './single-constant.js';

// The same colorant at 6 to 15 times the amount (colorant per white, by mass) is 100 % strong. Measured oil paints, source in oil-paints.txt;
// figures marked so are regression values of our own run.

const median = (values: readonly number[]) => {
  const sorted = [...values].sort((a, b) => a - b);
  return (sorted[Math.floor((sorted.length - 1) / 2)] + sorted[Math.ceil((sorted.length - 1) / 2)]) / 2;
};

test('the pairs are those of the stored exponents, in their order', () => {
  expect(PAIRS.map(({ colorant }) => colorant)).toEqual([...OIL_PAINT_PAIRS]);
});

/** Apparent strengths by criterion; how many terms hold 100 %, found without the colorant; their median half-width as a factor. Regression values. */
const FOUND = [
  ['absorption-maximum', [446, 317, 174, 110, 98, 97, 62, 71, 67, 53, 75, 126], 10, 2],
  ['kubelka-munk-sum', [405, 270, 151, 110, 100, 95, 64, 68, 46, 53, 81, 133], 10, 2.41],
  ['weighted-sum', [402, 267, 152, 111, 99, 97, 65, 70, 44, 54, 80, 138], 10, 2.49],
  ['lowest-tristimulus', [345, 237, 141, 106, 103, 97, 67, 67, 57, 54, 79, 139], 10, 2.31],
  ['tristimulus-y', [436, 243, 149, 106, 92, 94, 67, 67, 61, 38, 79, 138], 9, 2.1],
  ['smallest-difference', [470, 319, 184, 107, 96, 96, 68, 67, 68, 35, 74, 138], 9, 2.14],
] as const;

describe.each(FOUND)('%s', (criterion, expected, hold, halfWidth) => {
  const percents = PAIRS.map((pair) => singleConstantPercent(pair, criterion));

  test('the stored exponents are those of the readings', () => {
    const found = PAIRS.map((pair, i) => 1 + Math.log(percents[i] / 100) / Math.log(ratioOf(pair)));
    const exponent = median(found);
    const deviation = median(found.map((value) => Math.abs(value - exponent)));
    const stored = oilPaintExponent({ criterion });
    // The exponents are stored with three digits.
    expect(Math.abs(stored.exponent - exponent)).toBeLessThanOrEqual(0.0005);
    expect(Math.abs((stored.high - stored.low) / 2 - 1.4 * 1.4826 * deviation)).toBeLessThanOrEqual(0.003);
  });

  test('regression: apparent strengths, and the term of each found without it', () => {
    expect(percents.map(Math.round)).toEqual(expected);
    const terms = PAIRS.map((pair, i) => {
      const exponent = oilPaintExponent({ criterion, without: [pair.colorant] });
      return amountTerm(percents[i], { ratio: ratioOf(pair), exponent });
    });
    expect(terms.filter(({ low, high }) => low <= 100 && high >= 100).length).toBe(hold);
    expect(median(terms.map(({ low, high }) => Math.sqrt(high / low)))).toBeCloseTo(halfWidth, 2);
    for (const { warnings } of terms) expect(warnings).toMatchObject([{ code: 'amounts-far-apart' }]);
  });
});

test('every criterion is in the table', () => {
  expect(FOUND.map(([criterion]) => criterion)).toEqual([...STRENGTH_CRITERIA]);
});
