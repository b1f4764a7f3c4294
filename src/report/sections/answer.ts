import { paragraph } from '../document/report-document.js';
import type { SectionBuilder } from './section-builder.js';

/** The answer with its figures, and what stands against the other packages. */
export const answerSection: SectionBuilder = ({ result }) => ({
  id: 'answer',
  heading: 'The answer with its figures',
  blocks: [paragraph(result.recommendation.statement)],
});
