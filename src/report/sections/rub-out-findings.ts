import { list, type Part, paragraph } from '../document/report-document.js';
import { type ComparisonRow, causeWords, rubOutWords } from '../subject/comparison-row.js';
import { CAUSE_STANDING_WORDS, RUB_OUT_CAUSE_WORDS } from '../words/words.js';

/** What the rub-outs showed and on what evidence; what would settle an open question stands with what to make next. */
export function rubOutFindings(rows: readonly ComparisonRow[]): Part[] {
  return rows.flatMap(({ cell: { rubOut }, paint }): Part[] => {
    if (!rubOut || (rubOut.causes.length === 0 && rubOut.outcome === 'meets')) return [];
    const { evidence, causes } = rubOut;
    const named = causeWords(rubOut);
    const standings = causes.map(
      ({ cause, standing, reason }) => `${RUB_OUT_CAUSE_WORDS[cause]}: ${CAUSE_STANDING_WORDS[standing]}. ${reason}`,
    );
    return [
      {
        kind: 'part',
        heading: `Rub-out in ${paint}: ${rubOutWords(rubOut)}${named === undefined ? '' : `; ${named}`}`,
        blocks: [
          list(evidence.map(({ statement }) => statement)),
          ...(standings.length > 0 ? [paragraph('How each cause stands:'), list(standings)] : []),
        ],
      },
    ];
  });
}
