import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { createSpectrum } from '../../src/colorimetry/index.js';
import {
  externalReflection,
  internalReflectance,
  measuredReflectance,
  type Surface,
} from '../../src/strength/index.js';
import { absoluteError, exact } from '../strength/exact.js';

const SEED = 20261;
const fraction = (max: number) => fc.double({ min: 0, max, noNaN: true });
const surfaces: fc.Arbitrary<Surface> = fc.record({
  external: fraction(0.2),
  internal: fraction(0.99),
  specular: fc.constantFrom('included' as const, 'excluded' as const),
});
const PAINT: Surface = { external: 0.04, internal: 0.6, specular: 'included' };

describe(`against arithmetic of 100 digits (seed ${SEED})`, () => {
  test('inward, from just above k1 to 1', () => {
    fc.assert(
      fc.property(surfaces, fraction(1), fraction(14), (surface, share, digits) => {
        const floor = surface.specular === 'included' ? surface.external : 0;
        const measured = floor + (1 - floor) * share * 10 ** -digits;
        fc.pre(measured > floor);
        const [Rm, k1, k2] = [measured, surface.external, surface.internal].map(exact);
        const truth =
          surface.specular === 'included'
            ? Rm.sub(k1).div(exact(1).sub(k1).sub(k2).add(k2.mul(Rm)))
            : Rm.div(exact(1).sub(k1).mul(exact(1).sub(k2)).add(k2.mul(Rm)));
        expect(absoluteError(internalReflectance(measured, surface), truth)).toBeLessThanOrEqual(1e-14);
      }),
      { seed: SEED, numRuns: 300 },
    );
  });

  test('outward, from 0 to 1', () => {
    fc.assert(
      fc.property(surfaces, fraction(1), (surface, internal) => {
        const [Ri, k1, k2] = [internal, surface.external, surface.internal].map(exact);
        const out = exact(1)
          .sub(k1)
          .mul(exact(1).sub(k2))
          .mul(Ri)
          .div(exact(1).sub(k2.mul(Ri)));
        const truth = surface.specular === 'included' ? k1.add(out) : out;
        expect(absoluteError(measuredReflectance(internal, surface), truth)).toBeLessThanOrEqual(1e-14);
      }),
      { seed: SEED, numRuns: 300 },
    );
  });
});

test(`round trip (seed ${SEED})`, () => {
  fc.assert(
    fc.property(surfaces, fc.double({ min: 1e-6, max: 1, noNaN: true }), (surface, internal) => {
      const back = internalReflectance(measuredReflectance(internal, surface), surface);
      // k1 added and taken away again costs the digits below one step of a double at k1, times the slope 1 / (1 - k2).
      expect(Math.abs(back - internal)).toBeLessThanOrEqual(4e-16 / (1 - surface.internal));
    }),
    { seed: SEED, numRuns: 500 },
  );
});

test('the two specular modes differ by k1', () => {
  const measured = measuredReflectance(0.3, PAINT) - measuredReflectance(0.3, { ...PAINT, specular: 'excluded' });
  expect(measured).toBeCloseTo(0.04, 15);
});

// Fresnel's equations as optics textbooks print them, by angles: Rs = (sin(i - t) / sin(i + t))², Rp = (tan(i - t) / tan(i + t))².
describe('45° against the normal: the factor is T(45°) T(0°) / n²', () => {
  const passed = (index: number) => {
    const inside = Math.asin(Math.SQRT1_2 / index);
    const [minus, plus] = [Math.PI / 4 - inside, Math.PI / 4 + inside];
    const reflected = ((Math.sin(minus) / Math.sin(plus)) ** 2 + (Math.tan(minus) / Math.tan(plus)) ** 2) / 2;
    return ((1 - reflected) * (1 - externalReflection(index))) / index ** 2;
  };

  test('0.405 for n = 1.5, where a diffuse way has (1 - k1)(1 - k2) = 0.384', () => {
    expect(passed(1.5)).toBeCloseTo(0.405, 3);
  });

  test.each([1.2, 1.5, 1.8])('both ways round, n = %d', (index) => {
    for (const geometry of ['45°:0°', '0°:45°'] as const) {
      const surface: Surface = { external: externalReflection(index), internal: 0.6, specular: 'excluded', geometry };
      const measured = (passed(index) * 0.3) / (1 - 0.6 * 0.3);
      expect(measuredReflectance(0.3, surface)).toBeCloseTo(measured, 14);
      expect(internalReflectance(measured, surface)).toBeCloseTo(0.3, 14);
    }
  });

  test('a sphere either way round has the diffuse factor, which is also that of a surface without geometry', () => {
    const bare = measuredReflectance(0.3, PAINT);
    for (const geometry of ['d:8°', '8°:d'] as const)
      expect(measuredReflectance(0.3, { ...PAINT, geometry })).toBe(bare);
  });
});

