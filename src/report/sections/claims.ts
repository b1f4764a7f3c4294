import { formatFixed, formatList } from '../../core/internal.js';
import { levelNoun } from '../../evidence/index.js';
import type { PaintEvidence } from '../../study/index.js';
import { type Block, list, paragraph } from '../document/report-document.js';
import type { SectionBuilder } from './section-builder.js';

/** What each strength speaks of and what it rests on, paint by paint, with the scatter behind it and the packages that may be the best. */
export const claimsSection: SectionBuilder = ({ result: { evidence, ranking }, names }) => {
  const paints = evidence.paints.filter(({ againstReference }) => againstReference.length > 0);
  if (paints.length === 0) return undefined;
  const blocks = paints.flatMap((paint): Block[] => {
    const set = paint.notProvenWorse.map(names.package);
    const best =
      set.length > 0
        ? [`${ranking.best === 'lowest' ? 'Weakest' : 'Strongest'}, or not proven otherwise: ${formatList(set)}.`]
        : [];
    return [
      paragraph(`${names.paint(paint.paint)}. ${scatterWords(paint)}`),
      list([
        ...paint.againstReference.map(({ statement }) => statement),
        ...best,
        ...leaderWords(paint, names.package),
      ]),
    ];
  });
  return { id: 'claims', heading: 'What the strengths claim', blocks };
};

function scatterWords({ scatter }: PaintEvidence): string {
  const found = scatter.map(({ level, standardDeviation, degreesOfFreedom, sides, blocks }) => {
    const taken = blocks > 0 ? `, what ${blocks} days or sessions did to all taken out` : '';
    return `From ${levelNoun(level, 1)} to the next a strength scatters by ${formatFixed(standardDeviation, 1)} %, pooled over ${sides.length} packages on ${formatFixed(degreesOfFreedom, 0)} degrees of freedom${taken}.`;
  });
  return found.length > 0 ? found.join(' ') : 'Nothing was made anew, so today’s readings tell no scatter.';
}

/** The highest of several is likely too high. */
function leaderWords({ leader, againstReference }: PaintEvidence, nameOf: (id: string) => string): string[] {
  if (!leader || againstReference.length < 2) return [];
  const [found, expected] = [leader.percent, leader.expected].map((percent) => formatFixed(percent, 1));
  if (found === expected) return [];
  return [
    `${nameOf(leader.package)}’s ${found} % leads ${againstReference.length} packages and so is likely too far out; expect about ${expected} %.`,
  ];
}
