import type { Outcome } from '../../decision/index.js';
import { element, type Markup } from '../markup/element.js';
import { OUTCOME_WORDS } from '../words/words.js';

const SIGNS: Readonly<Record<Outcome, string>> = { meets: '✓', fails: '✗', undecided: '?' };

/** An outcome as a word with a sign before it; the colour only repeats it. */
export function outcomeMark(outcome: Outcome): Markup {
  return element(
    'span',
    { class: `outcome ${outcome}` },
    element('span', { 'aria-hidden': 'true' }, `${SIGNS[outcome]} `),
    OUTCOME_WORDS[outcome],
  );
}
