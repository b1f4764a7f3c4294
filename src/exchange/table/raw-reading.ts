import type { Conditions, Viewing } from '../../colorimetry/index.js';
import type { Triple } from './coordinates.js';

/** L*, a*, b* or X, Y, Z of a reading as its file gives them. */
export interface RawColour {
  readonly space: 'lab' | 'xyz';
  readonly values: Triple;
  readonly viewing?: Viewing | undefined;
  /** The Y of the white that X, Y, Z belong to, where the file or its format states it: 100 or 1. */
  readonly white?: number | undefined;
  readonly place: (index: number) => string;
}

/** One reading as its format's reader found it: numbers as they stand in the file, before the scale of the file is settled. */
export interface RawReading {
  /** Empty where the file gives none. */
  readonly name: string;
  readonly replicate: string;
  /** Line at which the reading starts. */
  readonly line: number;
  /** Reflectance in the order of wavelength. The array may be used again for the next reading. */
  readonly values?: Float64Array;
  readonly colours: readonly RawColour[];
  /** The viewing is that of the whole table; each colour has its own. */
  readonly conditions: Conditions;
  readonly fields: Readonly<Record<string, string>>;
}

/** Where the parts of a reading stand, for faults and notes; asked only when needed. */
export interface ReadingPlaces {
  /** Absent where the table has no place for names at all. */
  readonly name?: (() => string) | undefined;
  readonly value: (index: number) => string;
}
