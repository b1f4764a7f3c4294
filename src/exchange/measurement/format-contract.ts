import type { Notes } from '../text/notes.js';
import type { TextSink } from '../text/text-sink.js';
import type { Measurement, MeasurementTable, ReflectanceScale } from './measurement.js';

/** What every format's reader is told. */
export interface ReaderOptions {
  readonly scale?: ReflectanceScale;
  readonly outsideRange: 'refuse' | 'drop';
}

/** Takes each reading as soon as it is certain, in the order of the file. */
export type Emit = (measurement: Measurement) => void;

/** Starts reading one file of a format; the tables are complete at its end. */
export type CreateReader = (options: ReaderOptions, notes: Notes, emit: Emit) => TextSink<readonly MeasurementTable[]>;

/** Writes measurements as text. */
export type WriteFormat = (measurements: readonly Measurement[]) => string;
