import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { hueDifference } from '../../src/colorimetry/hue-difference.js';
import {
  colourDifference,
  D65_10,
  deltaE2000,
  labFromXyz,
  lchFromLab,
  whiteness,
  whitePoint,
  xyzFromLab,
} from '../../src/colorimetry/index.js';
import { hueAngle } from '../../src/colorimetry/lch.js';
import { interpolateSprague } from '../../src/numeric/sprague.js';

const SEED = 53;

describe('the sign of each part is that of sample minus reference (ISO/CIE 11664-4)', () => {
  const reference = { L: 50, a: 10, b: 0 };

  test.each([
    ['lighter', { L: 53, a: 10, b: 0 }, { dL: 3, da: 0, db: 0, dC: 0, dH: 0 }],
    ['darker', { L: 48, a: 10, b: 0 }, { dL: -2, da: 0, db: 0, dC: 0, dH: 0 }],
    ['redder and more chromatic', { L: 50, a: 14, b: 0 }, { dL: 0, da: 4, db: 0, dC: 4, dH: 0 }],
    // a hue of 90 degrees from one of 0: 2 √(10 · 10) sin 45°
    ['yellower', { L: 50, a: 0, b: 10 }, { dL: 0, da: -10, db: 10, dC: 0, dH: 14.142135623730951 }],
    ['bluer', { L: 50, a: 0, b: -10 }, { dL: 0, da: -10, db: -10, dC: 0, dH: -14.142135623730951 }],
  ])('%s', (_, sample, parts) => {
    const found = colourDifference(reference, sample);
    for (const [name, value] of Object.entries(parts)) expect(found[name as 'dL'], name).toBeCloseTo(value, 12);
  });
});

describe('the hue', () => {
  test('of a neutral is 0, whatever the signs of its zeros', () => {
    for (const [a, b] of [
      [0, 0],
      [-0, 0],
      [0, -0],
      [-0, -0],
    ])
      expect(Object.is(hueAngle(a, b), 0)).toBe(true);
  });

  test.each([
    [1, 0, 0],
    [1, 1, 45],
    [0, 1, 90],
    [-1, 0, 180],
    [0, -1, 270],
    [1, -1, 315],
  ])('of a* %d, b* %d is %d degrees', (a, b, h) => {
    expect(lchFromLab({ L: 50, a, b }).h).toBeCloseTo(h, 12);
  });

  test('just below 360 degrees never rounds to 360', () => {
    expect(hueAngle(1, -1e-20)).toBeLessThan(360);
  });

  test(`difference follows its definition, 2 √(C1 C2) sin(Δh / 2), in every quadrant (seed ${SEED})`, () => {
    const angle = fc.integer({ min: 0, max: 359 });
    fc.assert(
      fc.property(angle, angle, fc.double({ min: 1, max: 90, noNaN: true }), (h1, h2, C) => {
        const [first, second] = [h1, h2].map((h) => (h * Math.PI) / 180);
        const turn = ((h2 - h1 + 540) % 360) - 180;
        fc.pre(Math.abs(turn) < 180);
        const found = hueDifference(
          C * Math.cos(first),
          C * Math.sin(first),
          2 * Math.cos(second),
          2 * Math.sin(second),
        );
        expect(found).toBeCloseTo(2 * Math.sqrt(2 * C) * Math.sin((turn * Math.PI) / 360), 9);
      }),
      { seed: SEED, numRuns: 500 },
    );
  });

  // Both ways round are equally short; the package takes the sign of h2 - h1 with both angles in 0 to 360.
  test.each([
    [10, 0, -10, 0, 20],
    [-10, 0, 10, 0, -20],
    [0, 10, 0, -10, 20],
    [0, -10, 0, 10, -20],
    [6, 8, -6, -8, 20],
    [-6, -8, 6, 8, -20],
    [-6, 8, 6, -8, 20],
    [6, -8, -6, 8, -20],
  ])('difference from (%d, %d) to the opposite (%d, %d) is %d', (a1, b1, a2, b2, expected) => {
    expect(hueDifference(a1, b1, a2, b2)).toBeCloseTo(expected, 12);
  });

  test('difference from or to a neutral is 0', () => {
    expect(hueDifference(0, 0, 3, 4)).toBe(0);
    expect(hueDifference(3, 4, 0, 0)).toBe(0);
  });
});

