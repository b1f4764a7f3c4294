import type { StudyResult } from '../../study/index.js';
import { CAUTIONS } from '../cautions.js';
import { seriesStyles } from '../figures/series-style.js';
import { tieUnits } from '../format.js';
import { rankingSentences } from '../ranking-sentences.js';
import { colourTable } from './colour-table.js';
import { comparisonTable } from './comparison-table.js';
import { compatibilityMatrix } from './compatibility-matrix.js';
import { criteriaTable } from './criteria-table.js';
import { seriesFigures } from './curve-figures.js';
import { type Child, element, type Markup } from './element.js';
import { rubOutFindings } from './findings.js';
import { criterionSpreadTable, curveTable, furtherFiguresTable, letDownTable } from './further-tables.js';
import { rubOutSizeFigure, strengthFigure } from './interval-figures.js';
import { methodSection, notesSection } from './method.js';
import { packageKey } from './package-key.js';
import { plates } from './plates.js';
import { rubOutFigure } from './rub-out-figure.js';
import { section, sentences } from './section.js';
import { STYLE } from './style.js';

/**
 * The comparison as one HTML file to be handed over: the answer first, then the tables, figures, method, notes and cautions.
 *
 * The file holds everything it shows: no script, no font, no picture from elsewhere. It follows the reader's light or dark
 * setting, fits a phone, and prints on A4. Every text of the study is shown as text.
 *
 * @param result - as `evaluateStudy` gives it
 * @returns a complete HTML document
 * @example
 * const values = Array.from({ length: 31 }, (_, i) => 0.2 + 0.01 * i);
 * const spectrum = createSpectrum({ start: 400, step: 10, values, scale: 'fraction' });
 * const study = parseStudy({
 *   title: 'An invented tint',
 *   viewing: { illuminant: 'D65', observer: '10' },
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
export function renderHtml(result: StudyResult): string {
  return `<!DOCTYPE html>\n${page(result).markup}\n`;
}

function page(result: StudyResult): Markup {
  return element(
    'html',
    { lang: 'en' },
    element(
      'head',
      {},
      element('meta', { charset: 'utf-8' }),
      element('meta', { name: 'viewport', content: 'width=device-width, initial-scale=1' }),
      element('meta', { name: 'color-scheme', content: 'light dark' }),
      element('title', {}, result.title),
      element('style', {}, { markup: STYLE }),
    ),
    element('body', {}, head(result), element('main', {}, parts(result)), foot()),
  );
}

function head({ title, note }: StudyResult): Markup {
  return element('header', {}, element('h1', {}, title), note !== undefined && element('p', { class: 'note' }, note));
}

function parts(result: StudyResult): Child[] {
  const styles = seriesStyles(result.packages);
  const judged = result.cells.some(({ judgements }) => judgements.length > 0);
  const strength = strengthFigure(result, styles);
  const rubbed = result.cells.some(({ rubOut }) => rubOut !== undefined);
  const findings = rubOutFindings(result);
  const curves = [...seriesFigures(result, styles), curveTable(result)];
  const further = [letDownTable(result), furtherFiguresTable(result), criterionSpreadTable(result)];
  return [
    section('answer', 'Answer', element('p', { class: 'answer' }, tieUnits(result.recommendation.statement))),
    section('comparison', 'Comparison', comparisonTable(result), sentences(rankingSentences(result))),
    judged && section('criteria', 'Criteria', criteriaTable(result)),
    result.paints.length > 1 && section('compatibility', 'Compatibility', compatibilityMatrix(result)),
    section('packages', 'Packages and their marks', packageKey(result, styles)),
    strength !== undefined && section('strength', 'Strength', strength),
    rubbed && section('rub-out', 'Rub-out', rubOutSizeFigure(result, styles), rubOutFigure(result, styles), findings),
    section('colours', 'Colours', colourTable(result)),
    curves.some((part) => part !== undefined) && section('curves', 'Grinding time and dosage', curves),
    section('plates', 'Swatches and curves', plates(result)),
    further.some((part) => part !== undefined) && section('further', 'Further figures', further),
    methodSection(result),
    notesSection(result),
    section('cautions', 'Cautions', sentences(CAUTIONS)),
  ];
}

function foot(): Markup {
  return element(
    'footer',
    {},
    'Made with tintladder. Swatches are for orientation: screens and printers change colours.',
  );
}
