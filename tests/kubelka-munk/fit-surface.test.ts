import { describe, expect, test } from 'vitest';
import { createSpectrum } from '../../src/colorimetry/index.js';
import { fitSurface, measuredReflectance, reflectanceFromKOverS, type Surface } from '../../src/strength/index.js';
import { seededNormal } from '../study/seeded-normal.js';

// An invented blue whose white, reductions and mass tone are read on a stated surface, with noise (seed 20260305).
function readings(surface: Surface, noise = 0.0001, amounts = [0.02, 0.1, 0.4, 1.5]) {
  const normal = seededNormal(20260305);
  const read = (ratio: (i: number) => number) =>
    createSpectrum({
      start: 400,
      step: 10,
      values: Array.from(
        { length: 31 },
        (_, i) => measuredReflectance(reflectanceFromKOverS(ratio(i)), surface) + noise * normal(),
      ),
      scale: 'fraction',
    });
  const k = (i: number) => 0.3 + 12 * Math.exp(-(((i - 20) / 5) ** 2));
  const s = (i: number) => 0.5 - 0.008 * i;
  return {
    white: read(() => 0.008),
    reductions: amounts.map((amount) => ({
      amount,
      spectrum: read((i) => (0.008 + amount * k(i)) / (1 + amount * s(i))),
    })),
    masstone: read((i) => k(i) / s(i)),
  };
}

describe('from a ladder', () => {
  test.each([
    [0.04, 0.6],
    [0.025, 0.45],
  ])(
    'k1 %d and k2 %d are found within their bounds, and that the specular reflection was read',
    (external, internal) => {
      const fit = fitSurface(readings({ external, internal, specular: 'included' }));
      expect(fit).toMatchObject({
        kind: 'surface-fit',
        version: 1,
        basis: 'ladder',
        specular: 'included',
        warnings: [],
      });
      for (const [figure, truth] of [
        [fit.external, external],
        [fit.internal, internal],
      ] as const) {
        expect(figure.low).toBeLessThan(truth);
        expect(figure.high).toBeGreaterThan(truth);
      }
      expect((fit.external.high ?? 1) - (fit.external.low ?? 0)).toBeLessThan(0.011);
      expect(fit.residualReflectance).toBeLessThan(0.001);
    },
  );

  test('without a mass tone k1 has no lower bound: k and s of the colorant can stand in for it; k2 is told still', () => {
    const { masstone: _, ...ladder } = readings({ external: 0.04, internal: 0.6, specular: 'included' });
    const fit = fitSurface(ladder);
    expect(fit.external).not.toHaveProperty('low');
    expect(fit.internal.low).toBeLessThan(0.6);
    expect(fit.internal.high).toBeGreaterThan(0.6);
    expect(fit.warnings).toMatchObject([{ code: 'surface-not-told', figures: { open: ['k1'] } }]);
  });

  test('readings without the specular reflection are told, and k2 with them', () => {
    const fit = fitSurface(readings({ external: 0.04, internal: 0.6, specular: 'excluded' }));
    expect(fit.specular === 'included' ? fit.surface.external : 0).toBeLessThan(0.002);
    expect(fit.internal.low).toBeLessThan(0.61);
    expect(fit.internal.high).toBeGreaterThan(0.59);
  });

  test('at 45° against the normal only k2 is asked for', () => {
    const surface: Surface = { external: 0.04, internal: 0.55, specular: 'excluded', geometry: '45°:0°' };
    const fit = fitSurface(readings(surface), { geometry: '45°:0°' });
    expect(fit).toMatchObject({ specular: 'excluded', external: {}, surface: { geometry: '45°:0°', external: 0.04 } });
    expect(fit.internal.low).toBeLessThan(0.55);
    expect(fit.internal.high).toBeGreaterThan(0.55);
  });
});

describe('from the deepest mass tone alone', () => {
  const { masstone } = readings({ external: 0.04, internal: 0.6, specular: 'included' }, 0);

  test('k1 is at most the lowest reading, and k2 is not told', () => {
    const lowest = Math.min(...masstone.values);
    const fit = fitSurface({ masstone });
    expect(fit.external).toEqual({ value: lowest - 0.002, low: lowest - 0.01, high: lowest });
    expect(fit).toMatchObject({ basis: 'masstone', internal: {}, specular: 'not-told' });
    expect(fit.warnings).toMatchObject([{ code: 'surface-not-told' }]);
    expect(fit.surface.internal).toBe(0.6);
  });

  test('at 45° nothing is told of k1 either', () => {
    expect(fitSurface({ masstone }, { geometry: '0°:45°' })).toMatchObject({ external: {}, specular: 'excluded' });
  });
});

test.each([
  ['too-few-points', 'readings', () => fitSurface({})],
  [
    'too-few-points',
    'readings',
    () =>
      fitSurface({
        ...readings({ external: 0.04, internal: 0.6, specular: 'included' }, 0, [0.1, 0.2]),
        masstone: undefined,
      }),
  ],
  [
    'out-of-range',
    'readings.reductions[0].amount',
    () => fitSurface(readings({ external: 0.04, internal: 0.6, specular: 'included' }, 0, [0, 0.2])),
  ],
  ['invalid-option', 'options.geometry', () => fitSurface({}, { geometry: '60°' as '45°:0°' })],
  [
    'no-solution',
    'readings',
    () => {
      const over = createSpectrum({ start: 400, step: 10, values: [1.4, 1.5], scale: 'fraction' });
      return fitSurface({ white: over, reductions: [1, 2, 3].map((amount) => ({ amount, spectrum: over })) });
    },
  ],
])('%s at %s', (code, path, call) => {
  expect(call).toThrow(expect.objectContaining({ code, path }));
});
