import { describe, expect, test } from 'vitest';
import { createSpectrum, D65_10, type Spectrum } from '../../src/colorimetry/index.js';
import {
  type ChartDrawdown,
  contrastRatio,
  drawdownFilm,
  FILM_BAND_STATES,
  filmCoefficients,
  filmReflectance,
  hidingThickness,
  internalReflectance,
  isChartDrawdown,
  kOverS,
  measuredReflectance,
  opaqueReading,
  type Surface,
} from '../../src/strength/index.js';

const PAINT: Surface = { external: 0.04, internal: 0.6, specular: 'included' };
const viewing = D65_10;
const flat = (value: number, count = 31): Spectrum =>
  createSpectrum({ start: 400, step: 10, values: Array<number>(count).fill(value), scale: 'fraction' });
const spectrum = (values: readonly number[]): Spectrum =>
  createSpectrum({ start: 400, step: 10, values, scale: 'fraction' });

/** A film of K and S at each wavelength over a chart, as an instrument reads it on the surface of PAINT. */
function drawn(K: readonly number[], S: readonly number[], thickness = 1): Required<ChartDrawdown> {
  const over = (substrate: number) =>
    spectrum(
      K.map((absorption, i) =>
        measuredReflectance(filmReflectance({ absorption, scattering: S[i], thickness, substrate }), PAINT),
      ),
    );
  const bare = (substrate: number) => flat(measuredReflectance(substrate, PAINT), K.length);
  return { overBlack: over(0.01), overWhite: over(0.85), black: bare(0.01), white: bare(0.85), thickness };
}

// An invented blue: clear in the short waves, hiding in the long ones.
const K = Array.from({ length: 31 }, (_, i) => 0.002 + 4 / (1 + Math.exp((590 - 400 - 10 * i) / 12)));
const S = Array.from({ length: 31 }, (_, i) => 1.2 - 0.01 * i);
const BLUE = drawn(K, S);

describe('a film that hides at some wavelengths', () => {
  const film = drawdownFilm(BLUE, { viewing, surface: PAINT });

  test('has its R∞ and K/S at every wavelength', () => {
    film.bands.forEach(({ kOverS: ratio, opaqueReflectance }, i) => {
      const { value = Number.NaN, low = 1, high = 0 } = opaqueReflectance;
      expect(kOverS(value)).toBeCloseTo(ratio.value ?? Number.NaN, 12);
      expect([low < value, value < high]).toEqual([true, true]);
      // Where the film hides, R∞ is the mean of two readings that differ by at most twice the noise.
      expect(Math.abs((ratio.value ?? 0) / (K[i] / S[i]) - 1)).toBeLessThan(
        film.bands[i].state === 'hiding' ? 0.05 : 1e-9,
      );
    });
  });

  test('has K and S where the substrate shows through, and a lower bound where it does not', () => {
    const states = new Set(film.bands.map(({ state }) => state));
    expect([...states].sort()).toEqual(['hiding', 'translucent']);
    film.bands.forEach(({ state, absorption, scattering }, i) => {
      if (state === 'translucent') {
        expect(absorption.value).toBeCloseTo(K[i], 9);
        expect(scattering.value).toBeCloseTo(S[i], 9);
      } else {
        expect(Object.keys(scattering)).toEqual(['low']);
        expect(scattering.low).toBeGreaterThan(0);
        expect(scattering.low).toBeLessThan(S[i]);
        expect(absorption.low).toBeLessThan(K[i]);
      }
    });
  });

  test('names the wavelengths where it hides', () => {
    const hidden = film.bands.filter(({ state }) => state === 'hiding').map(({ wavelength }) => wavelength);
    expect(film.warnings).toEqual([
      expect.objectContaining({ code: 'film-hides', path: `${hidden[0]}-700 nm`, figures: { wavelengths: hidden } }),
    ]);
  });

  test('survives JSON', () => expect(JSON.parse(JSON.stringify(film))).toEqual(film));

  test('is a reading like that of an opaque layer', () => {
    const { spectrum: opaque, warnings } = opaqueReading(BLUE, { surface: PAINT });
    film.bands.forEach(({ opaqueReflectance: { value } }, i) => {
      expect(internalReflectance(opaque.values[i], PAINT)).toBeCloseTo(value ?? Number.NaN, 12);
    });
    expect(warnings).toEqual(film.warnings);
    expect(opaqueReading(opaque, { surface: PAINT })).toEqual({ spectrum: opaque, warnings: [] });
  });
});