describe('the limits of whiteness: W between 40 and 5 Y - 280, T between -4 and 2 (CIE 015:2018)', () => {
  const white = whitePoint(D65_10);
  const sum = white.X + white.Y + white.Z;
  /** A sample of this Y whose chromaticity lies so far from the white's. */
  const sample = (Y: number, dx: number, dy: number) => {
    const [x, y] = [white.X / sum + dx, white.Y / sum + dy];
    return { X: (x / y) * Y, Y, Z: ((1 - x - y) / y) * Y };
  };
  const within = (Y: number, dx: number, dy: number) => whiteness(sample(Y, dx, dy), D65_10).withinLimits;

  /** Shift of y that lowers W by so much where x goes along so that T stays 0. */
  const down = (points: number) => points / (800 * (650 / 900) + 1700);

  test.each([
    // W = Y + 800 (-dx) + 1700 (-dy), T = 900 (-dx) - 650 (-dy)
    ['W 90, T 0', 90, 0, 0, true],
    ['W 40.5 at Y 80', 80, (650 / 900) * down(39.5), down(39.5), true],
    ['W 39.5 at Y 80', 80, (650 / 900) * down(40.5), down(40.5), false],
    ['W 70.5 above 5 Y - 280 = 70', 70, -0.0001, -0.00025, false],
    ['T 1.9', 90, -1.9 / 900, 0, true],
    ['T 2.1', 90, -2.1 / 900, 0, false],
    ['T -3.9', 90, 3.9 / 900, 0, true],
    ['T -4.1', 90, 4.1 / 900, 0, false],
  ] as const)('%s', (_, Y, dx, dy, expected) => {
    expect(within(Y, dx, dy)).toBe(expected);
  });

  test('an illuminant of the caller is refused by its name', () => {
    const illuminant = { name: 'shop lamp', start: 380, step: 10, values: Array(41).fill(1) };
    expect(() => whiteness(white, { illuminant, observer: '10' })).toThrow(
      expect.objectContaining({ received: 'shop lamp' }),
    );
    expect(() => whiteness(white, { illuminant: 'FL2', observer: '10' })).toThrow(/"FL2"/);
  });
});

describe('Sprague interpolation', () => {
  test(`meets every value from both sides, through any values (seed ${SEED})`, () => {
    fc.assert(
      fc.property(fc.array(fc.double({ min: 0, max: 1, noNaN: true }), { minLength: 6, maxLength: 12 }), (list) => {
        const curve = interpolateSprague(Float64Array.from(list));
        list.forEach((value, i) => {
          expect(curve(i)).toBeCloseTo(value, 10);
          if (i > 0) expect(curve(i - 1e-9)).toBeCloseTo(value, 6);
        });
      }),
      { seed: SEED, numRuns: 100 },
    );
  });
});

describe('coordinates that are finite alone but not in their sum', () => {
  const large = 1e308;

  test('are no fault of a conversion', () => {
    const lab = labFromXyz({ X: 50, Y: 50, Z: 50 }, whitePoint(D65_10));
    expect(xyzFromLab(lab, whitePoint(D65_10)).Y).toBeCloseTo(50, 10);
    expect(() => labFromXyz({ X: large, Y: large, Z: large }, { X: large, Y: large, Z: large })).not.toThrow();
  });

  test.each(['X', 'Y', 'Z'] as const)('and one that is not is, wherever it stands: %s', (name) => {
    const xyz = { X: 50, Y: 50, Z: 50, [name]: Number.NEGATIVE_INFINITY };
    expect(() => labFromXyz(xyz, whitePoint(D65_10))).toThrow(expect.objectContaining({ code: 'not-finite' }));
  });

  test('infinities of opposite signs do not cancel out', () => {
    const lab = { L: Number.POSITIVE_INFINITY, a: Number.NEGATIVE_INFINITY, b: 0 };
    expect(() => xyzFromLab(lab, whitePoint(D65_10))).toThrow(expect.objectContaining({ code: 'not-finite' }));
  });
});

test('factors of 1 stated give the difference without them, to the bit', () => {
  const [reference, sample] = [
    { L: 50, a: 2.6772, b: -79.7751 },
    { L: 50, a: 0, b: -82.7485 },
  ];
  expect(deltaE2000(reference, sample, { kL: 1, kC: 1, kH: 1 })).toBe(deltaE2000(reference, sample));
});
