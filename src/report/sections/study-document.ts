import { assertOneOf } from '../../core/internal.js';
import type { StudyResult } from '../../study/index.js';
import type { ReportDocument } from '../document/report-document.js';
import { assertStudyResult } from '../subject/assert-study-result.js';
import { reportContext } from '../subject/report-context.js';
import { assertIdentity, type ReportIdentity } from '../subject/report-identity.js';
import { answerSection } from './answer.js';
import { cautionsSection } from './cautions.js';
import { claimsSection } from './claims.js';
import { furtherSection } from './further.js';
import { identitySection } from './identity.js';
import { limitsSection } from './limits.js';
import { marksSection } from './marks.js';
import { methodSection } from './method.js';
import { nextSection } from './next.js';
import { notesSection } from './notes.js';
import { orderSection } from './order.js';
import { overviewSection } from './overview.js';
import { packageDetails } from './package-details.js';
import { platesSection } from './plates.js';
import { rubOutSection } from './rub-out.js';
import type { SectionBuilder } from './section-builder.js';
import { seriesSection } from './series.js';
import { storageSection } from './storage.js';
import { strengthSection } from './strength.js';

/** How much a report holds: what decides, or everything. */
export const REPORT_LENGTHS = ['short', 'full'] as const;

/** One of {@link REPORT_LENGTHS}. */
export type ReportLength = (typeof REPORT_LENGTHS)[number];

/** What a report is asked for. */
export interface ReportOptions {
  /** `short`: overview, what to make next, limits, order and notes; `full`: everything. @default 'full' */
  readonly report?: ReportLength | undefined;
  /** What is printed of where the report comes from; the report looks nothing up, not even the date. */
  readonly identity?: ReportIdentity | undefined;
}

/** The names of {@link ReportOptions}. */
export const REPORT_OPTIONS = ['report', 'identity'] as const;

/** The sections in their order, with the shortest report that holds them. A new kind of result is a file and a line here. */
const SECTIONS: readonly (readonly [SectionBuilder, ReportLength])[] = [
  [overviewSection, 'short'],
  [nextSection, 'short'],
  [limitsSection, 'short'],
  [orderSection, 'short'],
  [answerSection, 'full'],
  [marksSection, 'full'],
  [strengthSection, 'full'],
  [claimsSection, 'full'],
  [rubOutSection, 'full'],
  [seriesSection, 'full'],
  [storageSection, 'full'],
  [packageDetails, 'full'],
  [platesSection, 'full'],
  [furtherSection, 'full'],
  [methodSection, 'full'],
  [notesSection, 'short'],
  [cautionsSection, 'short'],
  [identitySection, 'short'],
];

/**
 * The report on a comparison as a document, which every form of the report renders.
 *
 * @throws TintladderError `wrong-type`, `invalid-option`
 */
export function studyDocument(result: StudyResult, { report = 'full', identity }: ReportOptions = {}): ReportDocument {
  assertStudyResult(result);
  assertOneOf(report, REPORT_LENGTHS, 'options.report');
  if (identity !== undefined) assertIdentity(identity, 'options.identity');
  const context = reportContext(result, identity);
  const chosen = SECTIONS.filter(([, shortest]) => report === 'full' || shortest === 'short');
  return {
    title: result.title,
    note: result.note,
    answer: result.recommendation.headline,
    sections: chosen.flatMap(([build]) => build(context) ?? []),
    closing: 'Made with tintladder. Swatches are for orientation: screens and printers change colours.',
  };
}
