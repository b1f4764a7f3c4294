import { assertFinite, refuseNonFinite } from '../core/internal.js';

interface Coordinates {
  readonly L: number;
  readonly a: number;
  readonly b: number;
}

/** Refuses a coordinate of CIELAB that is no finite number: each is looked for, so an object that lacks one is refused too. */
export function assertLab({ L, a, b }: Coordinates, path: string): void {
  assertFinite({ L, a, b }, path);
}

/** Passes a difference on if it is finite; if not, refuses the coordinate that made it so. */
export function finiteDifference(difference: number, reference: Coordinates, sample: Coordinates): number {
  // NaN - NaN and Infinity - Infinity are NaN, so one comparison serves for both.
  if (difference - difference !== 0) {
    assertLab(reference, 'reference');
    assertLab(sample, 'sample');
    refuseNonFinite(difference, 'difference');
  }
  return difference;
}
