import { TintladderError } from '../errors.js';
import type { Bands } from './bands.js';
import { absorptionOf } from './colorant-absorption.js';
import type { Surface } from './saunderson.js';

/** One side of a comparison: its readings in bands, and their mean. */
export interface Side {
  /** As messages call it: `reference`, `trial`, `white`. */
  readonly name: string;
  readonly readings: readonly Float64Array[];
  readonly mean: Float64Array;
}

/** One reading or several, as a list. */
export function asReadings<Colour extends object>(given: Colour | readonly Colour[], name: string): readonly Colour[] {
  const readings = Array.isArray(given) ? (given as readonly Colour[]) : [given as Colour];
  if (readings.length === 0) {
    throw new TintladderError('empty', { place: name, seen: 'an empty list', expected: 'one reading or more' });
  }
  return readings;
}

/** A side from the reflectances of its readings. */
export function sideOf(name: string, readings: readonly Float64Array[]): Side {
  const mean = new Float64Array(readings[0].length);
  for (const reading of readings) for (let i = 0; i < mean.length; i++) mean[i] += reading[i] / readings.length;
  return { name, readings, mean };
}

/** K/S of the mean of a side and of each of its readings. */
export function absorptionsOf(side: Side, surface: Surface | undefined, bands: Bands) {
  const placed = (index: number) => (side.readings.length === 1 ? side.name : `${side.name}[${index}]`);
  const each = side.readings.map((reading, index) => absorptionOf(reading, surface, bands, placed(index)));
  return { each, mean: absorptionOf(side.mean, surface, bands, side.name) };
}
