import type { StudyResult } from '../../study/index.js';
import type { ReportDocument } from '../document/report-document.js';
import { reportContext } from '../subject/report-context.js';
import { cautionsSection } from './cautions.js';
import { coloursSection } from './colours.js';
import { comparisonSection } from './comparison.js';
import { compatibilitySection } from './compatibility.js';
import { criteriaSection } from './criteria.js';
import { furtherSection } from './further.js';
import { methodSection } from './method.js';
import { notesSection } from './notes.js';
import { openCriteriaSection } from './open-criteria.js';
import { orderSection } from './order.js';
import { packagesSection } from './packages.js';
import { platesSection } from './plates.js';
import { rubOutSection } from './rub-out.js';
import type { SectionBuilder } from './section-builder.js';
import { seriesSection } from './series.js';
import { strengthSection } from './strength.js';

/** How much a report holds: what decides, or everything. */
export type ReportLength = 'short' | 'full';

/** The sections in their order, with the shortest report that holds them. A new kind of result is a file and a line here. */
const SECTIONS: readonly (readonly [SectionBuilder, ReportLength])[] = [
  [comparisonSection, 'short'],
  [openCriteriaSection, 'short'],
  [orderSection, 'short'],
  [criteriaSection, 'full'],
  [compatibilitySection, 'full'],
  [packagesSection, 'full'],
  [strengthSection, 'full'],
  [rubOutSection, 'full'],
  [coloursSection, 'full'],
  [seriesSection, 'full'],
  [platesSection, 'full'],
  [furtherSection, 'full'],
  [methodSection, 'full'],
  [notesSection, 'short'],
  [cautionsSection, 'full'],
];

/** The report on a comparison as a document, which every form of the report renders. */
export function studyDocument(result: StudyResult, length: ReportLength): ReportDocument {
  const context = reportContext(result);
  const { title, note, recommendation } = result;
  const chosen = SECTIONS.filter(([, shortest]) => length === 'full' || shortest === 'short');
  return {
    title,
    note,
    answer: recommendation.statement,
    sections: chosen.flatMap(([build]) => build(context) ?? []),
    closing: 'Made with tintladder. Swatches are for orientation: screens and printers change colours.',
  };
}
