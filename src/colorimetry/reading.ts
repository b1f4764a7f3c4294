import { assertArray, assertObject } from '../core/internal.js';
import { assertXyz, type Lab } from './cielab.js';
import { assertConditions, type Conditions } from './conditions.js';
import { assertLab } from './finite-lab.js';
import type { Spectrum } from './spectrum.js';
import { assertViewing, type Viewing } from './viewing.js';
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

/**
 * Refuses what is no reading: no object with conditions, or one with a colour that is none. Its spectrum is checked where it is taken.
 *
 * @throws TintladderError `wrong-type`, `not-finite`, `invalid-option`, `unknown-illuminant`, `unknown-observer`
 */
export function assertReading(reading: Reading, path: string): void {
  assertObject(reading, path, 'a reading with its conditions');
  const { conditions, lab, xyz, colours = [] } = reading;
  assertConditions(conditions, `${path}.conditions`);
  assertArray(colours, `${path}.colours`);
  const own = { path, lab, xyz, viewing: undefined };
  const others = colours.map((colour, i) => ({ ...colour, path: `${path}.colours[${i}]` }));
  for (const colour of [own, ...others]) {
    if (colour.lab !== undefined) assertLab(colour.lab, `${colour.path}.lab`);
    if (colour.xyz !== undefined) assertXyz(colour.xyz, `${colour.path}.xyz`);
    if (colour.viewing !== undefined) assertViewing(colour.viewing, `${colour.path}.viewing`);
  }
}
