import { createSpectrum, type Grid } from '../../colorimetry/index.js';
import { TintladderError } from '../../core/index.js';
import type { Measurement, MeasurementTable } from '../measurement/measurement.js';
import type { ScaleDecision } from '../quantity/scale-decision.js';
import { toLab, toXyz } from './coordinates.js';
import { type FileContext, releaseWaiting } from './file-context.js';
import type { RawReading, ReadingPlaces } from './raw-reading.js';

/** What all readings of a table share. */
export interface TableHead {
  /** Line of the heading. */
  readonly line: number;
  readonly grid?: Grid;
}

/** Takes the readings of one table as numbers and makes measurements of them. */
export interface TableReader {
  add(reading: RawReading, places: ReadingPlaces): void;
  /** The table so far; once the scale is settled, with it. */
  table(): MeasurementTable;
}

/** Starts a table of a file. */
export function createTableReader({ line, grid }: TableHead, file: FileContext): TableReader {
  let count = 0;

  const finish = (parts: Omit<Measurement, 'spectrum'>, values: Float64Array | undefined): Measurement => {
    if (!values || !grid) return parts;
    const { start, step } = grid;
    return { ...parts, spectrum: createSpectrum({ start, step, values, scale: file.scale.scale ?? 'fraction' }) };
  };

  return {
    add(reading, places) {
      const { values } = reading;
      const highest = values ? highestOf(values, places) : 0;
      count++;
      const parts = toParts(reading, places, line, file);
      if (values && !file.scale.judge(highest, () => places.value(values.indexOf(highest)))) {
        const kept = values.slice();
        file.waiting.push(() => finish(parts, kept));
        return;
      }
      if (values) refuseImpossible(values, highest, file.scale, places);
      if (file.waiting.length > 0) {
        if (!values && file.scale.scale === undefined) {
          file.waiting.push(() => parts);
          return;
        }
        releaseWaiting(file);
      }
      file.emit(finish(parts, values));
    },
    table() {
      const { scale, from } = file.scale;
      return { line, count, ...(grid ? { grid } : {}), ...(grid && scale ? { scale, scaleFrom: from } : {}) };
    },
  };
}

function highestOf(values: Float64Array, places: ReadingPlaces): number {
  let highest = 0;
  for (let i = 0; i < values.length; i++) {
    const value = values[i];
    if (value < 0) {
      throw new TintladderError('reflectance-out-of-range', {
        path: places.value(i),
        received: value,
        expected: 'a reflectance of at least 0',
      });
    }
    if (value > highest) highest = value;
  }
  return highest;
}

/** Refuses readings beyond twice the perfect diffuser, and leaps between neighbours that only a change of scale explains. */
function refuseImpossible(values: Float64Array, highest: number, scale: ScaleDecision, places: ReadingPlaces): void {
  const percent = scale.scale === 'percent';
  if (highest > (percent ? 200 : 2)) {
    throw new TintladderError('reflectance-out-of-range', {
      path: places.value(values.indexOf(highest)),
      received: highest,
      expected: percent ? 'a percentage from 0 to 200' : 'a fraction from 0 to 2',
    });
  }
  if (!percent || scale.from === 'stated') return;
  for (let i = 1; i < values.length; i++) {
    const low = Math.min(values[i - 1], values[i]);
    const high = Math.max(values[i - 1], values[i]);
    // no pigment's reflectance rises fortyfold from one reading to the next
    if (low < 1 && high > 10 && high > 40 * low && low > 0) {
      throw new TintladderError('scale-mixed', {
        path: places.value(values[i] === low ? i : i - 1),
        received: low,
        expected: `one scale throughout a spectrum (${high} stands beside it)`,
        hint: "If the values are right, pass scale: 'percent'.",
      });
    }
  }
}

function toParts(
  { name, replicate, lab, xyz, conditions, fields, line }: RawReading,
  places: ReadingPlaces,
  heading: number,
  file: FileContext,
): Omit<Measurement, 'spectrum'> {
  file.count++;
  if (name === '' && places.name) {
    file.notes.add(
      'name-missing',
      'A reading has no name; such readings are called by their number in the file.',
      places.name(),
    );
  }
  if ((lab || xyz) && !conditions.viewing) {
    file.notes.add(
      'viewing-not-stated',
      'The file does not say which illuminant and observer its colour values belong to.',
      `line ${heading}`,
    );
  }
  return {
    name: name === '' ? String(file.count) : ownText(name),
    ...(lab ? { lab: toLab(lab, places.lab) } : {}),
    ...(xyz ? { xyz: toXyz(xyz, places.xyz) } : {}),
    conditions,
    ...(replicate === '' ? {} : { replicate: ownText(replicate) }),
    fields,
    line,
  };
}

/** Shorter texts are copied out of their block anyway. */
const SHARED_LENGTH = 13;

/** A text of its own: a slice would keep the whole block that it was cut from in memory. */
export function ownText(text: string): string {
  return text.length < SHARED_LENGTH ? text : ` ${text}`.slice(1);
}
