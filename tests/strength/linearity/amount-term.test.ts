import { describe, expect, test } from 'vitest';
import {
  type AmountExponent,
  amountTerm,
  EXPONENT_BASES,
  OIL_PAINT_PAIRS,
  oilPaintExponent,
} from '../../../src/strength/index.js';

const of = (exponent: number, low: number, high: number): AmountExponent => ({
  ...oilPaintExponent({ criterion: 'absorption-maximum' }),
  exponent,
  low,
  high,
});

describe('a trial at r times the amount of the reference', () => {
  test.each([0.1, 0.5, 2, 10])('of the same colorant reads 100 r^(e - 1) and is 100 %% strong, r = %d', (ratio) => {
    const term = amountTerm(100 * ratio ** (0.8 - 1), { ratio, exponent: of(0.8, 0.7, 0.9) });
    expect(term.percent).toBeCloseTo(100, 10);
    // Only the amounts are open at 100 %: half of the bounds of the exponent, times log r.
    expect(Math.log(term.high / 100)).toBeCloseTo(0.1 * Math.abs(Math.log(ratio)), 10);
    expect(term.low * term.high).toBeCloseTo(1e4, 6);
    expect(term.ratio).toBe(ratio);
  });

  test('is warned of beyond a ratio of 1.5, either way', () => {
    const codes = (ratio: number) =>
      amountTerm(100, { ratio, exponent: of(0.8, 0.7, 0.9) }).warnings.map(({ code }) => code);
    expect([1 / 1.6, 1 / 1.4, 1, 1.4, 1.6].map((ratio) => codes(ratio).length)).toEqual([1, 0, 0, 0, 1]);
    expect(codes(1.6)).toEqual(['amounts-far-apart']);
  });
});

test('at equal amounts a colorant 10 % stronger reads 111 to 106 % over exponents of 1.1 to 0.6', () => {
  const read = (e: number) => 100 * 1.1 ** e;
  expect([1.1, 0.6].map(read).map(Math.round)).toEqual([111, 106]);
  for (const e of [1.1, 0.6]) {
    const term = amountTerm(read(e), { ratio: 1, exponent: of(e, e, e) });
    expect([term.low, term.percent, term.high].every((value) => Math.abs(value - 110) < 1e-9)).toBe(true);
  }
});

describe('the exponent of the measured oil paints', () => {
  test('is named as such, for twelve pairs or those that are left', () => {
    const all = oilPaintExponent({ criterion: 'absorption-maximum' });
    expect(all).toMatchObject({
      kind: 'amount-exponent',
      version: 1,
      basis: 'oil-paints',
      pairs: OIL_PAINT_PAIRS.length,
    });
    expect(all.source).toContain('not yours');
    const some = oilPaintExponent({ criterion: 'absorption-maximum', without: ['eosin', 'minium'] });
    expect(some.pairs).toBe(10);
    expect(EXPONENT_BASES).toEqual(['ladder', 'oil-paints']);
  });

  test.each([
    ['invalid-option', 'options.without[0]', { without: ['titanium' as 'eosin'] }],
    ['too-few-points', 'options.without', { without: OIL_PAINT_PAIRS.slice(0, 9) }],
    ['invalid-option', 'options.criterion', { criterion: 'colour' as 'tristimulus-y' }],
  ])('is refused: %s at %s', (code, path, change) => {
    expect(() => oilPaintExponent({ criterion: 'absorption-maximum', ...change })).toThrow(
      expect.objectContaining({ code, path }),
    );
  });
});

test.each([
  ['out-of-range', 'percent', () => amountTerm(0, { ratio: 1, exponent: of(1, 1, 1) })],
  ['invalid-option', 'options.ratio', () => amountTerm(100, { ratio: 0, exponent: of(1, 1, 1) })],
  ['invalid-option', 'options.exponent.low', () => amountTerm(100, { ratio: 1, exponent: of(1, 0, 1) })],
])('%s at %s', (code, path, call) => {
  expect(call).toThrow(expect.objectContaining({ code, path }));
});
