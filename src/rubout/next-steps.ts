import type { Outcome } from '../decision/index.js';
import type { PossibleCause, RubOutCertainty, RubOutDiagnosis } from './rub-out-result.js';

/** What is open after an assessment. */
export interface OpenQuestions {
  readonly outcome: Outcome;
  readonly diagnosis: RubOutDiagnosis;
  readonly certainty: RubOutCertainty;
  readonly causes: readonly PossibleCause[];
  readonly noise: 'beyond' | 'within' | 'unknown';
  readonly replicates: { readonly unrubbed: number; readonly rubbed: number };
  readonly unevenRubbed: boolean;
}

/** Spots per side from which the interval gets little narrower for each spot more. */
const ENOUGH_SPOTS = 5;

/** What would settle an open question, first things first. A film that meets its limit with nothing found needs nothing. */
export function nextSteps(open: OpenQuestions): string[] {
  const { outcome, diagnosis, certainty, causes, noise, replicates, unevenRubbed } = open;
  const steps: string[] = [];
  const spots = Math.min(replicates.unrubbed, replicates.rubbed);
  if (noise === 'unknown') {
    steps.push(
      'Read at least three spots of both areas, or state the repeatability of a reading: one spot shows no scatter.',
    );
  } else if (outcome === 'undecided' || certainty === 'not-shown') {
    steps.push(
      spots < ENOUGH_SPOTS
        ? `Read at least ${ENOUGH_SPOTS} spots of both areas: the interval is too wide to decide.`
        : 'Repeat drawdown and rub-out: more spots of one film would not narrow the interval much.',
    );
  }
  if (unevenRubbed)
    steps.push('Rub out again, evenly and for a fixed time: the spots of the rubbed area differ among themselves.');
  for (const { check } of causes) steps.push(check);
  if (diagnosis === 'coloured-pigment-flocculated' && causes.length === 1) {
    steps.push(
      'Rub out once more after a longer flash-off: a difference that shrinks means flocculation in the drying film.',
    );
  }
  if (diagnosis === 'undetermined' && causes.length === 0) {
    steps.push('Compare the gloss of both areas, and read both with the specular reflection included and excluded.');
  }
  return steps;
}
