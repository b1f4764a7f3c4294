import { TintladderError } from '../errors.js';

/**
 * Refuses the first value that is not a finite number, naming its place.
 *
 * Called only after a result came out non-finite or at a boundary, so hot paths pay nothing for it.
 */
export function assertFinite(values: Readonly<Record<string, number>>, place: string): void {
  for (const [name, value] of Object.entries(values)) {
    if (typeof value !== 'number' || !Number.isFinite(value)) {
      throw new TintladderError('not-finite', { place: `${place}.${name}`, seen: value, expected: 'a finite number' });
    }
  }
}