test('a band that shows its substrate has the figures of the textbook function', () => {
  const readings = { overBlack: 0.3, overWhite: 0.42, black: 0.02, white: 0.8, thickness: 20 };
  const chart = { overBlack: flat(0.3), overWhite: flat(0.42), black: flat(0.02), white: flat(0.8), thickness: 20 };
  const [band] = drawdownFilm(chart, { viewing, surface: 'none' }).bands;
  const exact = filmCoefficients(readings);
  expect(band.absorption.value).toBeCloseTo(exact.absorption, 15);
  expect(band.scattering.value).toBeCloseTo(exact.scattering, 15);
  expect(band.opaqueReflectance.value).toBeCloseTo(exact.opaqueReflectance ?? Number.NaN, 15);
});

describe('the noise of a reading', () => {
  test('decides from which difference on a film hides', () => {
    const chart = { overBlack: flat(0.3), overWhite: flat(0.304), black: flat(0.02), white: flat(0.8) };
    const stateAt = (noise: number) => drawdownFilm(chart, { viewing, surface: 'none', noise }).bands[0].state;
    expect([0, 0.0019, 0.0021].map(stateAt)).toEqual(['translucent', 'translucent', 'hiding']);
  });

  test('leaves S open upwards where it could hide the film', () => {
    const chart = { overBlack: flat(0.3), overWhite: flat(0.3025), black: flat(0.02), white: flat(0.8) };
    const scattering = (noise: number) => drawdownFilm(chart, { viewing, surface: 'none', noise }).bands[0].scattering;
    // 2 √2 times 0.001 is more than the difference of 0.0025, 2 √2 times 0.0005 is less.
    expect(scattering(0.001)).not.toHaveProperty('high');
    expect(scattering(0.0005).high).toBeGreaterThan(scattering(0.0005).value ?? Infinity);
  });

  test('without noise every bound is the value', () => {
    const [band] = drawdownFilm(BLUE, { viewing, surface: PAINT, noise: 0 }).bands;
    for (const figure of [band.absorption, band.scattering, band.kOverS]) {
      expect(figure.low).toBeCloseTo(figure.value ?? Number.NaN, 12);
      expect(figure.high).toBeCloseTo(figure.value ?? Number.NaN, 12);
    }
  });
});

describe('a chart that was not read', () => {
  // Darker than the white field, as R∞ must be to lie between the readings.
  const DARK = drawn(
    K.map((k) => k + 0.3),
    S,
  );
  const { overBlack, overWhite } = DARK;
  const film = drawdownFilm({ overBlack, overWhite }, { viewing, surface: PAINT });

  test('leaves R∞ between the readings where it shows through', () => {
    const read = drawdownFilm(DARK, { viewing, surface: PAINT });
    film.bands.forEach((band, i) => {
      const known = read.bands[i].opaqueReflectance.value ?? Number.NaN;
      expect(band.state).toBe(read.bands[i].state === 'hiding' ? 'hiding' : 'substrate-unknown');
      expect(band.opaqueReflectance.low).toBeLessThan(known);
      expect(band.opaqueReflectance.high).toBeGreaterThan(known);
    });
    expect(film.substrates).toBe('unknown');
    expect(film).not.toHaveProperty('hiding');
    expect(film.warnings.map(({ code }) => code)).toEqual(['substrate-unknown', 'film-hides']);
  });

  test('is no reading of an opaque layer where it shows through, and one where it hides', () => {
    expect(() => opaqueReading({ overBlack, overWhite }, { surface: PAINT })).toThrow(
      expect.objectContaining({ code: 'no-solution', path: 'reading at 400 nm', received: 'substrate-unknown' }),
    );
    const hiding = { overBlack: flat(0.2), overWhite: flat(0.201) };
    expect(opaqueReading(hiding, { surface: PAINT }).spectrum.values[0]).toBeCloseTo(0.2005, 12);
  });
});

