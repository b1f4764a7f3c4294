import type { Claim, Repetition } from '../../evidence/index.js';
import type { StrengthInterval } from './strength-interval.js';

/** What was repeated on each side of a comparison. */
export interface StrengthRepetition {
  readonly reference: Repetition;
  readonly trial: Repetition;
  /** Absent where no white was read. */
  readonly white?: Repetition;
}

const SUBJECTS: Readonly<Record<Claim, string>> = {
  package: 'This package',
  batch: 'This batch',
  'mill-base': 'This mill base',
  film: 'On this film',
};

/** What a strength claims in one sentence or two: the thing it speaks of, the figure, what it rests on and what it leaves open. */
export function statementOf(
  percent: number,
  interval: StrengthInterval | undefined,
  claim: Claim,
  { reference, trial, white }: StrengthRepetition,
): string {
  const rest =
    reference.noun === trial.noun
      ? `${trial.noun} on each side`
      : `the trial ${trial.noun}, the reference ${reference.noun}`;
  const ends = interval ? ` (95 % interval ${figure(interval.low)} to ${figure(interval.high)})` : '';
  const taken = white?.count === 1 ? ', the white taken as exact' : '';
  const first = `${SUBJECTS[claim]}: ${figure(percent)} %${ends}, ${rest}${taken}.`;
  return claim === 'film'
    ? `${first} For the mill base it is not known: weigh up at least twice on each side; more spots will not help.`
    : first;
}

function figure(percent: number): string {
  return percent.toFixed(1);
}
