import { describe, expect, test } from 'vitest';
import {
  assessChartRubOut,
  type ChartRubOutArea,
  type ChartRubOutOptions,
  D65_10,
  filmReflectance,
  type Spectrum,
} from '../../src/index.js';
import { blue, spectrumOf, WAVELENGTHS } from './films.js';

// Films by the package's own `filmReflectance`, another form of Kubelka's equations, which has tests against exact arithmetic.

interface Film {
  readonly colour?: number;
  readonly scattering?: number;
  readonly thickness?: number;
}

const flat = (R: number) => spectrumOf(WAVELENGTHS.map(() => R));
const over = (substrate: number, { colour = 1, scattering = 1, thickness = 3 }: Film) => {
  const row = WAVELENGTHS.map((nm) =>
    filmReflectance({ absorption: colour * (0.02 + blue(nm)), scattering, thickness, substrate }),
  );
  return { spot: [-1, 0.3, 0.7].map((z) => spectrumOf(row.map((R) => R * (1 + 0.0005 * z)))) };
};
const area = (film: Film = {}): ChartRubOutArea => ({
  overBlack: over(0.04, film),
  overWhite: over(0.8, film),
  thickness: 20 * (film.thickness ?? 3),
});
const options: ChartRubOutOptions = {
  viewing: D65_10,
  surface: 'none',
  black: flat(0.04),
  white: flat(0.8),
  thicknessUncertainty: 0.01,
};

describe('K and S apart', () => {
  test.each<[string, Film, 'freed' | 'not-freed', 'freed' | 'not-freed']>([
    ['both', { colour: 0.8, scattering: 0.8 }, 'freed', 'freed'],
    ['the coloured pigment', { colour: 0.8 }, 'freed', 'not-freed'],
    ['the white', { scattering: 0.8 }, 'not-freed', 'freed'],
    ['neither', {}, 'not-freed', 'not-freed'],
  ])('%s freed, in a film that rubbing thinned by 10 %', (_, before, coloured, white) => {
    const result = assessChartRubOut(area(before), area({ thickness: 2.7 }), options);
    expect(result).toMatchObject({ kind: 'chart-rub-out', version: 1, coloured, white });
    expect(result.flocculated).toBe(coloured === 'freed' || white === 'freed');
    expect(result.absorption?.value).toBeCloseTo(1 / (before.colour ?? 1), 2);
    expect(result.scattering?.value).toBeCloseTo(1 / (before.scattering ?? 1), 2);
    expect(result.films.unrubbed.contrastRatio).toBeLessThan(0.99);
  });

  test('the interval holds the uncertainty of both thicknesses: 1.96 √2 % at least', () => {
    const { scattering } = assessChartRubOut(area({ scattering: 0.8 }), area(), options);
    const half = Math.log((scattering?.interval?.high ?? 0) / (scattering?.value ?? 1));
    expect(half).toBeGreaterThan(1.96 * Math.SQRT2 * 0.01);
    expect(half).toBeLessThan(0.05);
  });

  test('a pigment that became less is said to be so', () => {
    expect(assessChartRubOut(area({ colour: 1.2 }), area(), options).coloured).toBe('less');
  });
});

describe('what is not known', () => {
  test('without thicknesses nothing is said of a pigment', () => {
    const { thickness: _, ...unknown } = area({ scattering: 0.8 });
    const result = assessChartRubOut(unknown, area(), options);
    expect(result).toMatchObject({ coloured: 'open', white: 'open', thicknessKnown: false });
    expect(Object.keys(result)).not.toContain('flocculated');
    expect(result.warnings.map(({ code }) => code)).toContain('thickness-missing');
  });

  test('one reading over each field has ratios and no interval', () => {
    const once = (film: Film): ChartRubOutArea => ({
      overBlack: over(0.04, film).spot[1],
      overWhite: over(0.8, film).spot[1],
      thickness: 60,
    });
    const result = assessChartRubOut(once({ scattering: 0.8 }), once({}), options);
    expect(result.scattering?.interval).toBeUndefined();
    expect(result.white).toBe('open');
    expect(result.warnings.map(({ code }) => code)).toContain('no-interval');
  });

  test('where every band hides it says so and carries no S', () => {
    const thick = { thickness: 60 };
    const result = assessChartRubOut(area(thick), area(thick), options);
    expect(result.scattering).toBeUndefined();
    expect(result.wavelengths).toEqual([]);
    expect(result.warnings.map(({ code }) => code)).toContain('film-hides');
    expect(result.next).toHaveLength(1);
  });
});

test('comes back from JSON as it was', () => {
  const result = assessChartRubOut(area({ scattering: 0.8 }), area(), options);
  expect(JSON.parse(JSON.stringify(result))).toEqual(result);
});

test.each<[string, string, () => unknown]>([
  [
    'repetition-unstated',
    'rubbed.overBlack',
    () => assessChartRubOut(area(), { ...area(), overBlack: [flat(0.5)] as unknown as Spectrum }, options),
  ],
  ['out-of-range', 'unrubbed.thickness', () => assessChartRubOut({ ...area(), thickness: 0 }, area(), options)],
  ['invalid-option', 'options.margin', () => assessChartRubOut(area(), area(), { ...options, margin: 2 })],
  [
    'invalid-option',
    'options.thicknessUncertainty',
    () => assessChartRubOut(area(), area(), { ...options, thicknessUncertainty: -1 }),
  ],
  ['wrong-type', 'unrubbed', () => assessChartRubOut(null as unknown as ChartRubOutArea, area(), options)],
  [
    'grid-mismatch',
    'options.white',
    () => assessChartRubOut(area(), area(), { ...options, white: { ...flat(0.8), start: 410 } as Spectrum }),
  ],
])('%s at %s', (code, path, act) => {
  expect(act).toThrow(expect.objectContaining({ code, path }));
});
