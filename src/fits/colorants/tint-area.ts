import type { Spectrum } from '../../colorimetry/index.js';
import { asSpectrum, assertSameGrid } from '../../colorimetry/internal.js';
import { TintladderError, type Warning } from '../../core/index.js';
import type { Repeated } from '../../evidence/index.js';
import { type ReadRepeated, readRepeated, topUnitMeans } from '../../evidence/internal.js';
import { mean } from '../../numeric/internal.js';
import { spectralKOverS } from './spectral-k-over-s.js';

/** The readings of one area of a tint, or of its white, as they were repeated. */
export interface TintArea {
  /** As messages call it: `unrubbed`, `rubbed`. */
  readonly name: string;
  readonly read: ReadRepeated<Spectrum>;
  /** The first reading, whose grid all others share. */
  readonly first: Spectrum;
  /** Means over the units of the outermost level that was repeated. */
  readonly meanReflectance: Float64Array;
  readonly meanRatio: Float64Array;
  /** A figure of each such unit, from the K/S of its readings. */
  readonly figuresOf: (figureOf: (ratio: Float64Array) => number) => readonly number[];
  /** Whether several readings are all the same. */
  readonly identical: boolean;
}

/**
 * An area from its readings.
 *
 * @param grid - a spectrum on whose grid all readings must be; the first of them where left out
 * @throws TintladderError `repetition-unstated` for a bare list, and whatever else `readRepeated` refuses; `grid-mismatch`, `zero-reflectance`,
 * `reflectance-out-of-range`, what `createSpectrum` throws
 */
export function tintArea(given: Repeated<Spectrum>, name: string, grid?: Spectrum): TintArea {
  const read = readRepeated(given, name);
  const spectra = read.readings.map(({ reading, path }) => asSpectrum(reading, path));
  const [first] = spectra;
  spectra.forEach((spectrum, i) => {
    assertSameGrid(grid ?? first, spectrum, read.readings[i].path);
  });
  const ratios = spectra.map((spectrum, i) => spectralKOverS(spectrum, read.readings[i].path));
  const meanOf = (rows: readonly Float64Array[]) =>
    first.values.map((_, band) =>
      mean(
        topUnitMeans(
          read,
          rows.map((row) => row[band]),
        ),
      ),
    );
  return {
    name,
    read,
    first,
    meanReflectance: meanOf(spectra.map(({ values }) => values)),
    meanRatio: meanOf(ratios),
    figuresOf: (figureOf) => topUnitMeans(read, ratios.map(figureOf)),
    identical: ratios.length > 1 && ratios.every((row) => row.every((value, band) => value === ratios[0][band])),
  };
}

/**
 * Whether two areas pair by position: drawdowns, and whatever holds drawdowns, were each rubbed out; spots of one film pair with nothing.
 *
 * @throws TintladderError `level-misplaced` where different things were repeated, `wrong-length` where not equally often
 */
export function arePaired(unrubbed: TintArea, rubbed: TintArea): boolean {
  const [before, after] = [filmsOf(unrubbed), filmsOf(rubbed)];
  if (before.count !== after.count) {
    throw new TintladderError('wrong-length', {
      path: rubbed.name,
      received: after.count,
      expected: `as many drawdowns as ${unrubbed.name} has, ${before.count}`,
      hint: 'The areas of one drawdown pair by position.',
    });
  }
  if (before.level !== after.level) {
    throw new TintladderError('level-misplaced', {
      path: rubbed.name,
      received: after.level,
      expected: `what was repeated of ${unrubbed.name}, ${before.level}`,
    });
  }
  return before.count > 1;
}

function filmsOf({ read: { levels, counts, top } }: TintArea) {
  if (top < 0 || levels[top] === 'spot') return { level: undefined, count: 1 };
  return { level: levels[top], count: counts[top] };
}

/** What the readings leave to be said of their scatter. */
export function noteScatter(areas: readonly TintArea[]): Warning[] {
  const duplicates = areas
    .filter(({ identical }) => identical)
    .map(({ name, read }): Warning => {
      const message = `All readings of the ${name} area are the same: a duplicate of a reading is no replicate and shows no scatter.`;
      return { code: 'replicates-identical', message, path: name, figures: { readings: read.readings.length } };
    });
  const once = areas.filter(({ read }) => read.top < 0);
  if (once.length === areas.length) {
    return [{ code: 'no-interval', message: 'Each area was read once, so that the changes have no interval.' }];
  }
  const borrowed = once.map(({ name }): Warning => {
    const message = `The ${name} area was read once; its scatter is taken to be that of the other area.`;
    return { code: 'scatter-borrowed', message, path: name };
  });
  return [...duplicates, ...borrowed];
}
