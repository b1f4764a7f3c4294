import type { Measurement } from '../exchange/index.js';
import type { SeriesPlace } from './series-kinds.js';
import type { ReadingPlace, ReadingRole, UnitLabels } from './study.js';

/** A reading with its place in the study. */
export interface AssignedReading extends SeriesPlace, UnitLabels {
  /** As it was read, its conditions included. */
  readonly reading: Measurement;
  readonly role: ReadingRole;
  readonly area: NonNullable<ReadingPlace['area']>;
  readonly storage: NonNullable<ReadingPlace['storage']>;
  readonly package?: string | undefined;
  readonly paint: string;
}

/** A reading as a fault names it, with its line where two may have one name. */
export function placeText({ name, line }: Pick<Measurement, 'name' | 'line'>): string {
  return line === undefined ? name : `${name} (line ${line})`;
}
