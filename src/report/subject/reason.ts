import { decimalsFor, formatFixed, withUnit } from '../../core/internal.js';
import { quoteEstimate } from '../../decision/internal.js';
import type { Judgement } from '../../study/index.js';
import { quantityWords } from '../words/words.js';

/** The figures that stand in every cell of the overview, so that a reason needs only their names. */
const SHOWN: Readonly<Record<string, string>> = { strength: 'Strength', residual: 'Residual', 'rub-out': 'Rub-out' };

/** Why a judgement does not meet its limit, in a few words. */
export function reasonWords(judgement: Judgement): string {
  const { quantity, unit, outcome, interval } = judgement;
  const { side, bound } = boundInQuestion(judgement);
  const limit = withUnit(formatFixed(bound, decimalsFor(unit, bound)), unit);
  const name = SHOWN[quantity] ?? `${quantityWords(quantity)} ${quoteEstimate(judgement, unit, bound)}`;
  if (outcome === 'fails') return `${name} ${side} ${limit}`;
  return interval ? `${name} undecided: interval includes ${limit}` : `${name} undecided: no interval, limit ${limit}`;
}

/** The side of the limit that the figure is beyond, or that its interval includes. */
function boundInQuestion({ value, interval, limit: { lower, upper } }: Judgement): {
  readonly side: 'above' | 'below';
  readonly bound: number;
} {
  const { low, high } = interval ?? { low: value, high: value };
  const room = { above: (upper ?? Number.POSITIVE_INFINITY) - high, below: low - (lower ?? Number.NEGATIVE_INFINITY) };
  return room.above < room.below ? { side: 'above', bound: upper ?? 0 } : { side: 'below', bound: lower ?? 0 };
}
