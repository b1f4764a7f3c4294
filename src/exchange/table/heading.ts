import type { Grid } from '../../colorimetry/index.js';
import type { StatedParts } from '../conditions/stated-parts.js';
import type { StatedQuantity } from '../quantity/quantity-text.js';
import type { ReflectanceScale } from '../quantity/reflectance-scale.js';
import type { QuantityRead } from '../quantity/to-reflectance.js';
import type { BandWeights } from '../wavelength/resampling.js';
import type { ColumnRole } from './column-role.js';

/** Columns that make one spectrum. */
export interface SpectrumPlan {
  readonly grid: Grid;
  /** Column of each reading that is used, in the order of wavelength. */
  readonly columns: Int32Array;
  readonly resampling?: readonly BandWeights[];
  readonly scale?: ReflectanceScale;
  /** What the values are, where they are to be turned into reflectance. */
  readonly turn?: Exclude<QuantityRead, 'reflectance'>;
  readonly stated: StatedParts;
}

/** Three columns that make one colour. */
export interface ColourPlan {
  readonly space: 'lab' | 'xyz';
  readonly indices: readonly [number, number, number];
  readonly stated: StatedParts;
  /** The Y of the white that X, Y, Z belong to, where the heading states it. */
  readonly white?: number;
}

/** A column before a plan: what it holds, and what it is called. */
export interface PlannedColumn {
  readonly role: ColumnRole;
  readonly label: string;
}

/** What stands above a table or around it and belongs to its readings. */
export interface TableContext {
  readonly stated: StatedParts;
  readonly quantity?: StatedQuantity & { readonly place: string };
  readonly name?: string | undefined;
  /** The Y of the white that X, Y, Z belong to, where the format fixes it. */
  readonly white?: number;
  /** The file says that every row is a sample, whatever its name. */
  readonly samplesOnly?: boolean | undefined;
  /** The file says that its L, a, b are Hunter's. */
  readonly hunter?: boolean;
}

/** What a plan is made from. */
export interface Heading {
  readonly columns: readonly PlannedColumn[];
  readonly line: number;
  /** Place of a heading cell, for faults. */
  readonly placeOf: (index: number) => string;
  /** Some rows of data, to tell text from numbers where no heading names the sample. */
  readonly rows: readonly (readonly string[])[];
  readonly context: TableContext;
  /** Column that holds the names, where the layout says so rather than the heading. */
  readonly nameColumn?: number;
}
