import type { ReflectanceScale } from '../quantity/reflectance-scale.js';
import type { QuantityRead } from '../quantity/to-reflectance.js';
import type { Notes } from '../text/notes.js';
import type { TextSink } from '../text/text-sink.js';
import type { Measurement, MeasurementTable } from './measurement.js';

/** A reading that is left out, and why. */
export interface Exclusion {
  /** Name of the readings that are left out. */
  readonly name: string;
  /** Only the reading that starts at this line. */
  readonly line?: number | undefined;
  readonly reason: string;
}

/** What every format's reader is told. */
export interface ReaderOptions {
  readonly scale?: ReflectanceScale | undefined;
  readonly outsideRange: 'refuse' | 'drop';
  readonly resample?: number | undefined;
  readonly quantity?: QuantityRead | undefined;
  readonly names?: string | undefined;
  readonly fileName?: string | undefined;
  readonly exclude?: readonly Exclusion[] | undefined;
  readonly computedRows: 'leave-out' | 'keep';
}

/** Takes each reading as soon as it is certain, in the order of the file. */
export type Emit = (measurement: Measurement) => void;

/** Starts reading one file of a format; the tables are complete at its end. */
export type CreateReader = (options: ReaderOptions, notes: Notes, emit: Emit) => TextSink<readonly MeasurementTable[]>;

/** Writes measurements as text. */
export type WriteFormat = (measurements: readonly Measurement[]) => string;
