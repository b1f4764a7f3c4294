import { list } from '../document/report-document.js';
import type { SectionBuilder } from './section-builder.js';

/** What a reader must know beside the figures: assumptions, oddities, readings that nothing used. */
export const notesSection: SectionBuilder = ({ result: { warnings, unusedReadings } }) => {
  const notes = warnings.map(({ message, path }) => (path === undefined ? message : `${path}: ${message}`));
  // the list in full: the note of the study names the first ones only
  if (unusedReadings.length > 10) notes.push(`All readings that no rule claims: ${unusedReadings.join(', ')}.`);
  return notes.length === 0 ? undefined : { id: 'notes', heading: 'Notes', blocks: [list(notes)] };
};