describe('contrast ratio, hiding thickness and spreading rate', () => {
  test('are those of the film', () => {
    const thin = drawn(
      K,
      S.map((s) => s / 20),
      20,
    );
    const film = drawdownFilm(thin, { viewing, surface: PAINT, ratio: 0.95, noise: 1e-6 });
    expect(film.contrastRatio).toBe(contrastRatio(thin.overBlack, thin.overWhite, { viewing }));
    const chart = { black: flat(0.01), white: flat(0.85) };
    const coefficients = { absorption: K, scattering: S.map((s) => s / 20) };
    const exact = hidingThickness({ ...coefficients, ...chart }, { viewing, surface: PAINT, ratio: 0.95 });
    expect((film.hiding?.thickness.value ?? 0) / exact.thickness).toBeCloseTo(1, 2);
    expect(film.hiding?.spreadingRate?.value).toBeCloseTo(1000 / (film.hiding?.thickness.value ?? 0), 9);
  });

  test('have bounds that hold the thickness of the film as it is', () => {
    const { hiding } = drawdownFilm(BLUE, { viewing, surface: PAINT });
    const chart = { black: flat(0.01), white: flat(0.85) };
    const { thickness } = hidingThickness({ absorption: K, scattering: S, ...chart }, { viewing, surface: PAINT });
    expect(hiding?.thickness.low).toBeLessThan(thickness);
    expect(hiding?.thickness.high).toBeGreaterThan(thickness);
  });

  test('have no value where every wavelength hides, only that the film is thick enough', () => {
    const chart = { overBlack: flat(0.2), overWhite: flat(0.2), black: flat(0.05), white: flat(0.8), thickness: 50 };
    const { hiding } = drawdownFilm(chart, { viewing, surface: PAINT });
    expect(hiding?.thickness).not.toHaveProperty('value');
    expect(hiding?.thickness.high).toBeLessThanOrEqual(50);
    expect(hiding?.spreadingRate?.low).toBeGreaterThanOrEqual(20);
    expect(hiding?.spreadingRate).not.toHaveProperty('value');
  });

  test('count dry films by their volume solids; without a thickness there is no spreading rate', () => {
    const rate = (volumeSolids?: number) =>
      drawdownFilm(BLUE, { viewing, surface: PAINT, volumeSolids }).hiding?.spreadingRate?.value ?? Number.NaN;
    expect(rate(0.4) / rate()).toBeCloseTo(0.4, 12);
    const { thickness: _, ...unknown } = BLUE;
    expect(drawdownFilm(unknown, { viewing, surface: PAINT }).hiding).not.toHaveProperty('spreadingRate');
  });
});

