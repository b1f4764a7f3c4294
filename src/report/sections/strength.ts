import { CRITERION_WORDS } from '../words/words.js';
import { intervalPanels } from './interval-panels.js';
import type { SectionBuilder } from './section-builder.js';

/** Strength of every package with its interval, compared with the 100 % of the reference. */
export const strengthSection: SectionBuilder = (context) => {
  const charts = intervalPanels(context, {
    id: 'strength',
    caption: `Relative tinting strength with 95 % intervals, by ${CRITERION_WORDS[context.result.method.strengthCriterion]}. The solid line is the reference, a dashed line a limit.`,
    quantity: 'strength',
    axisLabel: 'Strength, %',
    unit: '%',
    estimate: ({ strength }) => strength,
    origin: { value: 100, label: 'reference, 100 %', kind: 'reference' },
  });
  return charts && { id: 'strength', heading: 'Strength', blocks: [charts] };
};
