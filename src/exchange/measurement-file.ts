import type { Warning } from '../core/index.js';
import type { MeasurementFormat } from './formats.js';
import type { Measurement, MeasurementTable } from './measurement/measurement.js';

/** What a file holds, and what had to be assumed to read it. */
export interface MeasurementFile {
  readonly kind: 'measurement-file';
  readonly version: 1;
  readonly format: MeasurementFormat;
  readonly measurements: readonly Measurement[];
  readonly tables: readonly MeasurementTable[];
  readonly warnings: readonly Warning[];
}