describe('readings that no film can give', () => {
  test('at or below k1 are named and refuse nothing else', () => {
    const below = {
      ...BLUE,
      overBlack: spectrum(Array.from(BLUE.overBlack.values, (value, i) => (i === 30 ? 0.03 : value))),
    };
    const film = drawdownFilm(below, { viewing, surface: PAINT });
    expect(film.bands[30]).toEqual({
      wavelength: 700,
      state: 'impossible',
      opaqueReflectance: {},
      kOverS: {},
      absorption: {},
      scattering: {},
    });
    expect(film.bands[0].state).toBe('translucent');
    expect(film.warnings[0]).toMatchObject({
      code: 'readings-impossible',
      path: '700 nm',
      figures: { wavelengths: [700] },
    });
    expect(() => opaqueReading(below, { surface: PAINT })).toThrow(
      expect.objectContaining({ code: 'no-solution', path: 'reading at 700 nm', received: 'impossible' }),
    );
  });

  test.each([
    ['above what the film can reflect', { overBlack: 0.1, overWhite: 0.95 }, 'impossible'],
    ['over a chart whose white is the darker field', { white: 0.01 }, 'impossible'],
    [
      'less absorption than none, within the accuracy of an instrument',
      { overBlack: 0.5, overWhite: 0.836 },
      'translucent',
    ],
  ])('%s', (_, readings, state) => {
    const values = { overBlack: 0.5, overWhite: 0.834, black: 0.02, white: 0.8, ...readings };
    const chart = {
      overBlack: flat(values.overBlack),
      overWhite: flat(values.overWhite),
      black: flat(values.black),
      white: flat(values.white),
    };
    const film = drawdownFilm(chart, { viewing, surface: 'none' });
    expect(film.bands[0].state).toBe(state);
    const code = state === 'impossible' ? 'readings-impossible' : 'negative-absorption';
    expect(film.warnings).toMatchObject([{ code, path: '400-700 nm' }]);
    if (state === 'translucent')
      expect(film.bands[0]).toMatchObject({ negative: 'absorption', absorption: { value: 0, low: 0 } });
  });

  test('a film that is lighter over black asks whether the readings are exchanged', () => {
    const chart = { ...BLUE, overBlack: BLUE.overWhite, overWhite: BLUE.overBlack };
    expect(drawdownFilm(chart, { viewing, surface: PAINT }).warnings[0]).toMatchObject({ code: 'readings-reversed' });
  });
});

test('a clear film has neither K nor S, and no R∞', () => {
  const chart = { overBlack: flat(0.02), overWhite: flat(0.8), black: flat(0.02), white: flat(0.8) };
  const { bands, hiding } = drawdownFilm(chart, { viewing, surface: 'none' });
  expect(bands[0]).toMatchObject({ absorption: { value: 0 }, scattering: { value: 0 }, kOverS: {} });
  expect(bands[0].opaqueReflectance).not.toHaveProperty('value');
  expect(hiding).toBeUndefined();
});

describe('refused', () => {
  test.each([
    ['grid-mismatch', 'drawdown.overWhite', { overWhite: flat(0.5, 30) }],
    ['grid-mismatch', 'drawdown.white', { white: flat(0.5, 30) }],
    ['invalid-option', 'drawdown.white', { white: undefined }],
    ['invalid-option', 'drawdown.black', { black: undefined }],
    ['out-of-range', 'drawdown.thickness', { thickness: 0 }],
  ])('%s at %s', (code, path, change) => {
    expect(() => drawdownFilm({ ...BLUE, ...change }, { viewing, surface: PAINT })).toThrow(
      expect.objectContaining({ code, path }),
    );
  });

  test.each([
    ['options.noise', { noise: -0.001 }],
    ['options.noise', { noise: Number.NaN }],
    ['options.ratio', { ratio: 1 }],
    ['options.volumeSolids', { volumeSolids: 40 }],
    ['options.surface', { surface: undefined as unknown as 'none' }],
    ['options.noize', { noize: 1 }],
  ])('%s', (path, change) => {
    expect(() => drawdownFilm(BLUE, { viewing, surface: PAINT, ...change })).toThrow(
      expect.objectContaining({ code: 'invalid-option', path }),
    );
  });
});

test('a drawdown is told from a spectrum', () => {
  expect([BLUE, BLUE.overBlack, null, 'film'].map(isChartDrawdown)).toEqual([true, false, false, false]);
  expect(FILM_BAND_STATES).toContain('hiding');
});
