import {
  type Lab,
  labFromSpectrum,
  meanSpectrum,
  type Reading,
  type Spectrum,
  type Viewing,
} from '../colorimetry/index.js';
import { assertSameGrid, type LabOfReading, labOfReading } from '../colorimetry/internal.js';
import { TintladderError, type Warning } from '../core/index.js';
import { assertFinite, assertObject } from '../core/internal.js';
import type { Repeated, Repetition } from '../evidence/index.js';
import { describeRepetition, type ReadRepeated, readRepeated, type UnitTree } from '../evidence/internal.js';
import { meanLab } from './scatter.js';

/** A colour that was read: a spectrum, Lab values, or either with the conditions it was read under. */
export type RubOutReading = Spectrum | Lab | Reading;

/** The readings of one area: its spots as Lab and, where they were read as spectra, as spectra. */
export interface Area {
  readonly name: string;
  readonly labs: readonly Lab[];
  readonly spectra?: readonly Spectrum[];
  /** Where each reading was given: `unrubbed.spot[1]`. */
  readonly paths: readonly string[];
  /** The readings of each unit that was made anew, by their places: of each drawdown; all of them where only spots were repeated. */
  readonly units: readonly (readonly number[])[];
  readonly repetition: Repetition;
  /** As they were given. */
  readonly readings: readonly RubOutReading[];
  /** What was assumed for them. */
  readonly warnings: readonly Warning[];
}

/**
 * The readings of one area.
 *
 * @param path - what messages call the area: `unrubbed`
 * @throws TintladderError `repetition-unstated`, `level-misplaced`, `empty`, `kinds-mixed`, `not-finite`, what `labFromSpectrum` throws
 */
export function areaFrom(given: Repeated<RubOutReading>, path: string, viewing: Viewing): Area {
  const read = readRepeated<RubOutReading>(given, path);
  const paths = read.readings.map((placed) => placed.path);
  const readings = read.readings.map(({ reading }) => reading);
  readings.forEach((reading, i) => {
    assertObject(reading, paths[i], 'a spectrum, Lab values or a reading');
  });
  const shape = { name: path, paths, readings, units: unitsOf(read), repetition: describeRepetition(read) };
  const spectra = readings.flatMap((reading) => spectrumOf(reading) ?? []);
  if (spectra.length === 0) {
    const found = readings.map((reading, i) => labOf(reading, paths[i], viewing));
    return { ...shape, labs: found.map(({ lab }) => lab), warnings: found.flatMap(({ warnings }) => warnings) };
  }
  if (spectra.length < readings.length) throw kindsMixed(path, ['spectrum', 'lab']);
  spectra.forEach((spectrum, i) => {
    assertSameGrid(spectra[0], spectrum, paths[i]);
  });
  const labs = spectra.map((spectrum) => labFromSpectrum(spectrum, viewing));
  return { ...shape, labs, spectra, warnings: [] };
}

/** Drawdowns pair by position; what lies above a drawdown pairs in the same way. Spots of one film pair with nothing. */
function unitsOf(read: ReadRepeated<RubOutReading>): number[][] {
  const { levels, top, tree, readings } = read;
  if (top < 0 || levels[top] === 'spot') return [readings.map((_, i) => i)];
  const place = new Map(readings.map((reading, i) => [reading, i]));
  const nodesAt = (node: UnitTree<RubOutReading>, depth: number): UnitTree<RubOutReading>[] =>
    depth === 0 || !('units' in node) ? [node] : node.units.flatMap((unit) => nodesAt(unit, depth - 1));
  const leaves = (node: UnitTree<RubOutReading>): number[] =>
    'units' in node ? node.units.flatMap(leaves) : [place.get(node) ?? 0];
  return nodesAt(tree, top + 1).map(leaves);
}

/** Mean over the units of an area of the means of their readings, so that every drawdown counts the same. */
export function meanOfUnits(area: Area): Lab {
  return meanLab(area.units.map((unit) => meanLab(unit.map((i) => area.labs[i]))));
}

/** The same of the spectra. */
export function meanSpectrumOfUnits({ units }: Area, spectra: readonly Spectrum[]): Spectrum {
  return meanSpectrum(units.map((unit) => meanSpectrum(unit.map((i) => spectra[i]))));
}

/**
 * Refuses areas that can't be compared, with each other and with a further one such as the white.
 *
 * @throws TintladderError `kinds-mixed` for spectra on one side and Lab on the other, `wrong-length` for drawdowns that don't pair,
 * `grid-mismatch`
 */
export function assertComparable(areas: readonly Area[], further?: Area): void {
  const [first, ...others] = areas;
  for (const area of [...others, ...(further ? [further] : [])]) {
    if ((first.spectra === undefined) !== (area.spectra === undefined)) {
      throw kindsMixed(area.name, area.spectra ? 'spectrum' : 'lab');
    }
    if (first.spectra && area.spectra) assertSameGrid(first.spectra[0], area.spectra[0], area.name);
  }
  for (const { name, units } of others) {
    if (units.length === first.units.length) continue;
    throw new TintladderError('wrong-length', {
      path: name,
      received: units.length,
      expected: `as many drawdowns as ${first.name} has, ${first.units.length}`,
      hint: 'The areas of one drawdown pair by position.',
    });
  }
}

function spectrumOf(reading: RubOutReading): Spectrum | undefined {
  if ('values' in reading) return reading;
  return 'conditions' in reading ? reading.spectrum : undefined;
}

function labOf(reading: RubOutReading, path: string, viewing: Viewing): LabOfReading {
  if ('conditions' in reading) {
    const found = labOfReading(reading, viewing, path);
    assertFinite({ ...found.lab }, path);
    return found;
  }
  if (!('L' in reading)) {
    throw new TintladderError('empty', { path, received: reading, expected: 'a spectrum, Lab or XYZ' });
  }
  const { L, a, b } = reading;
  assertFinite({ L, a, b }, path);
  return { lab: reading, warnings: [] };
}

function kindsMixed(path: string, received: unknown): TintladderError {
  return new TintladderError('kinds-mixed', {
    path,
    received,
    expected: 'one kind on both sides',
    hint: 'Turn the spectra into Lab under the same viewing, or read all spots as spectra.',
  });
}
