import { describe, expect, test } from 'vitest';
import {
  D65_2,
  daylightIlluminant,
  describeViewing,
  ILLUMINANTS,
  type IlluminantName,
  labFromXyz,
  whitePoint,
} from '../../src/colorimetry/index.js';
import { DAYLIGHT_COMPONENTS } from '../../src/colorimetry/tables/daylight-components.js';
import { FLUORESCENT_LAMPS } from '../../src/colorimetry/tables/fluorescent-lamps.js';
import { ILLUMINANT_C } from '../../src/colorimetry/tables/illuminant-c.js';
import { ILLUMINANT_D65 } from '../../src/colorimetry/tables/illuminant-d65.js';
import { OBSERVER_1931 } from '../../src/colorimetry/tables/observer-1931.js';
import { OBSERVER_1964 } from '../../src/colorimetry/tables/observer-1964.js';

const rows = (table: string) =>
  table
    .trim()
    .split('\n')
    .map((line) => line.split(' ').map(Number));

describe('tables', () => {
  test.each([
    ['daylight components', DAYLIGHT_COMPONENTS, 300, 830, 4],
    ['C', ILLUMINANT_C, 380, 780, 2],
    ['D65', ILLUMINANT_D65, 300, 830, 2],
    ['fluorescent lamps', FLUORESCENT_LAMPS, 380, 780, 13],
    ['observer 1931', OBSERVER_1931, 360, 830, 4],
    ['observer 1964', OBSERVER_1964, 360, 830, 4],
  ])('%s: every 5 nm from end to end, every cell a number', (_, table, first, last, width) => {
    const all = rows(table);
    expect(all).toHaveLength((last - first) / 5 + 1);
    all.forEach((row, i) => {
      expect(row).toHaveLength(width);
      expect(row[0]).toBe(first + 5 * i);
      for (const cell of row) expect(Number.isFinite(cell)).toBe(true);
    });
  });

  // CIE 015: the three functions of an observer have equal integrals: its equal-energy white is X = Y = Z.
  test.each([
    ['1931', OBSERVER_1931],
    ['1964', OBSERVER_1964],
  ])('the columns of observer %s have equal sums', (_, table) => {
    const [x, y, z] = [1, 2, 3].map((i) => rows(table).reduce((sum, row) => sum + row[i], 0));
    expect(x / y).toBeCloseTo(1, 3);
    expect(z / y).toBeCloseTo(1, 3);
  });

  test('the lamps are normalised as CIE prints them: V-weighted power alike within 1 %', () => {
    const luminosity = new Map(rows(OBSERVER_1931).map((row) => [row[0], row[2]]));
    const powers = Array.from({ length: 12 }, (_, lamp) =>
      rows(FLUORESCENT_LAMPS).reduce((sum, row) => sum + row[lamp + 1] * (luminosity.get(row[0]) ?? 0), 0),
    );
    for (const power of powers) expect(Math.abs(power / powers[0] - 1)).toBeLessThan(0.01);
  });
});

describe('ILLUMINANTS', () => {
  test.each(Object.keys(ILLUMINANTS) as IlluminantName[])('%s has a description, a source and a white', (name) => {
    const { description, source } = ILLUMINANTS[name];
    expect(description).toMatch(/lamp|daylight|equal energy/);
    expect(source).toMatch(/^CIE 015/);
    const { X, Y, Z } = whitePoint({ illuminant: name, observer: '10' });
    expect(Y).toBe(100);
    expect(X + Z).toBeGreaterThan(100);
  });
});

describe('daylightIlluminant', () => {
  test('of 6504 K has the white of D65 within the rounding of M1 and M2', () => {
    const { L, a, b } = labFromXyz(
      whitePoint({ illuminant: daylightIlluminant(6504), observer: '2' }),
      whitePoint(D65_2),
    );
    expect(Math.hypot(L - 100, a, b)).toBeLessThan(0.05);
  });

  // McCamy (1992), Color Res. Appl. 17: temperature from chromaticity, meant for 2000 to 8000 K or so.
  test.each([4000, 5000, 6000, 7000, 8000])('of %d K has that correlated colour temperature', (temperature) => {
    const { X, Y, Z } = whitePoint({ illuminant: daylightIlluminant(temperature), observer: '2' });
    const [x, y] = [X / (X + Y + Z), Y / (X + Y + Z)];
    const n = (x - 0.332) / (0.1858 - y);
    const mcCamy = 449 * n ** 3 + 3525 * n ** 2 + 6823.3 * n + 5520.33;
    expect(Math.abs(mcCamy / temperature - 1)).toBeLessThan(0.01);
  });

  test('joins its two branches at 7000 K', () => {
    const x = (temperature: number) => {
      const { X, Y, Z } = whitePoint({ illuminant: daylightIlluminant(temperature), observer: '2' });
      return X / (X + Y + Z);
    };
    expect(Math.abs(x(7000) - x(7001))).toBeLessThan(1e-4);
  });

  test.each([4000, 25000])('reaches to %d K', (temperature) => {
    // 100 at 560 nm, whatever the temperature: (560 - 300) / 5 = 52.
    expect(daylightIlluminant(temperature).values[52]).toBeCloseTo(100, 10);
  });

  test.each([3999, 25001, Number.NaN])('refuses %d K', (temperature) => {
    expect(() => daylightIlluminant(temperature)).toThrow(
      expect.objectContaining({ code: 'out-of-range', path: 'temperature' }),
    );
  });

  test('names itself in results and its source', () => {
    const illuminant = daylightIlluminant(5800);
    expect(describeViewing({ illuminant, observer: '2' })).toBe('daylight 5800 K/2°');
    expect(illuminant.source).toMatch(/CIE 015/);
  });
});
