import type { BatchCorrection } from './correction.js';

/** What an addition is reckoned from. */
export interface Balance {
  readonly correction: BatchCorrection;
  /** Of the batch, kg. */
  readonly mass: number;
  /** Share of colorant in a tinted paint, mass fraction; 0 for a colorant. */
  readonly colorantShare: number;
}

/**
 * Mass to add so that the mixture has the strength of the standard, by single-constant theory: absorption adds up, and strength is absorption
 * per mass of colorant, in a paint per mass of its white base.
 *
 * @param batch - strength of the batch, %
 * @param added - strength of what is added, %; 0 for vehicle and white base
 * @returns kg; negative where the batch lies on the other side of the standard
 */
export function additionFor({ correction, mass, colorantShare }: Balance, batch: number, added: number): number {
  if (correction === 'colorant') return (mass * colorantShare * (100 - batch)) / added;
  if (correction === 'white-base') return (mass * (1 - colorantShare) * (batch - 100)) / 100;
  return (mass * (batch - 100)) / (100 - added);
}

/** Strength of the mixture after an addition, %: the balance of {@link additionFor} turned round. */
export function strengthAfter(
  { correction, mass, colorantShare }: Balance,
  addition: number,
  batch: number,
  added: number,
): number {
  if (correction === 'colorant') return batch + (addition * added) / (mass * colorantShare);
  const base = correction === 'white-base' ? mass * (1 - colorantShare) : mass;
  return (base * batch + addition * added) / (base + addition);
}
