import { assertFunction } from '../../core/internal.js';
import { isLevel } from './level.js';
import { readRepeated } from './read-repeated.js';
import type { Repeated } from './repeated.js';

/**
 * The same nest with every reading turned into something else, such as a measurement into its spectrum.
 *
 * @param given - one reading, or a nest of {@link Repeated}
 * @param transform - called with each reading and its path
 * @param path - name of the argument, for faults
 * @returns the nest in the same shape, with its days and sessions
 * @throws TintladderError as every function that takes repeated readings: `repetition-unstated`, `level-misplaced`, `empty`, `wrong-length`
 * @example mapRepeated({ weighing: [1, { spot: [2, 3] }] }, (value) => 10 * value) // { weighing: [10, { spot: [20, 30] }] }
 */
export function mapRepeated<From, To>(
  given: Repeated<From>,
  transform: (reading: From, path: string) => To,
  path = 'readings',
): Repeated<To> {
  assertFunction(transform, 'transform');
  const placed = new Map(readRepeated(given, path).readings.map(({ reading, path }) => [path, reading]));
  const map = (node: unknown, at: string): unknown => {
    if (placed.has(at)) return transform(placed.get(at) as From, at);
    const entries = Object.entries(node as Readonly<Record<string, readonly unknown[]>>);
    return Object.fromEntries(
      entries.map(([key, list]) => [key, isLevel(key) ? list.map((unit, i) => map(unit, `${at}.${key}[${i}]`)) : list]),
    );
  };
  return map(given, path) as Repeated<To>;
}