test("'none' leaves readings as they are, 0 too", () => {
  for (const value of [0, 0.37]) {
    expect(internalReflectance(value, 'none')).toBe(value);
    expect(measuredReflectance(value, 'none')).toBe(value);
  }
});

test('without surface reflection nothing changes, and a perfect diffuser stays one', () => {
  expect(internalReflectance(0.37, { external: 0, internal: 0, specular: 'included' })).toBe(0.37);
  expect(internalReflectance(1, PAINT)).toBeCloseTo(1, 15);
});

test('a spectrum is corrected wavelength by wavelength', () => {
  const spectrum = createSpectrum({ start: 400, step: 10, values: [0.3, 0.5], scale: 'fraction' });
  const internal = internalReflectance(spectrum, PAINT);
  expect(Array.from(internal.values)).toEqual([0.3, 0.5].map((value) => internalReflectance(value, PAINT)));
  expect(internal.start).toBe(400);
  expect(measuredReflectance(internal, PAINT).values[1]).toBeCloseTo(0.5, 15);
});

describe('refused', () => {
  test('a reading at or below k1 with specular included, with its wavelength', () => {
    const spectrum = createSpectrum({ start: 400, step: 10, values: [0.3, 0.04, 0.03], scale: 'fraction' });
    expect(() => internalReflectance(spectrum, PAINT)).toThrow(
      expect.objectContaining({
        code: 'no-internal-reflectance',
        path: 'measured reflectance at 410 nm',
        received: 0.04,
      }),
    );
    expect(() => internalReflectance(0.01, PAINT)).toThrow(
      expect.objectContaining({ code: 'no-internal-reflectance', path: 'measured reflectance' }),
    );
  });

  test.each([
    [-0.1, 'reflectance-out-of-range'],
    [Number.NaN, 'not-finite'],
  ])('a reflectance of %d', (value, code) => {
    expect(() => internalReflectance(value, PAINT)).toThrow(
      expect.objectContaining({ code, path: 'measured reflectance' }),
    );
    expect(() => measuredReflectance(value, PAINT)).toThrow(
      expect.objectContaining({ code, path: 'internal reflectance' }),
    );
  });

  test('an internal reflectance at or above 1/k2', () => {
    const surface: Surface = { external: 0.04, internal: 0.5, specular: 'included' };
    for (const value of [2, 2.5]) {
      expect(() => measuredReflectance(value, surface)).toThrow(
        expect.objectContaining({ code: 'reflectance-out-of-range', path: 'internal reflectance' }),
      );
    }
  });

  test.each([
    [{ ...PAINT, external: 1 }, 'surface.external'],
    [{ ...PAINT, external: -0.01 }, 'surface.external'],
    [{ ...PAINT, internal: 1 }, 'surface.internal'],
    [{ ...PAINT, internal: Number.NaN }, 'surface.internal'],
    [{ ...PAINT, external: '0.04' as unknown as number }, 'surface.external'],
    [{ ...PAINT, specular: 'SCI' as 'included' }, 'surface.specular'],
    [{ ...PAINT, geometry: '45/0' as '45°:0°' }, 'surface.geometry'],
    [{ ...PAINT, geometry: '45°:0°' as const }, 'surface.specular'],
    [undefined as unknown as Surface, 'surface'],
    ['None' as 'none', 'surface'],
  ])('the surface %o', (surface, path) => {
    expect(() => internalReflectance(0.5, surface)).toThrow(expect.objectContaining({ code: 'invalid-option', path }));
    expect(() => measuredReflectance(0.5, surface)).toThrow(expect.objectContaining({ code: 'invalid-option', path }));
  });

  test.each([
    [0.9, 'out-of-range'],
    [Number.NaN, 'not-finite'],
  ])('a refractive index of %d', (index, code) => {
    expect(() => externalReflection(index)).toThrow(expect.objectContaining({ code, path: 'refractiveIndex' }));
  });
});

test('a film read without its gloss may reflect nothing', () => {
  expect(internalReflectance(0, { external: 0.04, internal: 0.6, specular: 'excluded' })).toBe(0);
});

test('a reflectance that no surface lets through is told its bound, 1/k2', () => {
  expect(() => measuredReflectance(3, { external: 0.04, internal: 0.5, specular: 'included' })).toThrow(
    expect.objectContaining({ expected: expect.stringContaining('1/k2, 2') }),
  );
});
