import {
  type Conditions,
  createSpectrum,
  type Grid,
  type MeasuredColour,
  type Spectrum,
} from '../../colorimetry/index.js';
import { sameViewing } from '../../colorimetry/internal.js';
import { TintladderError } from '../../core/index.js';
import type { Measurement, MeasurementTable } from '../measurement/measurement.js';
import type { ReflectanceScale } from '../quantity/reflectance-scale.js';
import { fractionOfPercent } from '../text/file-number.js';
import { checkColour } from './colour-check.js';
import { toLab, toXyz } from './coordinates.js';
import { type FileContext, releaseWaiting } from './file-context.js';
import { refuseImpossible } from './impossible-values.js';
import type { RawColour, RawReading, ReadingPlaces } from './raw-reading.js';

/** What all readings of a table share. */
export interface TableHead {
  /** Line of the heading. */
  readonly line: number;
  readonly grid?: Grid;
  /** The scale that the file states for this table; the caller's word is stronger. */
  readonly scale?: ReflectanceScale | undefined;
}

/** Takes the readings of one table as numbers and makes measurements of them. */
export interface TableReader {
  add(reading: RawReading, places: ReadingPlaces): void;
  /** The table so far; once the scale is settled, with it. */
  table(): MeasurementTable;
}

/** Starts a table of a file. */
export function createTableReader({ line, grid, scale: ownScale }: TableHead, file: FileContext): TableReader {
  let count = 0;
  const statedScale = () => file.options.scale ?? ownScale ?? (file.style.percentSign ? 'percent' : undefined);

  const finish = (reading: RawReading, name: string, values: Float64Array | undefined, places: ReadingPlaces) => {
    const stated = statedScale();
    const spectrum =
      values && grid
        ? toSpectrum(values, grid, stated ?? file.scale.scale ?? 'fraction', stated !== undefined, places, file)
        : undefined;
    return toMeasurement(reading, name, spectrum, line, file);
  };

  return {
    add(reading, places) {
      const { values, colours } = reading;
      count++;
      file.count++;
      const name = nameOf(reading, places, file);
      if (values && statedScale() === undefined) {
        const highest = highestOf(values);
        file.scale.judge(highest, () => places.value(values.indexOf(highest)));
      }
      for (const { space, values: triple, white, place } of colours) {
        if (space !== 'xyz' || white !== undefined) continue;
        file.tristimulus.judge(Math.max(...triple), () => place(0));
      }
      if (file.scale.open || file.tristimulus.open) {
        const kept = values?.slice();
        file.waiting.push(() => finish(reading, name, kept, places));
        return;
      }
      if (file.waiting.length > 0) releaseWaiting(file);
      file.emit(finish(reading, name, values, places));
    },
    table() {
      const stated = statedScale();
      const scale = stated ?? file.scale.scale;
      return {
        line,
        count,
        ...(grid ? { grid } : {}),
        ...(grid && scale ? { scale, scaleFrom: stated ? 'stated' : 'values' } : {}),
      };
    },
  };
}

function nameOf({ name }: RawReading, places: ReadingPlaces, file: FileContext): string {
  if (name !== '') return ownText(name);
  if (places.name) {
    file.notes.add(
      'name-missing',
      'A reading has no name; such readings are called by their number in the file.',
      places.name(),
    );
  }
  const { fileName } = file.options;
  return fileName === undefined ? String(file.count) : file.count === 1 ? fileName : `${fileName} ${file.count}`;
}

function highestOf(values: Float64Array): number {
  let highest = values[0];
  for (let i = 1; i < values.length; i++) if (values[i] > highest) highest = values[i];
  return highest;
}

function toSpectrum(
  raw: Float64Array,
  { start, step }: Grid,
  scale: ReflectanceScale,
  stated: boolean,
  places: ReadingPlaces,
  file: FileContext,
): Spectrum {
  refuseImpossible(raw, scale, stated, places, file.notes);
  // in place: the spectrum holds a copy, and the array is filled anew for the next reading
  if (scale === 'percent') for (let i = 0; i < raw.length; i++) raw[i] = fractionOfPercent(raw[i]);
  try {
    return createSpectrum({ start, step, values: raw, scale: 'fraction' });
  } catch (error) {
    // what the checks above let pass and a spectrum may not hold is told at its place in the file
    if (!(error instanceof TintladderError)) throw error;
    throw new TintladderError(error.code, { ...error, path: places.value(0) });
  }
}

function toMeasurement(
  { replicate, colours, conditions, fields, line }: RawReading,
  name: string,
  spectrum: Spectrum | undefined,
  heading: number,
  file: FileContext,
): Measurement {
  if (colours.length === 0) {
    return {
      name,
      ...(spectrum ? { spectrum } : {}),
      conditions,
      ...(replicate === '' ? {} : { replicate: ownText(replicate) }),
      fields,
      line,
    };
  }
  const measured = colours.map((colour) => toColour(colour, file));
  measured.forEach((colour, i) => {
    if (spectrum) checkColour(spectrum, colour, name, () => colours[i].place(0), file.notes);
    if (!colour.viewing) {
      file.notes.add(
        'viewing-not-stated',
        'The file does not say which illuminant and observer its colour values belong to.',
        `line ${heading}`,
      );
    }
  });
  const { lab, xyz, viewing, complete } = firstColours(measured);
  return {
    name,
    ...(spectrum ? { spectrum } : {}),
    ...(lab ? { lab } : {}),
    ...(xyz ? { xyz } : {}),
    conditions: withViewing(conditions, viewing),
    ...(replicate === '' ? {} : { replicate: ownText(replicate) }),
    ...(complete ? {} : { colours: measured }),
    fields,
    line,
  };
}

/** Conditions whose viewing is that of the first colour, or none. */
function withViewing({ viewing: _, ...circumstances }: Conditions, viewing: MeasuredColour['viewing']): Conditions {
  return viewing ? { viewing, ...circumstances } : circumstances;
}

function toColour({ space, values, viewing, white, place }: RawColour, file: FileContext): MeasuredColour {
  const under = viewing ? { viewing } : {};
  if (space === 'lab') return { lab: toLab(values, place), ...under };
  const factor = white === undefined ? (file.tristimulus.factor ?? 1) : 100 / white;
  const [X, Y, Z] = values;
  return { xyz: toXyz(factor === 1 ? values : [X * factor, Y * factor, Z * factor], place), ...under };
}

/** The first Lab and the first XYZ under one viewing, and whether that is all there is. */
function firstColours(measured: readonly MeasuredColour[]) {
  const first = measured[0];
  if (!first) return { complete: true };
  const same = measured.filter(({ viewing }) => isUnder(viewing, first.viewing));
  const lab = same.find((colour) => colour.lab)?.lab;
  const xyz = same.find((colour) => colour.xyz)?.xyz;
  const held = (lab ? 1 : 0) + (xyz ? 1 : 0);
  return { lab, xyz, viewing: first.viewing, complete: held === measured.length };
}

function isUnder(viewing: MeasuredColour['viewing'], other: MeasuredColour['viewing']): boolean {
  return viewing && other ? sameViewing(viewing, other) : viewing === other;
}

/** Shorter texts are copied out of their block anyway. */
const SHARED_LENGTH = 13;

/** A text of its own: a slice would keep the whole block that it was cut from in memory. */
export function ownText(text: string): string {
  return text.length < SHARED_LENGTH ? text : ` ${text}`.slice(1);
}
