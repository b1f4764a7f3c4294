import { TintladderError } from '../core/index.js';
import { readRepeated } from '../evidence/internal.js';
import { mean } from '../numeric/internal.js';
import { type Area, areaFrom, assertComparable, meanSpectrumOfUnits } from './area.js';
import type { AreaSurfaceReadings, Settings } from './rub-out-options.js';
import type { SpectralChange } from './spectral-change.js';
import type { FilmOverBlack } from './thickness-model.js';

/** Gloss units. Common practice, no source. */
const NOTABLE_GLOSS = 2;

/** What a glossmeter showed of the surface: a change of at least so many units, or none. */
export function surfaceShown(given: AreaSurfaceReadings | undefined): 'changed' | 'unchanged' | undefined {
  if (given === undefined) return undefined;
  const { unrubbed, rubbed, least = NOTABLE_GLOSS } = given;
  const meanOf = (readings: AreaSurfaceReadings['unrubbed'], path: string) => {
    const read = readRepeated<number>(readings, path).readings;
    for (const { reading, path: place } of read) {
      if (Number.isFinite(reading) && reading >= 0) continue;
      throw new TintladderError('out-of-range', { path: place, received: reading, expected: 'gloss units, 0 or more' });
    }
    return mean(read.map(({ reading }) => reading));
  };
  const path = 'options.surfaceReadings';
  const change = meanOf(rubbed, `${path}.rubbed`) - meanOf(unrubbed, `${path}.unrubbed`);
  return Math.abs(change) >= least ? 'changed' : 'unchanged';
}

/** The film over black at the wavelengths of the change. */
export function filmOverBlack(
  { overBlack, viewing }: Settings,
  unrubbed: Area,
  found: SpectralChange | undefined,
): FilmOverBlack | undefined {
  if (!overBlack) return undefined;
  const rowOf = (area: Area) => {
    if (!area.spectra || !unrubbed.spectra) {
      throw new TintladderError('kinds-mixed', {
        path: area.name,
        received: 'lab',
        expected: 'spectra, of the areas too',
      });
    }
    assertComparable([unrubbed], area);
    const { values } = meanSpectrumOfUnits(area, area.spectra);
    return Float64Array.from(found?.bands ?? [], (band) => values[band]);
  };
  const read = (given: Parameters<typeof areaFrom>[0], name: string) =>
    rowOf(areaFrom(given, `options.overBlack.${name}`, viewing));
  const film = {
    overBlack: read(overBlack.film, 'film'),
    white: read(overBlack.white, 'white'),
    black: read(overBlack.black, 'black'),
  };
  return found ? film : undefined;
}
