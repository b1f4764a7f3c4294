import type { Warning } from '../core/index.js';
import type { Figure } from './figure.js';
import type { SeriesPoint } from './series-kind.js';
import type { SeriesFit, SeriesId } from './series-kinds.js';

/** One package in one paint, read at several values of a series. */
export interface SeriesCurve {
  readonly package: string;
  readonly paint: string;
  /** Every reading, in rising order of the axis. */
  readonly points: readonly SeriesPoint[];
  /** The fitted curve, for plotting; empty without a fit. */
  readonly curve: readonly SeriesPoint[];
  /** The place on the curve that a chart marks. */
  readonly mark?: SeriesPoint;
  /** What was read out of the curve; they stand among the figures of the cell too. */
  readonly figures: readonly Figure[];
  readonly fit?: SeriesFit;
  /** Why there is no fit. */
  readonly reason?: string;
  readonly warnings: readonly Warning[];
}

/** A kind of series as a study holds it: its axis, how to read it, and a curve for each package and paint read at several values. */
export interface Series {
  readonly kind: SeriesId;
  readonly axis: { readonly label: string; readonly unit: string };
  readonly response: { readonly label: string; readonly unit: string };
  /** How the chart is to be read. */
  readonly caption: string;
  readonly curves: readonly SeriesCurve[];
}
