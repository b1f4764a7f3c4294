import type { Section } from '../document/report-document.js';
import type { ReportContext } from '../subject/report-context.js';

/** Makes a section of a report, or several of one kind; undefined where the study has nothing for it. */
export type SectionBuilder = (context: ReportContext) => Section | readonly Section[] | undefined;
