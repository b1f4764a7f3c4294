import type { Conditions } from '../../colorimetry/index.js';
import type { Triple } from './coordinates.js';

/** One reading as its format's reader found it: numbers as they stand in the file, before the scale of the file is settled. */
export interface RawReading {
  /** Empty where the file gives none. */
  readonly name: string;
  readonly replicate: string;
  /** Line at which the reading starts. */
  readonly line: number;
  /** Reflectance in the order of wavelength. The array may be used again for the next reading. */
  readonly values?: Float64Array;
  readonly lab?: Triple;
  readonly xyz?: Triple;
  readonly conditions: Conditions;
  readonly fields: Readonly<Record<string, string>>;
}

/** Where the parts of a reading stand, for faults and notes; asked only when needed. */
export interface ReadingPlaces {
  /** Absent where the table has no place for names at all. */
  readonly name?: () => string;
  readonly value: (index: number) => string;
  readonly lab: (index: number) => string;
  readonly xyz: (index: number) => string;
}
