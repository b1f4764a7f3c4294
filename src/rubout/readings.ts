import {
  describeViewing,
  type Lab,
  labFromSpectrum,
  labFromXyz,
  type Reading,
  type Spectrum,
  type Viewing,
  whitePoint,
} from '../colorimetry/index.js';
import { assertSameGrid } from '../colorimetry/internal.js';
import { TintladderError } from '../core/index.js';
import { assertFinite } from '../core/internal.js';

/** A colour that was read: a spectrum, Lab values, or either with the conditions it was read under. */
export type RubOutReading = Spectrum | Lab | Reading;

/** The readings of one area: its spots as Lab and, where they were read as spectra, as spectra. */
export interface Area {
  readonly name: string;
  readonly labs: readonly Lab[];
  readonly spectra?: readonly Spectrum[];
}

/**
 * The readings of one area.
 *
 * @param path - what messages call the area: `unrubbed`
 * @throws TintladderError `empty`, `kinds-mixed`, `not-finite`, what `labFromSpectrum` throws
 */
export function areaFrom(given: RubOutReading | readonly RubOutReading[], path: string, viewing: Viewing): Area {
  const readings = Array.isArray(given) ? (given as readonly RubOutReading[]) : [given as RubOutReading];
  if (readings.length === 0) {
    throw new TintladderError('empty', { path, received: readings, expected: 'at least one reading' });
  }
  const placed = (i: number) => (readings.length === 1 ? path : `${path}[${i}]`);
  const spectra = readings.flatMap((reading) => spectrumOf(reading) ?? []);
  if (spectra.length === 0) {
    return { name: path, labs: readings.map((reading, i) => labOf(reading, placed(i), viewing)) };
  }
  if (spectra.length < readings.length) throw kindsMixed(path, 'lab');
  spectra.forEach((spectrum, i) => {
    assertSameGrid(spectra[0], spectrum, placed(i));
  });
  return { name: path, labs: spectra.map((spectrum) => labFromSpectrum(spectrum, viewing)), spectra };
}

/**
 * Refuses areas that can't be compared.
 *
 * @throws TintladderError `kinds-mixed` for spectra on one side and Lab on the other, `grid-mismatch`, `conditions-mismatch`
 */
export function assertComparable(
  [unrubbed, rubbed]: readonly [Area, Area],
  given: readonly (RubOutReading | readonly RubOutReading[])[],
  viewing: Viewing,
): void {
  if ((unrubbed.spectra === undefined) !== (rubbed.spectra === undefined)) {
    throw kindsMixed('rubbed', rubbed.spectra ? 'spectrum' : 'lab');
  }
  if (unrubbed.spectra && rubbed.spectra) assertSameGrid(unrubbed.spectra[0], rubbed.spectra[0], 'rubbed');
  const readings = given.flat().filter((reading): reading is Reading => 'conditions' in reading);
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
    throw new TintladderError('empty', { path, received: reading, expected });
  }
  assertFinite({ L: lab.L, a: lab.a, b: lab.b }, path);
  return lab;
}

function labOfReading({ lab, xyz }: Reading, viewing: Viewing): Lab | undefined {
  return lab ?? (xyz && labFromXyz(xyz, whitePoint(viewing)));
}

function kindsMixed(path: string, received: string): TintladderError {
  return new TintladderError('kinds-mixed', {
    path,
    received,
    expected: 'one kind on both sides',
    hint: 'Turn the spectra into Lab under the same viewing, or read all spots as spectra.',
  });
}
