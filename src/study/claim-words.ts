import { quoteEstimate } from '../decision/internal.js';
import type { Claim, Repetition } from '../evidence/index.js';
import type { StrengthComparison } from './strength-evidence.js';

/** The thing that a claim speaks of, as a sentence begins with it. */
export function claimSubject(claim: Claim, name: string): string {
  switch (claim) {
    case 'package':
      return name;
    case 'batch':
      return `This batch of ${name}`;
    case 'mill-base':
      return `This mill base of ${name}`;
    case 'film':
      return `On these films, ${name}`;
  }
}

/** A strength with what it speaks of, its interval, what it rests on, what it proves, and what is missing. */
export function claimStatement(
  comparison: Omit<StrengthComparison, 'statement'>,
  repetitions: Readonly<Record<string, Repetition>>,
  nameOf: (id: string) => string,
  source: string | undefined,
): string {
  const { trial, reference, percent, claim, interval, joint, finding, fromHistory, shortfall } = comparison;
  const name = nameOf(trial);
  const figure = quoteEstimate({ value: percent, ...(interval && { interval }), ...(joint && { joint }) }, '%');
  const rest = repetitions[trial]?.noun ?? 'one reading';
  const history =
    fromHistory.length > 0 ? `, scatter of ${fromHistory.join(' and ')} from ${source ?? 'the history'}` : '';
  const against =
    finding === 'undecided' ? `not shown to differ from ${nameOf(reference)}` : `${finding} than ${nameOf(reference)}`;
  const verdict = claim === 'film' || !(joint ?? interval) ? '' : `; ${against}`;
  const remedy = shortfall ? ` ${shortfall.remedy}` : '';
  return `${claimSubject(claim, name)}: ${figure}, ${rest}${history}${verdict}.${remedy}`;
}
