import { list, type Part } from '../document/report-document.js';
import { type ComparisonRow, diagnosisOf } from '../subject/comparison-row.js';
import { CERTAINTY_WORDS } from '../words/words.js';

/** What the rub-outs showed and on what evidence; what would settle an open question stands with what to make next. */
export function rubOutFindings(rows: readonly ComparisonRow[]): Part[] {
  return rows.flatMap(({ cell: { rubOut }, paint }): Part[] => {
    if (!rubOut || (rubOut.diagnosis === 'none' && rubOut.outcome === 'meets')) return [];
    return [
      {
        kind: 'part',
        heading: `Rub-out in ${paint}: ${diagnosisOf(rubOut)}, ${CERTAINTY_WORDS[rubOut.certainty]}`,
        blocks: [list(rubOut.evidence.map(({ statement }) => statement))],
      },
    ];
  });
}
