import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { decimalsFor, formatCount, formatFixed, formatList, formatSigned, withUnit } from '../../src/core/format.js';

const SEED = 20_240_611;

describe('numbers', () => {
  test('carry the true minus sign, a decimal point and no grouping', () => {
    expect(formatFixed(-12345.678, 2)).toBe('\u221212345.68');
    expect(formatSigned(0.126, 2)).toBe('+0.13');
  });

  test('have no negative zero and no sign at zero', () => {
    expect(formatFixed(-0.001, 2)).toBe('0.00');
    expect(formatSigned(0.001, 2)).toBe('0.00');
    expect(formatSigned(-0, 1)).toBe('0.0');
  });

  test(`read back within half a unit of the last digit (seed ${SEED})`, () => {
    fc.assert(
      fc.property(
        fc.double({ min: -1e9, max: 1e9, noNaN: true }),
        fc.integer({ min: 0, max: 4 }),
        (value, decimals) => {
          const read = Number(formatFixed(value, decimals).replace('\u2212', '-'));
          expect(Math.abs(read - value)).toBeLessThanOrEqual(0.5 * 10 ** -decimals * (1 + 1e-9) + 1e-7);
        },
      ),
      { seed: SEED },
    );
  });

  test('a strength has one decimal, a colour difference two, anything else three figures', () => {
    expect(decimalsFor('%', 104.26)).toBe(1);
    expect(decimalsFor('ΔE00', 0.4)).toBe(2);
    expect(decimalsFor('mPa·s', 912)).toBe(0);
    expect(decimalsFor('kg/(m² h^0.5)', 0.0734)).toBe(4);
  });
});

describe('sentences', () => {
  test('list what may hold commas with semicolons', () => {
    expect(formatList(['A', 'B', 'C'])).toBe('A, B and C');
    expect(formatList(['Package P, in use', 'Package Q'])).toBe('Package P, in use; Package Q');
    expect(formatList([])).toBe('');
  });

  test('offer the last of several as a choice', () => {
    expect(formatList(['A', 'B', 'C'], 'or')).toBe('A, B or C');
  });

  test('count with the noun in its number', () => {
    expect([0, 1, 2].map((count) => formatCount(count, 'reading'))).toEqual(['0 readings', '1 reading', '2 readings']);
  });

  test('keep a figure and its unit on one line', () => {
    expect(withUnit('103.1', '%')).toBe('103.1\u00a0%');
    expect(withUnit('0.42', '')).toBe('0.42');
  });
});
