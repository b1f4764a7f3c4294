import { describe, expect, test } from 'vitest';
import * as colorimetry from '../../src/colorimetry/index.js';
import { describeViewing, type Viewing, whitePoint } from '../../src/colorimetry/index.js';

const constants = Object.entries(colorimetry).filter(([name]) => /^[A-Z]+\d*_\d+$/.test(name)) as [string, Viewing][];

describe('constants', () => {
  test('pair the usual illuminants with both observers', () => {
    const illuminants = ['A', 'C', 'D50', 'D55', 'D65', 'D75', 'FL11', 'FL2', 'FL7'];
    expect(constants.map(([name]) => name).sort()).toEqual(
      illuminants.flatMap((illuminant) => [`${illuminant}_2`, `${illuminant}_10`]).sort(),
    );
  });

  test.each(constants)('%s is what it is called, and can not be changed', (name, viewing) => {
    expect(`${viewing.illuminant}_${viewing.observer}`).toBe(name);
    expect(Object.isFrozen(viewing)).toBe(true);
  });
});

describe('describeViewing', () => {
  test('writes named illuminants and tables of your own alike', () => {
    const lamp = { name: 'booth lamp', start: 360, interval: 10, values: Array(48).fill(1) };
    expect(describeViewing({ illuminant: 'FL11', observer: '2' })).toBe('FL11/2°');
    expect(describeViewing({ illuminant: lamp, observer: '10' })).toBe('booth lamp/10°');
  });
});

describe('an illuminant of your own', () => {
  const table = { name: 'booth lamp', start: 380, interval: 5, values: Array(81).fill(1) };
  const white = (change: object) => whitePoint({ illuminant: { ...table, ...change }, observer: '2' });

  test.each([
    ['grid-invalid', 'viewing.illuminant', '1 values from 380 nm every 5 nm', { values: [1] }],
    ['grid-invalid', 'viewing.illuminant', '81 values from 380 nm every 0 nm', { interval: 0 }],
    ['grid-invalid', 'viewing.illuminant', '81 values from NaN nm every 5 nm', { start: Number.NaN }],
    ['grid-invalid', 'viewing.illuminant', '81 values from 380.5 nm every 5 nm', { start: 380.5, kind: 'lines' }],
    ['grid-invalid', 'viewing.illuminant', '81 values from 380 nm every 2.5 nm', { interval: 2.5, kind: 'lines' }],
    ['not-finite', 'viewing.illuminant at 385 nm', Number.NaN, { values: [1, Number.NaN, 1] }],
    ['out-of-range', 'viewing.illuminant at 390 nm', -1, { values: [1, 1, -1] }],
    ['out-of-range', 'viewing.illuminant', 0, { values: [0, 0, 0] }],
  ])('is refused as %s at %s: %s', (code, place, seen, change) => {
    expect(() => white(change)).toThrow(expect.objectContaining({ code, place, seen }));
  });

  test('may have steps and a start between whole nanometres where it is continuous', () => {
    const values = Array(801).fill(1);
    expect(white({ start: 380.25, interval: 0.5, values }).X).toBeCloseTo(
      white({ start: 380, interval: 1 / 2, values }).X,
      1,
    );
  });

  test('may be dark at some wavelengths, and two values are enough', () => {
    expect(white({ start: 500, interval: 100, values: [0, 1] }).Y).toBe(100);
  });

  test('may reach beyond 360 to 830 nm: what lies there is left out', () => {
    const wide = white({ start: 300, interval: 10, values: Array(61).fill(1) });
    const same = white({ start: 360, interval: 10, values: Array(48).fill(1) });
    expect(wide).toEqual(same);
  });

  // CIE 015:2018, 7.1: equal energy has the white X = Y = Z = 100. The functions printed every 5 nm to four decimals keep that to 0.05.
  test.each(['continuous', 'lines'] as const)('of equal power (%s) has the equal-energy white', (kind) => {
    const { X, Y, Z } = white({ start: 360, interval: 5, values: Array(95).fill(7), kind });
    expect(Y).toBe(100);
    expect(X).toBeCloseTo(100, 1);
    expect(Z).toBeCloseTo(100, 1);
  });

  test('of lines is summed at its own step, with nothing between the lines', () => {
    const values = Array(81).fill(0);
    values[(545 - 380) / 5] = 1;
    const { X, Y, Z } = white({ values, kind: 'lines' });
    // CIE 1931 at 545 nm: x̄ 0.3597, ȳ 0.9803, z̄ 0.0134 (ISO/CIE 11664-1).
    expect(X / Y).toBeCloseTo(0.3597 / 0.9803, 4);
    expect(Z / Y).toBeCloseTo(0.0134 / 0.9803, 4);
  });
});
