import type { Block } from '../document/report-document.js';
import { intervalPanels } from './interval-panels.js';
import { rubOutPlanes } from './rub-out-planes.js';
import type { SectionBuilder } from './section-builder.js';

/** Size and direction of every rub-out difference. */
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
  const blocks: (Block | undefined)[] = [sizes, rubOutPlanes(context)];
  return sizes && { id: 'rub-out', heading: 'Rub-out', blocks: blocks.filter((block) => block !== undefined) };
};
