import { TintladderError } from '../errors.js';

interface Coordinates {
  readonly L: number;
  readonly a: number;
  readonly b: number;
}

/**
 * Refuses the first value that is not a finite number, naming its place.
 *
 * Called only after a result came out non-finite or at a boundary, so hot paths pay nothing for it.
 */
export function assertFinite(values: Readonly<Record<string, number>>, place: string): void {
  for (const [name, value] of Object.entries(values)) refuse(value, `${place}.${name}`);
}

/** The same for the three coordinates of CIELAB: each is looked for, so an object that lacks one is refused too. */
export function assertLab({ L, a, b }: Coordinates, place: string): void {
  assertFinite({ L, a, b }, place);
}

/** Passes a difference on if it is finite; if not, refuses the coordinate that made it so. */
export function finiteDifference(difference: number, reference: Coordinates, sample: Coordinates): number {
  // NaN - NaN and Infinity - Infinity are NaN, so one comparison serves for both.
  if (difference - difference !== 0) {
    assertLab(reference, 'reference');
    assertLab(sample, 'sample');
    refuse(difference, 'difference');
  }
  return difference;
}

/** The same for an array, naming the index. */
export function assertFiniteArray(values: ArrayLike<number>, place: string): void {
  for (let i = 0; i < values.length; i++) refuse(values[i], `${place}[${i}]`);
}

function refuse(value: unknown, place: string): void {
  if (!Number.isFinite(value)) {
    throw new TintladderError('not-finite', { place, seen: value, expected: 'a finite number' });
  }
}

/** Refuses the first option that is not a positive number. */
export function assertPositive(options: Readonly<Record<string, number>>): void {
  for (const [name, value] of Object.entries(options)) {
    if (!(value > 0 && value < Infinity)) {
      throw new TintladderError('invalid-option', {
        place: `options.${name}`,
        seen: value,
        expected: 'a positive number',
      });
    }
  }
}
