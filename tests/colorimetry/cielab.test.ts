import { converter } from 'culori';
import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { cubeRoot } from '../../src/colorimetry/cube-root.js';
import { A_2, D65_2, labFromLch, labFromXyz, lchFromLab, whitePoint, xyzFromLab } from '../../src/colorimetry/index.js';

const WHITE = whitePoint(A_2);
const share = fc.double({ min: 0, max: 2, noNaN: true });

describe('labFromXyz and xyzFromLab', () => {
  test('undo each other from black to twice the white (seed 40001)', () => {
    fc.assert(
      fc.property(share, share, share, (x, y, z) => {
        const xyz = { X: x * WHITE.X, Y: y * WHITE.Y, Z: z * WHITE.Z };
        const back = xyzFromLab(labFromXyz(xyz, WHITE), WHITE);
        for (const axis of ['X', 'Y', 'Z'] as const) expect(Math.abs(back[axis] - xyz[axis])).toBeLessThan(1e-12 * 200);
      }),
      { seed: 40001 },
    );
  });

  test('join the two branches without a step, at L* 8', () => {
    const Y = 100 * (6 / 29) ** 3;
    const L = (factor: number) => labFromXyz({ X: 0, Y: Y * factor, Z: 0 }, WHITE).L;
    expect(L(1)).toBeCloseTo(8, 12);
    expect(L(1 + 1e-12)).toBeCloseTo(L(1 - 1e-12), 9);
  });

  test('black and white', () => {
    expect(labFromXyz({ X: 0, Y: 0, Z: 0 }, WHITE)).toEqual({ L: 0, a: 0, b: 0 });
    expect(labFromXyz(WHITE, WHITE)).toEqual({ L: 100, a: 0, b: 0 });
  });

  test('equal culori, given its white', () => {
    const theirs = converter('lab65');
    // culori's D65, rounded as in CSS Color 4: x 0.3127, y 0.3290.
    const white = { X: 100 * (0.3127 / 0.329), Y: 100, Z: 100 * ((1 - 0.3127 - 0.329) / 0.329) };
    for (const [X, Y, Z] of [
      [20, 30, 10],
      [0.5, 0.4, 0.2],
      [70, 75, 90],
    ]) {
      const { l, a, b } = theirs({ mode: 'xyz65', x: X / 100, y: Y / 100, z: Z / 100 });
      const ours = labFromXyz({ X, Y, Z }, white);
      expect(ours.L).toBeCloseTo(l, 9);
      expect(ours.a).toBeCloseTo(a, 9);
      expect(ours.b).toBeCloseTo(b, 9);
    }
  });

  test.each([
    ['xyz.X', () => labFromXyz({ X: Number.NaN, Y: 1, Z: 1 }, WHITE)],
    ['xyz.X', () => labFromXyz({ L: 50, a: 0, b: 0 } as unknown as typeof WHITE, WHITE)],
    ['white.X', () => labFromXyz(WHITE, { ...WHITE, X: Number.NaN })],
    ['lab.L', () => labFromXyz(WHITE, { ...WHITE, Y: 0 })],
    ['lab.b', () => xyzFromLab({ L: 50, a: 0, b: Infinity }, WHITE)],
    ['white.Y', () => xyzFromLab({ L: 50, a: 0, b: 0 }, { ...WHITE, Y: Number.NaN })],
    ['lab.a', () => lchFromLab({ L: 50, a: Number.NaN, b: 0 })],
    ['lch.h', () => labFromLch({ L: 50, C: 1, h: Infinity })],
  ])('refuse a value that is not finite, at %s', (path, call) => {
    expect(call).toThrow(expect.objectContaining({ code: 'not-finite', path }));
  });
});

describe('lchFromLab and labFromLch', () => {
  const axis = fc.double({ min: -150, max: 150, noNaN: true });

  test('undo each other; 0 <= h < 360 (seed 40002)', () => {
    fc.assert(
      fc.property(axis, axis, (a, b) => {
        const lch = lchFromLab({ L: 50, a, b });
        expect(lch.h).toBeGreaterThanOrEqual(0);
        expect(lch.h).toBeLessThan(360);
        const back = labFromLch(lch);
        expect(back.a).toBeCloseTo(a, 10);
        expect(back.b).toBeCloseTo(b, 10);
      }),
      { seed: 40002 },
    );
  });

  test('a hue a hair below the a* axis does not round to 360', () => {
    expect(lchFromLab({ L: 50, a: 1, b: -1e-20 }).h).toBe(0);
  });

  test('a neutral has hue 0', () => expect(lchFromLab({ L: 50, a: 0, b: 0 })).toEqual({ L: 50, C: 0, h: 0 }));
});

describe('cubeRoot', () => {
  test('is within two units in the last place of Math.cbrt, on its own range and beyond', () => {
    for (let t = 1e-4; t < 4; t *= 1.0007) expect(Math.abs(cubeRoot(t) / Math.cbrt(t) - 1)).toBeLessThan(4.5e-16);
  });

  test('is exact at 1', () => expect(cubeRoot(1)).toBe(1));
});

test('the white of D65, 2 degrees, is neutral under itself only', () => {
  const white = whitePoint(D65_2);
  expect(labFromXyz(white, white)).toEqual({ L: 100, a: 0, b: 0 });
  expect(labFromXyz(white, WHITE).b).toBeLessThan(-50);
});
