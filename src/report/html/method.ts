import { describeViewing } from '../../colorimetry/index.js';
import { describeGrid } from '../../colorimetry/internal.js';
import type { StudyResult } from '../../study/index.js';
import { formatCount } from '../format.js';
import { CRITERION_WORDS } from '../words.js';
import type { Markup } from './element.js';
import { paragraph, section, sentences } from './section.js';

/** How the figures came about. */
export function methodSection({ method, cells }: StudyResult): Markup {
  const { viewing, grid, strengthCriterion, whiteSubtracted, statements } = method;
  const readings = cells.reduce((sum, { replicates }) => sum + replicates.unrubbed + replicates.rubbed, 0);
  return section(
    'method',
    'Method',
    paragraph(
      `Viewing condition ${describeViewing(viewing)}; readings ${describeGrid(grid)}; strength by ${CRITERION_WORDS[strengthCriterion]}, `,
      `white base ${whiteSubtracted ? 'subtracted' : 'not subtracted'}; ${formatCount(readings, 'reading')} of tints in the comparison.`,
    ),
    sentences(statements),
  );
}

/** What a reader must know beside the figures: assumptions, oddities, readings that nothing used. */
export function notesSection({ warnings, unusedReadings }: StudyResult): Markup | undefined {
  const notes = warnings.map(({ message, path }) => (path === undefined ? message : `${path}: ${message}`));
  // the list in full: the note of the study names the first ones only
  if (unusedReadings.length > 10) notes.push(`All readings that no rule claims: ${unusedReadings.join(', ')}.`);
  return notes.length === 0 ? undefined : section('notes', 'Notes', sentences(notes));
}
