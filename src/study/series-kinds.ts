import { DOSAGE_SERIES } from './dosage-series.js';
import { GRIND_SERIES } from './grind-series.js';
import type { SeriesKind } from './series-kind.js';
import { STORAGE_SERIES } from './storage-series.js';

/** Every kind of series, under the field of rules, patterns and packages that states its value. */
export const SERIES_KINDS = Object.freeze({
  grindTime: GRIND_SERIES,
  dosage: DOSAGE_SERIES,
  storageWeeks: STORAGE_SERIES,
} as const satisfies Record<string, SeriesKind>);

/** A field that states the value of a reading in a series. */
export type SeriesField = keyof typeof SERIES_KINDS;

/** Run-time list of {@link SeriesField}. */
export const SERIES_FIELDS = Object.freeze(Object.keys(SERIES_KINDS) as SeriesField[]);

/** Values in the series, by field, each in the unit of its axis. */
export type SeriesPlace = { readonly [Field in SeriesField]?: number | undefined };

/** Ids of the kinds. */
export type SeriesId = (typeof SERIES_KINDS)[SeriesField]['id'];

/** The fits of all kinds. */
export type SeriesFit = FitOf<(typeof SERIES_KINDS)[SeriesField]>;

type FitOf<Kind> = Kind extends SeriesKind<infer Fit> ? Fit : never;
