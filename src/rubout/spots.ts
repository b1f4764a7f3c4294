import type { RepeatedSpots } from '../evidence/index.js';

/** Readings of one film, in the shape that says so; one reading stands for itself. */
export function spotsOf<Reading>(readings: readonly Reading[]): RepeatedSpots<Reading> {
  return readings.length === 1 ? readings[0] : { spot: readings };
}
