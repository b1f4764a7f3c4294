import { assertFinite, assertObject } from '../core/internal.js';

interface Coordinates {
  readonly L: number;
  readonly a: number;
  readonly b: number;
}

/** Refuses what is no object, and a coordinate of CIELAB that is no finite number: each is looked for, so an object that lacks one is refused too. */
export function assertLab(lab: Coordinates, path: string): void {
  if (isLab(lab)) return;
  assertObject(lab, path, 'CIELAB with L, a and b');
  assertFinite({ L: lab.L, a: lab.a, b: lab.b }, path);
}

/** The same for both colours of a difference; made for the case that both are sound. */
export function assertLabs(reference: Coordinates, sample: Coordinates): void {
  if (isLab(reference) && isLab(sample)) return;
  assertLab(reference, 'reference');
  assertLab(sample, 'sample');
}

function isLab(lab: Coordinates): boolean {
  return (
    typeof lab === 'object' &&
    lab !== null &&
    Number.isFinite(lab.L) &&
    Number.isFinite(lab.a) &&
    Number.isFinite(lab.b)
  );
}

/** Passes a difference on if it is finite; coordinates may be so large that theirs is not. */
export function finiteDifference(difference: number): number {
  if (difference - difference !== 0) assertFinite({ difference }, 'reference and sample');
  return difference;
}
