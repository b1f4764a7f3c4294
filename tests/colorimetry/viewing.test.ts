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

  test.each(constants.map(([name]) => name))('%s is what it is called, and can not be changed', (name) => {
    const viewing = Object.fromEntries(constants)[name];
    expect(`${viewing.illuminant}_${viewing.observer}`).toBe(name);
    expect(Object.isFrozen(viewing)).toBe(true);
  });
});

describe('describeViewing', () => {
  test('writes named illuminants and tables of your own alike', () => {
    const lamp = { name: 'booth lamp', start: 360, step: 10, values: Array(48).fill(1) };
    expect(describeViewing({ illuminant: 'FL11', observer: '2' })).toBe('FL11/2°');
    expect(describeViewing({ illuminant: lamp, observer: '10' })).toBe('booth lamp/10°');
  });
});

describe('an illuminant of your own', () => {
  const table = { name: 'booth lamp', start: 380, step: 5, values: Array(81).fill(1) };
  const white = (change: object) => whitePoint({ illuminant: { ...table, ...change }, observer: '2' });

  test.each([
    ['grid-invalid', 'viewing.illuminant', { start: 380, step: 5, count: 1 }, { values: [1] }],
    ['grid-invalid', 'viewing.illuminant', { start: 380, step: 0, count: 81 }, { step: 0 }],
    ['grid-invalid', 'viewing.illuminant', { start: 'NaN', step: 5, count: 81 }, { start: Number.NaN }],
    ['grid-invalid', 'viewing.illuminant', { start: 380.5, step: 5, count: 81 }, { start: 380.5, kind: 'lines' }],
    ['grid-invalid', 'viewing.illuminant', { start: 380, step: 2.5, count: 81 }, { step: 2.5, kind: 'lines' }],
    ['not-finite', 'viewing.illuminant at 385 nm', Number.NaN, { values: [1, Number.NaN, 1] }],
    ['out-of-range', 'viewing.illuminant at 390 nm', -1, { values: [1, 1, -1] }],
    ['out-of-range', 'viewing.illuminant', 0, { values: [0, 0, 0] }],
  ])('is refused as %s at %s: %j', (code, path, received, change) => {
    expect(() => white(change)).toThrow(expect.objectContaining({ code, path, received }));
  });

  test('may have steps and a start between whole nanometres where it is continuous', () => {
    const values = Array(801).fill(1);
    expect(white({ start: 380.25, step: 0.5, values }).X).toBeCloseTo(white({ start: 380, step: 1 / 2, values }).X, 1);
  });

  test('may be dark at some wavelengths, and two values are enough', () => {
    expect(white({ start: 500, step: 100, values: [0, 1] }).Y).toBe(100);
  });

  test('may reach beyond 360 to 830 nm: what lies there is left out', () => {
    const wide = white({ start: 300, step: 10, values: Array(61).fill(1) });
    const same = white({ start: 360, step: 10, values: Array(48).fill(1) });
    expect(wide).toEqual(same);
  });

  test('may end inside 360 to 830 nm: beyond its last value it has no power', () => {
    const short = white({ start: 500, step: 1, values: Array(101).fill(1) });
    const dark = white({
      start: 360,
      step: 1,
      values: Array.from({ length: 471 }, (_, i) => +(i >= 140 && i <= 240)),
    });
    expect(short).toEqual(dark);
    // Steps of 20 nm end at 600 nm like those of 1 nm; the sums differ by rounding only.
    expect(white({ start: 500, step: 20, values: Array(6).fill(1) }).X).toBeCloseTo(short.X, 10);
  });

  test('of lines that begins below 360 nm is summed from its first line inside', () => {
    const values = Array.from({ length: 107 }, (_, i) => 1 + (i % 3));
    const whole = white({ start: 298, step: 5, values, kind: 'lines' });
    // 298 + 13 * 5 = 363
    expect(whole).toEqual(white({ start: 363, step: 5, values: values.slice(13), kind: 'lines' }));
  });

  // CIE 015:2018, 7.1: equal energy has the white X = Y = Z = 100. The functions printed every 5 nm to four decimals keep that to 0.05.
  test.each(['continuous', 'lines'] as const)('of equal power (%s) has the equal-energy white', (kind) => {
    const { X, Y, Z } = white({ start: 360, step: 5, values: Array(95).fill(7), kind });
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
