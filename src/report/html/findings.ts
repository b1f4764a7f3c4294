import type { StudyResult } from '../../study/index.js';
import { comparisonRows, diagnosisOf } from '../comparison-row.js';
import { CERTAINTY_WORDS } from '../words.js';
import { element, type Markup } from './element.js';
import { sentences } from './section.js';

/** What the rub-outs showed and on what evidence, and what would settle an open question. */
export function rubOutFindings(result: StudyResult): Markup[] {
  return comparisonRows(result).flatMap(({ cell: { rubOut }, package: name, paint }) => {
    if (!rubOut || (rubOut.diagnosis === 'none' && rubOut.outcome === 'meets')) return [];
    return [
      element(
        'div',
        { class: 'finding' },
        element('h3', {}, `${name} in ${paint}: ${diagnosisOf(rubOut)}, ${CERTAINTY_WORDS[rubOut.certainty]}`),
        sentences(rubOut.evidence.map(({ statement }) => statement)),
        rubOut.next.length > 0 && [element('p', {}, 'What would settle it:'), sentences(rubOut.next)],
      ),
    ];
  });
}
