import { formatLimit } from '../../decision/internal.js';
import { list } from '../document/report-document.js';
import type { SectionBuilder } from './section-builder.js';

/** The limits of the study and why they are set. */
export const limitsSection: SectionBuilder = ({ criteria }) => {
  if (criteria.length === 0) return undefined;
  const texts = criteria.map(
    ({ heading, limit, unit, reason }) => `${heading}: ${formatLimit(limit, unit)}. ${reason}`,
  );
  return { id: 'limits', heading: 'Limits', blocks: [list(texts)] };
};
