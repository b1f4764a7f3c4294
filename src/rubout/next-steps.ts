import type { Outcome } from '../decision/index.js';
import { isPossible, type RubOutCause, type WeighedCause } from './rub-out-cause.js';
import type { RubOutFinding } from './rub-out-result.js';

/** What is open after an assessment. */
export interface OpenQuestions {
  readonly outcome: Outcome;
  readonly finding: RubOutFinding;
  readonly causes: readonly WeighedCause[];
  /** Whether anything shows the scatter of a reading. */
  readonly scatterKnown: boolean;
  readonly whiteKnown: boolean;
  readonly spots: number;
  readonly drawdowns: number;
  readonly unevenRubbed: boolean;
  /** Where a spot stands out. */
  readonly faults: readonly string[];
}

/** Spots per area from which the interval gets little narrower for each spot more. */
const ENOUGH_SPOTS = 5;

/**
 * What would settle an open question, first things first. A film that meets its limit with no difference shown needs nothing; one that fails has
 * always something.
 */
export function nextSteps(open: OpenQuestions): string[] {
  const { outcome, finding, causes, scatterKnown, whiteKnown, spots, drawdowns, unevenRubbed, faults } = open;
  const steps: string[] = [];
  for (const path of faults) steps.push(`Read ${path} again: it lies far from the other spots.`);
  if (!scatterKnown) {
    steps.push('Read at least three spots of both areas, or state the precision of a spot: one spot shows no scatter.');
  } else if (outcome === 'undecided' || finding === 'open') {
    steps.push(
      spots < ENOUGH_SPOTS
        ? `Read at least ${ENOUGH_SPOTS} spots of both areas: the interval is too wide to decide.`
        : `Rub out at least ${Math.max(drawdowns + 2, 3)} drawdowns: more spots of one film would not narrow the interval much.`,
    );
  }
  if (unevenRubbed) {
    steps.push(
      'Rub out again by a controlled shear, such as a brush or a fixed number of strokes: the spots of the rubbed area differ, and rubbing by finger varies widely between operators (ASTM D5326).',
    );
  }
  const possible = causes.filter(isPossible);
  if (possible.length > 0 && !whiteKnown) {
    steps.push(
      'Read the white base without colorant: in a pale tint its own absorption can’t be told from the colorant’s.',
    );
  }
  for (const { check } of possible) steps.push(check);
  const unweighed = causes.find(({ cause, standing }) => cause === THICKNESS && standing === 'not-weighed');
  if (unweighed && possible.length > 0) steps.push(unweighed.check);
  if (possible.length === 0 && (outcome === 'fails' || causes.length > 0)) {
    steps.push(
      'Compare gloss and thickness of both areas, and repeat drawdown and rub-out: no single cause accounts for the change.',
    );
  }
  if (outcome === 'fails' && drawdowns < 2) {
    steps.push('Rub out further drawdowns of the same paint: this result speaks of one film.');
  }
  return [...new Set(steps)];
}

const THICKNESS: RubOutCause = 'thickness-changed';
