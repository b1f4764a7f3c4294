import { describe, expect, test } from 'vitest';
import { D65_10 } from '../../src/colorimetry/index.js';
import { drawdownFilm, opaqueReading, type Surface } from '../../src/strength/index.js';
import { OIL_PAINTS } from './oil-paints.js';

// Measured oil paints (source in oil-paints.txt). Counts are regression values of our own run, no published figures.

const SURFACE: Surface = { external: 0.02, internal: 0.6, specular: 'included' };
const NOISE = 0.001;
const films = [...OIL_PAINTS.values()].map(({ name, drawdown }) => ({
  name,
  drawdown,
  film: drawdownFilm(drawdown, { viewing: D65_10, surface: SURFACE, noise: NOISE }),
}));

test('63 paints, none refused, each with the reading of an opaque layer', () => {
  expect(films.length).toBe(63);
  for (const { name, drawdown } of films) {
    expect(opaqueReading(drawdown, { surface: SURFACE, noise: NOISE }).spectrum.values.length, name).toBe(31);
  }
});

describe('wherever the two readings differ by more than twice their noise, K and S are told', () => {
  test.each(films)('$name', ({ drawdown, film }) => {
    film.bands.forEach(({ state, kOverS, absorption, scattering }, i) => {
      const apart = drawdown.overWhite.values[i] - drawdown.overBlack.values[i] > 2 * NOISE;
      expect(state).toBe(apart ? 'translucent' : 'hiding');
      expect(kOverS.value).toBeGreaterThanOrEqual(0);
      for (const figure of [absorption, scattering]) {
        expect('value' in figure).toBe(apart);
        expect(figure.low).toBeGreaterThanOrEqual(0);
      }
    });
  });
});

test('regression: how many paints hide, and where', () => {
  const count = (of: (film: (typeof films)[number]['film']) => boolean) => films.filter(({ film }) => of(film)).length;
  const hiddenBands = films.flatMap(({ film }) => film.bands.filter(({ state }) => state === 'hiding')).length;
  expect({
    translucent: count(({ contrastRatio }) => contrastRatio < 0.98),
    hidesInPart: count(({ bands }) => new Set(bands.map(({ state }) => state)).size > 1),
    hidesThroughout: count(({ bands }) => bands.every(({ state }) => state === 'hiding')),
    hiddenBands,
    withHidingThickness: count(({ hiding }) => hiding?.thickness.value !== undefined),
    warned: count(({ warnings }) => warnings.some(({ code }) => code === 'film-hides')),
  }).toMatchInlineSnapshot(`
    {
      "hiddenBands": 1106,
      "hidesInPart": 41,
      "hidesThroughout": 13,
      "translucent": 31,
      "warned": 54,
      "withHidingThickness": 29,
    }
  `);
});

test('regression: with k1 0.04 readings of the deepest paints are impossible, and only those are named', () => {
  const impossible = films.flatMap(({ drawdown }) =>
    drawdownFilm(drawdown, { viewing: D65_10, surface: { ...SURFACE, external: 0.04 }, noise: NOISE }).bands.filter(
      ({ state }) => state === 'impossible',
    ),
  );
  expect(impossible.length).toMatchInlineSnapshot(`107`);
});
