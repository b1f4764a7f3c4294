import { describeViewing } from '../../colorimetry/index.js';
import { describeGrid } from '../../colorimetry/internal.js';
import { formatCount } from '../../core/internal.js';
import { list, paragraph } from '../document/report-document.js';
import { CRITERION_WORDS } from '../words/words.js';
import type { SectionBuilder } from './section-builder.js';

/** How the figures came about. */
export const methodSection: SectionBuilder = ({ result: { method, cells } }) => {
  const { viewing, grid, strengthCriterion, whiteSubtracted, statements } = method;
  const readings = cells.reduce((sum, { replicates }) => sum + replicates.unrubbed + replicates.rubbed, 0);
  return {
    id: 'method',
    heading: 'Method',
    blocks: [
      paragraph(
        `Viewing condition ${describeViewing(viewing)}; readings ${describeGrid(grid)}; strength by ${CRITERION_WORDS[strengthCriterion]}, white base ${whiteSubtracted ? 'subtracted' : 'not subtracted'}; ${formatCount(readings, 'reading')} of tints in the comparison.`,
      ),
      list(statements),
    ],
  };
};
