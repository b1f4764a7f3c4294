export * from '../core/index.js';
export type {
  Measurement,
  MeasurementFile,
  MeasurementFormat,
  MeasurementTable,
  ReflectanceScale,
} from './measurement.js';
export {
  readMeasurementStream,
  type StreamOptions,
  type StreamProgress,
  type StreamSummary,
} from './read-measurement-stream.js';
export { readMeasurements } from './read-measurements.js';
export type { ReadOptions } from './read-options.js';
export { type WriteOptions, writeMeasurements } from './write-measurements.js';
