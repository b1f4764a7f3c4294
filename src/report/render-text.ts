import { assertFlag, assertOptions, assertPositive } from '../core/internal.js';
import type { StudyResult } from '../study/index.js';
import { REPORT_OPTIONS, type ReportOptions, studyDocument } from './sections/study-document.js';
import { textPage } from './text/text-page.js';

/** How the text is laid out. */
export interface RenderTextOptions extends ReportOptions {
  /** @default 'short' */
  readonly report?: ReportOptions['report'] | undefined;
  /** Columns of the terminal. @default 100 */
  readonly width?: number | undefined;
  /** Whether outcomes and headings are coloured with terminal escapes. @default false */
  readonly colour?: boolean | undefined;
}

/**
 * The comparison as text for a terminal: the answer, the aligned table with units, the criteria that are not met, the order.
 *
 * Where the table is wider than the terminal, each package is shown as a list of its figures.
 *
 * @param result - as `evaluateStudy` gives it
 * @param options - width and colour
 * @returns lines that end with a line feed
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
 * renderText(result, { width: 80 }).split('\n')[0] // 'An invented tint'
 */
export function renderText(result: StudyResult, options: RenderTextOptions = {}): string {
  assertOptions(options, [...REPORT_OPTIONS, 'width', 'colour']);
  const { width = 100, colour = false, report = 'short', identity } = options;
  assertPositive({ width });
  assertFlag(colour, 'options.colour');
  return textPage(studyDocument(result, { report, identity }), { width, colour });
}
