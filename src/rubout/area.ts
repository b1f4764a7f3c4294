import {
  describeViewing,
  type Lab,
  labFromSpectrum,
  labFromXyz,
  meanSpectrum,
  type Reading,
  type Spectrum,
  type Viewing,
  whitePoint,
} from '../colorimetry/index.js';
import { assertSameGrid } from '../colorimetry/internal.js';
import { TintladderError } from '../core/index.js';
import { assertFinite } from '../core/internal.js';
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
  const shape = { name: path, paths, readings, units: unitsOf(read), repetition: describeRepetition(read) };
  const spectra = readings.flatMap((reading) => spectrumOf(reading) ?? []);
  if (spectra.length === 0) return { ...shape, labs: readings.map((reading, i) => labOf(reading, paths[i], viewing)) };
  if (spectra.length < readings.length) throw kindsMixed(path, ['spectrum', 'lab']);
  spectra.forEach((spectrum, i) => {
    assertSameGrid(spectra[0], spectrum, paths[i]);
  });
  return { ...shape, labs: spectra.map((spectrum) => labFromSpectrum(spectrum, viewing)), spectra };
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
 * `grid-mismatch`, `conditions-mismatch`
 */
export function assertComparable(areas: readonly Area[], further: Area | undefined, viewing: Viewing): void {
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
  assertSameConditions([...areas, ...(further ? [further] : [])], viewing);
}

function assertSameConditions(areas: readonly Area[], viewing: Viewing): void {
  const readings = areas
    .flatMap((area) => area.readings)
    .filter((reading): reading is Reading => 'conditions' in reading);
  for (const { name, conditions, spectrum } of readings) {
    const { viewing: own } = conditions;
    if (own && !spectrum && describeViewing(own) !== describeViewing(viewing)) {
      throw new TintladderError('conditions-mismatch', {
        path: `viewing of ${name}`,
        received: describeViewing(own),
        expected: `the viewing of the assessment, ${describeViewing(viewing)}`,
        hint: 'Lab values can not be moved to another illuminant or observer; take the spectra.',
      });
    }
  }
  for (const property of ['specular', 'geometry', 'instrument'] as const) {
    const stated = readings.filter(({ conditions }) => conditions[property] !== undefined);
    const other = stated.find(({ conditions }) => conditions[property] !== stated[0].conditions[property]);
    if (other) {
      throw new TintladderError('conditions-mismatch', {
        path: `${property} of ${other.name}`,
        received: other.conditions[property],
        expected: `that of ${stated[0].name}, ${stated[0].conditions[property]}`,
        hint: 'Read both areas under the same conditions.',
      });
    }
  }
}

function spectrumOf(reading: RubOutReading): Spectrum | undefined {
  if ('values' in reading) return reading;
  return 'conditions' in reading ? reading.spectrum : undefined;
}

function labOf(reading: RubOutReading, path: string, viewing: Viewing): Lab {
  const lab = 'conditions' in reading ? labOfReading(reading, viewing) : 'L' in reading ? reading : undefined;
  if (!lab) {
    const expected = 'a spectrum, Lab or XYZ';
    throw new TintladderError('empty', { path, received: 'a reading without a colour', expected });
  }
  assertFinite({ L: lab.L, a: lab.a, b: lab.b }, path);
  return lab;
}

function labOfReading({ lab, xyz }: Reading, viewing: Viewing): Lab | undefined {
  return lab ?? (xyz && labFromXyz(xyz, whitePoint(viewing)));
}

function kindsMixed(path: string, received: unknown): TintladderError {
  return new TintladderError('kinds-mixed', {
    path,
    received,
    expected: 'one kind on both sides',
    hint: 'Turn the spectra into Lab under the same viewing, or read all spots as spectra.',
  });
}
