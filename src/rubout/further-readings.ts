import { TintladderError } from '../core/index.js';
import { readRepeated } from '../evidence/internal.js';
import { mean, squaresAroundMean, studentQuantile } from '../numeric/internal.js';
import { type Area, areaFrom, assertComparable, meanSpectrumOfUnits } from './area.js';
import type { GlossReadings, Settings } from './rub-out-options.js';
import type { SpectralChange } from './spectral-change.js';
import type { FilmOverBlack } from './thickness-model.js';

/** Gloss units. Common practice, no source. */
const NOTABLE_GLOSS = 2;

/** What further readings showed of the surface: gloss where it was measured, otherwise both specular modes. */
export function surfaceShown(settings: Settings, areas: readonly [Area, Area]): 'changed' | 'unchanged' | undefined {
  const { gloss } = settings;
  return gloss ? shownByGloss(gloss) : shownBySpecular(settings, areas);
}

/** A change of at least so many units, or none. */
function shownByGloss({ unrubbed, rubbed, least = NOTABLE_GLOSS }: GlossReadings): 'changed' | 'unchanged' {
  const meanOf = (readings: GlossReadings['unrubbed'], path: string) => {
    const read = readRepeated<number>(readings, path).readings;
    for (const { reading, path: place } of read) {
      if (Number.isFinite(reading) && reading >= 0) continue;
      throw new TintladderError('out-of-range', { path: place, received: reading, expected: 'gloss units, 0 or more' });
    }
    return mean(read.map(({ reading }) => reading));
  };
  const change = meanOf(rubbed, 'options.gloss.rubbed') - meanOf(unrubbed, 'options.gloss.unrubbed');
  return Math.abs(change) >= least ? 'changed' : 'unchanged';
}

/** Reflectance: a change of the specular part below it is none that would be seen. The package's own. */
const NOTABLE_SPECULAR = 0.001;

/**
 * What the two specular modes differ by is the surface: its change from one area to the other, over all wavelengths, with its 95 % interval from
 * the spots. Undefined where the interval leaves it open.
 */
function shownBySpecular(
  { otherSpecular, viewing }: Settings,
  areas: readonly [Area, Area],
): 'changed' | 'unchanged' | undefined {
  if (!otherSpecular) return undefined;
  const others = (['unrubbed', 'rubbed'] as const).map((name) => {
    const area = areaFrom(otherSpecular[name], `options.otherSpecular.${name}`, viewing);
    assertComparable([areas[0]], area);
    return area;
  });
  const parts = [...areas, ...others].map(({ spectra, name }) => {
    if (!spectra) throw new TintladderError('kinds-mixed', { path: name, received: 'lab', expected: 'spectra' });
    const levels = spectra.map(({ values }) => mean(Array.from(values)));
    return { level: mean(levels), squares: squaresAroundMean(levels), count: levels.length };
  });
  const [before, after, otherBefore, otherAfter] = parts.map(({ level }) => level);
  const change = Math.abs(otherAfter - after - (otherBefore - before));
  const degrees = parts.reduce((sum, { count }) => sum + count - 1, 0);
  if (degrees === 0) return undefined;
  const variance = parts.reduce((sum, { squares }) => sum + squares, 0) / degrees;
  const share = parts.reduce((sum, { count }) => sum + 1 / count, 0);
  const half = studentQuantile(0.975, degrees) * Math.sqrt(variance * share);
  if (change - half > 0 && change >= NOTABLE_SPECULAR) return 'changed';
  return change + half < 2 * NOTABLE_SPECULAR ? 'unchanged' : undefined;
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
