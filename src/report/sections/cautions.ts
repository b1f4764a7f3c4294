import { list } from '../document/report-document.js';
import type { SectionBuilder } from './section-builder.js';

const CAUTIONS: readonly string[] = [
  'A strength belongs to its criterion, its surface correction and its viewing condition; figures found under other conditions must not be set beside these.',
  'The causes that a rub-out leaves in question are indications from colour alone. Confirm it under the microscope or by flow-point tests before acting on it.',
  'The outcomes compare figures with the limits this study was given. Labelling and compliance are decided by the local rules and the people licensed to decide them; handle additives and solvents by their safety data sheets.',
];

/** What every report says about its own limits. */
export const cautionsSection: SectionBuilder = () => ({
  id: 'cautions',
  heading: 'Cautions',
  forTheRecord: true,
  blocks: [list(CAUTIONS)],
});
