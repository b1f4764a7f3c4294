import type { Repeated } from '../evidence/index.js';
import type { Measurement } from '../exchange/index.js';
import type { AssignedReading } from './assigned-reading.js';
import { nestAssigned } from './nest-assigned.js';

/** Readings by what they are, of which package and paint; found at once, since a large study asks thousands of times. */
export type ReadingGroups = ReadonlyMap<string, readonly AssignedReading[]>;

const keyOf = (role: string, id: string, paint: string) => JSON.stringify([role, id, paint]);

/** Groups readings, each group in the order of the files. */
export function groupReadings(readings: readonly AssignedReading[]): ReadingGroups {
  const groups = new Map<string, AssignedReading[]>();
  for (const reading of readings) {
    const key = keyOf(reading.role, reading.role === 'white' ? '' : (reading.package ?? ''), reading.paint);
    const group = groups.get(key);
    if (group) group.push(reading);
    else groups.set(key, [reading]);
  }
  return groups;
}

/** Every tint of one package in one paint. */
export function tintsOf(groups: ReadingGroups, id: string, paint: string): readonly AssignedReading[] {
  return groups.get(keyOf('tint', id, paint)) ?? [];
}

/** The fresh, unrubbed ones among them: what strengths and curves are made of. */
export function freshTintsOf(groups: ReadingGroups, id: string, paint: string): AssignedReading[] {
  return tintsOf(groups, id, paint).filter(({ area, storage }) => area === 'unrubbed' && storage === 'fresh');
}

/** The readings of the untinted white base of a paint, as they were repeated. */
export function whitesOf(groups: ReadingGroups, paint: string): Repeated<Measurement> | undefined {
  return nestAssigned(groups.get(keyOf('white', '', paint)) ?? []);
}
