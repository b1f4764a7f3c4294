import type { Grid, Reading } from '../../colorimetry/index.js';
import type { ReflectanceScale } from '../quantity/reflectance-scale.js';

/** One reading from a file, with all that the file says about it. */
export interface Measurement extends Reading {
  /** What the file says beside the colour, as text under the file's own headings. */
  readonly fields: Readonly<Record<string, string>>;
  /** Line of the file at which the reading starts, counted from 1. */
  readonly line?: number;
}

/** One table of a file: a run of readings that share a heading. */
export interface MeasurementTable {
  /** Line of the heading, counted from 1. */
  readonly line: number;
  /** Number of readings. */
  readonly count: number;
  /** Wavelength grid of its spectra; absent where it has none. */
  readonly grid?: Grid;
  /** Scale of its spectra in the file; what is read is always in fractions. */
  readonly scale?: ReflectanceScale;
  /** Where the scale comes from: the file or the caller says so, or the values decided. */
  readonly scaleFrom?: 'stated' | 'values';
}
