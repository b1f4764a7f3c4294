import type { Warning } from '../core/index.js';
import type { Figure } from './figure.js';

/** One reading of a series: where it stands on the axis, and its strength in percent. */
export interface SeriesPoint {
  readonly at: number;
  readonly value: number;
  /** The mill run and the weigh-up it belongs to, where the names tell them. */
  readonly grind?: string;
  readonly weighing?: string;
}

/** What the points of one package in one paint show. */
export interface SeriesFindings<Fit extends object> {
  readonly fit: Fit;
  /** The fitted curve, for plotting. */
  readonly curve: readonly SeriesPoint[];
  /** The place on the curve that a chart marks, such as the start of a plateau. */
  readonly mark?: SeriesPoint;
  /** What criteria may judge; each quantity stands in `quantities` of its kind, which gives the unit. */
  readonly figures: readonly Omit<Figure, 'unit'>[];
  readonly warnings: readonly Warning[];
}

/**
 * A kind of series: one quantity that a study varies step by step, and what is read out of it.
 *
 * A kind is one such definition and its line in `SERIES_KINDS`; study files, patterns, results and reports take everything
 * about it from there.
 */
export interface SeriesKind<Fit extends object = object> {
  /** Names it in results and in the ids of a report. */
  readonly id: string;
  /** Of its axis. */
  readonly label: string;
  /** Unit of its axis; a study may state the unit of its dosages. */
  readonly unit: (stated: { readonly dosageUnit?: string | undefined }) => string;
  /** Whether the axis starts at a value of 0 that can be made, or above it. */
  readonly allowsZero: boolean;
  /** What the field means in a rule of readings, and in a package, for the JSON Schema. */
  readonly describes: { readonly reading: string; readonly package: string };
  /** Whose strength counts as 100 %: that of the reference package as it is judged, or the package's own as it is judged. */
  readonly against: 'reference' | 'itself';
  /** The field of a reading that says the same in other words, so that both can't be stated. */
  readonly insteadOf?: 'storage';
  /** Where readings stand that state no value; they are left out of the series if absent. */
  readonly unstated?: number;
  /**
   * The value at which a package is judged that doesn't state one.
   *
   * @param values - the different values that were read, in rising order, at least one
   * @returns undefined where the package has to state it
   */
  readonly judgedAt: (values: readonly number[]) => number | undefined;
  /** The quantities it adds to those that a study computes; without a unit of their own they have that of the axis. */
  readonly quantities: Readonly<Record<string, { readonly unit: string | undefined; readonly name: string }>>;
  /** How its chart is to be read. */
  readonly caption: string;
  /**
   * Fits a curve and reads it.
   *
   * @param points - in rising order of the axis
   * @param reference - the fit of the reference package in the same paint where there is one, `itself` for that package
   * @throws TintladderError where the points carry no curve; the series then says so
   */
  evaluate(points: readonly SeriesPoint[], reference: Fit | 'itself' | undefined): Promise<SeriesFindings<Fit>>;
}
