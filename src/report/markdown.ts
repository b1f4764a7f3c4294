import { describeViewing } from '../colorimetry/index.js';
import { describeGrid } from '../colorimetry/internal.js';
import type { StudyResult } from '../study/index.js';
import { CAUTIONS } from './cautions.js';
import { comparisonRows, diagnosisWords } from './comparison-row.js';
import { criterionGroups } from './criterion-group.js';
import { criterionSpreads, SPREAD_HEADINGS } from './criterion-spread.js';
import { estimateWords, intervalWords, valueWords } from './estimate-words.js';
import { FURTHER_HEADINGS, furtherFigures } from './further-figures.js';
import { limitWords } from './limit-words.js';
import { namesOf } from './names.js';
import { rankingSentences } from './ranking-sentences.js';
import { CRITERION_WORDS, OUTCOME_WORDS } from './words.js';

/**
 * The comparison as Markdown with tables, for a notebook, a wiki or a merge request: the answer first, then comparison,
 * criteria, order, method, notes and cautions.
 *
 * @param result - as `evaluateStudy` gives it
 * @returns Markdown (CommonMark with the usual pipe tables)
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
 * renderMarkdown(result).split('\n')[0] // '# An invented tint'
 */
export function renderMarkdown(result: StudyResult): string {
  const { title, note, recommendation, method } = result;
  const notes = result.warnings.map(({ message, path }) => (path ? `${path}: ${message}` : message));
  const blocks = [
    `# ${escapeMarkdown(title)}`,
    note && `*${escapeMarkdown(note)}*`,
    `**${escapeMarkdown(recommendation.statement)}**`,
    `## Comparison`,
    comparisonTable(result),
    `## Criteria`,
    ...criteriaTables(result),
    ...spreadTable(result),
    ...furtherTable(result),
    `## Order of the packages`,
    list(rankingSentences(result)),
    `## Method`,
    list([
      `Viewing ${describeViewing(method.viewing)}; readings ${describeGrid(method.grid)}; strength by ${CRITERION_WORDS[method.strengthCriterion]}.`,
      ...method.statements,
    ]),
    notes.length > 0 && `## Notes`,
    notes.length > 0 && list(notes),
    `## Cautions`,
    list(CAUTIONS),
  ];
  return `${blocks.filter((block) => typeof block === 'string' && block !== '').join('\n\n')}\n`;
}

function comparisonTable(result: StudyResult): string {
  const header = [
    'Paint',
    'Package',
    'Strength, % (95 % interval)',
    'Residual ΔE00',
    'Rub-out ΔE*ab (95 % interval)',
    'Diagnosis',
    'Outcome',
  ];
  const rows = comparisonRows(result).map((row) => [
    row.paint,
    row.package,
    row.isReference ? '100 (reference)' : estimateWords(row.strength, '%'),
    valueWords(row.residual, 'ΔE00'),
    estimateWords(row.rubOut, 'ΔE*ab'),
    diagnosisWords(row),
    OUTCOME_WORDS[row.outcome],
  ]);
  return table(header, rows);
}

function criteriaTables(result: StudyResult): string[] {
  const names = namesOf(result);
  return criterionGroups(result).flatMap(({ heading, limit, unit, reason, bound, entries }) => [
    escapeMarkdown(`${heading}: ${limitWords(limit, unit)}. ${reason}`),
    table(
      [
        'Package',
        'Paint',
        unit === '' ? 'Value' : `Value, ${unit}`,
        '95 % interval',
        'Outcome',
        'Readings a side to decide',
      ],
      entries.map(({ package: id, judgement }) => [
        names.package(id),
        judgement.paint === undefined ? 'all' : names.paint(judgement.paint),
        valueWords(judgement.value, unit, bound),
        intervalWords(judgement.interval, unit, bound),
        OUTCOME_WORDS[judgement.outcome],
        judgement.readingsNeeded === undefined ? '–' : String(judgement.readingsNeeded),
      ]),
    ),
  ]);
}

function spreadTable(result: StudyResult): string[] {
  const rows = criterionSpreads(result).map(({ paint, package: name, strengths }) => [paint, name, ...strengths]);
  if (rows.length === 0) return [];
  return ['## Strength by each criterion, %', table(['Paint', 'Package', ...SPREAD_HEADINGS], rows)];
}

function furtherTable(result: StudyResult): string[] {
  const rows = furtherFigures(result);
  return rows.length === 0 ? [] : ['## Further figures', table(FURTHER_HEADINGS, rows)];
}

function table(header: readonly string[], rows: readonly (readonly string[])[]): string {
  const line = (cells: readonly string[]) => `| ${cells.map(escapeMarkdown).join(' | ')} |`;
  return [line(header), `| ${header.map(() => '---').join(' | ')} |`, ...rows.map(line)].join('\n');
}

function list(items: readonly string[]): string {
  return items.map((item) => `- ${escapeMarkdown(item)}`).join('\n');
}

/** Text that Markdown shows as it is: no markup, no HTML, no link, one line. */
export function escapeMarkdown(text: string): string {
  return text
    .replace(/[\p{Cc}\p{Cs}\u2028-\u202e\u2066-\u2069]+/gu, ' ')
    .replace(/[\\`*_{}[\]<>#|~&$@]/g, '\\$&')
    .replace(/:(?=\/\/)/g, '\\:')
    .replace(/\bwww\./gi, (match) => `${match.slice(0, -1)}\\.`)
    .replace(/^(\s*)([-+=])/, '$1\\$2')
    .replace(/^(\s*\d+)([.)])(?=\s|$)/, '$1\\$2');
}
