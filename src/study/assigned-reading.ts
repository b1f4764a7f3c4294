import type { Measurement } from '../exchange/index.js';
import type { SeriesPlace } from './series-kinds.js';
import type { ReadingPlace, UnitLabels } from './study.js';

/** A reading with its place in the study. */
export interface AssignedReading
  extends Required<Pick<ReadingPlace, 'role' | 'area' | 'storage'>>,
    SeriesPlace,
    UnitLabels {
  /** As it was read, its conditions included. */
  readonly reading: Measurement;
  readonly package?: string;
  readonly paint: string;
}

/** A reading as a fault names it, with its line where two may have one name. */
export function placeText({ name, line }: Pick<Measurement, 'name' | 'line'>): string {
  return line === undefined ? name : `${name} (line ${line})`;
}
