import { assertOptions } from '../core/internal.js';
import type { StudyResult } from '../study/index.js';
import { htmlPage } from './html/html-page.js';
import { REPORT_OPTIONS, type ReportOptions, studyDocument } from './sections/study-document.js';

/**
 * The comparison as one HTML file to be handed over: the answer first, then the tables, figures, method, notes and cautions.
 *
 * The file holds everything it shows: no script, no font, no picture from elsewhere. It follows the reader's light or dark
 * setting, fits a phone, and prints on A4. Every text of the study is shown as text.
 *
 * @param result - as `evaluateStudy` gives it
 * @param options - how much the report holds, and what it prints of where it comes from
 * @returns a complete HTML document
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
 * renderHtml(result).startsWith('<!DOCTYPE html>') // true
 */
export function renderHtml(result: StudyResult, options: ReportOptions = {}): string {
  assertOptions(options, REPORT_OPTIONS);
  return htmlPage(studyDocument(result, options));
}
