export * from '../core/index.js';
export { MEASUREMENT_FORMATS, type MeasurementFormat } from './formats.js';
export type { Exclusion } from './measurement/format-contract.js';
export type { Measurement, MeasurementTable } from './measurement/measurement.js';
export type { MeasurementFile } from './measurement-file.js';
export type { ReflectanceScale } from './quantity/reflectance-scale.js';
export { QUANTITIES_READ, type QuantityRead } from './quantity/to-reflectance.js';
export {
  readMeasurementStream,
  type StreamOptions,
  type StreamProgress,
  type StreamSummary,
} from './read-measurement-stream.js';
export { readMeasurements } from './read-measurements.js';
export type { ReadOptions } from './read-options.js';
export { type WriteOptions, writeMeasurements } from './write-measurements.js';
