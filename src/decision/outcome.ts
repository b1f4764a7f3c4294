import { assertNonEmptyArray, assertOneOf } from '../core/internal.js';

/** What a figure with its interval says about a limit. */
export const OUTCOMES = ['meets', 'fails', 'undecided'] as const;

/** One of {@link OUTCOMES}. */
export type Outcome = (typeof OUTCOMES)[number];

/**
 * The worst of several outcomes: one that fails decides, and one that is undecided keeps the whole undecided.
 *
 * @param outcomes - at least one
 * @returns `fails` if any fails, otherwise `undecided` if any is undecided, otherwise `meets`
 * @throws TintladderError `wrong-type`, `invalid-option` for what is no list of outcomes; `empty` without any outcome, since nothing that was not judged meets a limit
 * @example worstOutcome(['meets', 'undecided', 'meets']) // 'undecided'
 */
export function worstOutcome(outcomes: readonly Outcome[]): Outcome {
  assertNonEmptyArray(outcomes, 'outcomes');
  outcomes.forEach((outcome, i) => {
    assertOneOf(outcome, OUTCOMES, `outcomes[${i}]`);
  });
  return outcomes.includes('fails') ? 'fails' : outcomes.includes('undecided') ? 'undecided' : 'meets';
}
