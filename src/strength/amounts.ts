import { TintladderError } from '../core/index.js';

/** Colorant and white in one reduction, in any one unit of mass. */
export interface ReductionAmounts {
  readonly colorant: number;
  readonly white: number;
}

/** Amounts of both reductions, where they differ. */
export interface Amounts {
  readonly reference: ReductionAmounts;
  readonly trial: ReductionAmounts;
}

/**
 * How much more colorant per white the reference holds than the trial: 1 where no amounts are stated.
 *
 * @throws TintladderError `invalid-option` for an amount that is not a positive number
 */
export function amountRatio(amounts: Amounts | undefined): number {
  if (!amounts) return 1;
  return ratioOf(amounts.reference, 'options.amounts.reference') / ratioOf(amounts.trial, 'options.amounts.trial');
}

function ratioOf({ colorant, white }: ReductionAmounts, path: string): number {
  for (const [name, value] of Object.entries({ colorant, white })) {
    if (!(typeof value === 'number' && value > 0 && value < Infinity)) {
      const expected = 'a positive number';
      throw new TintladderError('invalid-option', { path: `${path}.${name}`, received: value, expected });
    }
  }
  return colorant / white;
}
