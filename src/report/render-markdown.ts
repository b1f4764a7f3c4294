import { assertOptions } from '../core/internal.js';
import type { StudyResult } from '../study/index.js';
import { markdownText } from './markdown/markdown-text.js';
import { REPORT_OPTIONS, type ReportOptions, studyDocument } from './sections/study-document.js';

/**
 * The comparison as Markdown with tables, for a notebook, a wiki or a merge request: the answer first, then comparison,
 * criteria, order, method, notes and cautions.
 *
 * @param result - as `evaluateStudy` gives it
 * @param options - how much the report holds, and what it prints of where it comes from
 * @returns Markdown (CommonMark with the usual pipe tables)
 * @throws TintladderError `wrong-type` for what is no result of a study; `invalid-option`
 * @example
 * const values = Array.from({ length: 31 }, (_, i) => 0.2 + 0.01 * i);
 * const spectrum = createSpectrum({ start: 400, step: 10, values, scale: 'fraction' });
 * const study = parseStudy({
 *   title: 'An invented tint',
 *   viewing: { illuminant: 'D65', observer: '10' },
 *   surface: 'none',
 *   strengthCriterion: 'absorption-maximum',
 *   reference: 'R',
 *   packages: [{ id: 'R', name: 'Package in use' }],
 *   paints: [{ id: 'W', name: 'Wall paint' }],
 *   readings: [{ names: ['tint'], package: 'R', paint: 'W' }],
 *   criteria: [{ quantity: 'strength', lower: 95, unit: '%', reason: 'No weaker than today' }],
 *   rankBy: { quantity: 'strength', best: 'highest' },
 * });
 * const result = await evaluateStudy(study, [{ name: 'tint', spectrum, conditions: {}, fields: {} }]);
 * renderMarkdown(result).split('\n')[0] // '# An invented tint'
 */
export function renderMarkdown(result: StudyResult, options: ReportOptions = {}): string {
  assertOptions(options, REPORT_OPTIONS);
  return markdownText(studyDocument(result, options));
}
