import { type Block, list, type Part, paragraph } from '../document/report-document.js';
import { diagnosisOf } from '../subject/comparison-row.js';
import type { ReportContext } from '../subject/report-context.js';
import { CERTAINTY_WORDS } from '../words/words.js';
import { intervalPanels } from './interval-panels.js';
import { rubOutPlanes } from './rub-out-planes.js';
import type { SectionBuilder } from './section-builder.js';

/** Size and direction of every rub-out difference, and what was found. */
export const rubOutSection: SectionBuilder = (context) => {
  const sizes = intervalPanels(context, {
    id: 'rub-out-size',
    caption:
      'Rub-out difference between the rubbed and the unrubbed area, with 95 % intervals. A dashed line is a limit.',
    quantity: 'rub-out',
    axisLabel: 'ΔE*ab',
    unit: 'ΔE*ab',
    estimate: ({ rubOut }) => rubOut,
    origin: undefined,
  });
  const blocks: (Block | undefined)[] = [sizes, rubOutPlanes(context), ...findings(context)];
  return sizes && { id: 'rub-out', heading: 'Rub-out', blocks: blocks.filter((block) => block !== undefined) };
};

/** What the rub-outs showed and on what evidence, and what would settle an open question. */
function findings({ rows }: ReportContext): Part[] {
  return rows.flatMap(({ cell: { rubOut }, package: name, paint }): Part[] => {
    if (!rubOut || (rubOut.diagnosis === 'none' && rubOut.outcome === 'meets')) return [];
    const { evidence, next, certainty } = rubOut;
    return [
      {
        kind: 'part',
        heading: `${name} in ${paint}: ${diagnosisOf(rubOut)}, ${CERTAINTY_WORDS[certainty]}`,
        blocks: [
          list(evidence.map(({ statement }) => statement)),
          ...(next.length > 0 ? [paragraph('What would settle it:'), list(next)] : []),
        ],
      },
    ];
  });
}
