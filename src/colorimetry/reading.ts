import type { Lab } from './cielab.js';
import type { Conditions } from './conditions.js';
import type { Spectrum } from './spectrum.js';
import type { Viewing } from './viewing.js';
import type { Xyz } from './xyz-from-spectrum.js';

/** A colour of a reading as its source gives it, with its own viewing. At least one of `lab` and `xyz` is there. */
export interface MeasuredColour {
  readonly lab?: Lab;
  readonly xyz?: Xyz;
  /** Absent where the source does not state it. */
  readonly viewing?: Viewing;
}

/** One reading: a colour with its conditions. At least one of `spectrum`, `lab` and `xyz` is there. */
export interface Reading {
  readonly name: string;
  readonly spectrum?: Spectrum;
  readonly lab?: Lab;
  readonly xyz?: Xyz;
  /** All colours of the reading, where it has more than `lab`, `xyz` and `conditions.viewing` hold: the same under several viewings. */
  readonly colours?: readonly MeasuredColour[];
  readonly conditions: Conditions;
  /** Which repeat of the same sample this is, as the source says it. */
  readonly replicate?: string;
}

/** Whether a value is a reading with conditions, and not a bare spectrum or colour. */
export function isReading(value: object): value is Reading {
  return 'conditions' in value;
}
