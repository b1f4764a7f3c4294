import type { Outcome } from '../../decision/index.js';
import type { StudyResult } from '../../study/index.js';
import { type ComparisonRow, comparisonRows, diagnosisWords, type Estimate } from '../comparison-row.js';
import { criterionGroups } from '../criterion-group.js';
import { criterionSpreads, SPREAD_HEADINGS } from '../criterion-spread.js';
import { estimateWords, valueWords } from '../estimate-words.js';
import { tieUnits, withUnit } from '../format.js';
import { limitWords } from '../limit-words.js';
import { namesOf } from '../names.js';
import { rankingSentences } from '../ranking-sentences.js';
import { shorten } from '../shorten.js';
import { OUTCOME_WORDS } from '../words.js';
import { displayWidth, plainText, wrap } from './plain-text.js';
import { type TextStyle, textStyle } from './text-style.js';
import { type TextColumn, tableWidth, textTable } from './text-table.js';

/** How the text is laid out. */
export interface RenderTextOptions {
  /** Columns of the terminal. @default 100 */
  readonly width?: number;
  /** Whether outcomes and headings are coloured with terminal escapes. @default false */
  readonly colour?: boolean;
}

/**
 * The comparison as text for a terminal: the answer, the aligned table with units, the criteria that are not met, the order.
 *
 * Where the table is wider than the terminal, each package is shown as a list of its figures.
 *
 * @param result - as `evaluateStudy` gives it
 * @param options - width and colour
 * @returns lines that end with a line feed
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
 * renderText(result, { width: 80 }).split('\n')[0] // 'An invented tint'
 */
export function renderText(result: StudyResult, { width = 100, colour = false }: RenderTextOptions = {}): string {
  const style = textStyle(colour);
  const room = Math.max(30, width);
  const lines = [
    ...wrap(plainText(result.title), room).map(style.bold),
    ...(result.note === undefined ? [] : wrap(plainText(result.note), room).map(style.faint)),
    '',
    ...wrap(tieUnits(plainText(result.recommendation.statement)), room),
    '',
    ...comparison(result, room, style),
    ...byEveryCriterion(result, room),
    ...openCriteria(result, room, style),
    '',
    ...rankingSentences(result).flatMap((sentence) => wrap(plainText(sentence), room)),
    ...result.warnings.flatMap(({ message, path }) =>
      wrap(plainText(`Note: ${path === undefined ? '' : `${path}: `}${message}`), room).map(style.faint),
    ),
  ];
  return `${lines.join('\n')}\n`;
}

const COLUMNS: readonly TextColumn[] = [
  { heading: 'Package', side: 'right' },
  { heading: 'Strength, %', side: 'left' },
  { heading: 'Residual\nΔE00', side: 'left' },
  { heading: 'Rub-out\nΔE*ab', side: 'left' },
  { heading: 'Outcome', side: 'right' },
  { heading: 'Diagnosis of the rub-out', side: 'right' },
];
const NARROW = COLUMNS.slice(0, -1);
/** A name cut shorter than this says too little. */
const SHORTEST_NAME = 12;

/** The comparison paint by paint, as wide as the terminal allows: with the diagnoses beside it, below it, or as a list. */
function comparison(result: StudyResult, width: number, style: TextStyle): string[] {
  const rows = comparisonRows(result);
  const cells = rows.map((row) =>
    [
      row.package,
      row.isReference ? '100 (reference)' : estimateText(row.strength, '%'),
      valueWords(row.residual, 'ΔE00'),
      estimateText(row.rubOut, 'ΔE*ab'),
      OUTCOME_WORDS[row.outcome],
      diagnosisWords(row),
    ].map(plainText),
  );
  const wide = tableWidth(COLUMNS, cells) <= width;
  const columns = wide ? COLUMNS : NARROW;
  const fitted = withNamesCut(columns, cells, width);
  if (!fitted) return rows.flatMap((row, i) => asList(row, cells[i], width, style));
  const lines = textTable(columns, fitted);
  const heading = lines.slice(0, -rows.length);
  const body = lines.slice(-rows.length);
  return [
    ...heading.slice(0, -1).map(style.bold),
    heading[heading.length - 1],
    ...rows.flatMap((row, i) => [
      ...(row.cell.paint === rows[i - 1]?.cell.paint ? [] : [...(i > 0 ? [''] : []), style.bold(plainText(row.paint))]),
      markOutcome(body[i], row.outcome, fitted[i], style),
    ]),
    '',
    style.faint('In brackets: 95 % interval.'),
    ...(wide ? [] : rows.flatMap((row) => diagnosisLines(row, width))),
  ];
}

/** Value and interval, with a dash in between where no minus sign could be misread for it. */
function estimateText(estimate: Estimate | undefined, unit: string): string {
  const words = estimateWords(estimate, unit);
  return estimate?.interval && estimate.interval.low >= 0 ? words.replace(' to ', '–') : words;
}

/** Rows whose names are cut to fit the terminal; undefined where they would be too short or alike. */
function withNamesCut(
  columns: readonly TextColumn[],
  cells: readonly (readonly string[])[],
  width: number,
): readonly (readonly string[])[] | undefined {
  const longest = Math.max(...cells.map(([name]) => displayWidth(name)));
  const room = longest - Math.max(0, tableWidth(columns, cells) - width);
  if (room >= longest) return cells;
  if (room < SHORTEST_NAME) return undefined;
  const cut = cells.map(([name, ...rest]) => [shorten(name, room), ...rest]);
  const count = (rows: readonly (readonly string[])[]) => new Set(rows.map(([name]) => name)).size;
  return count(cut) === count(cells) ? cut : undefined;
}

/** Marks the outcome on a line of the table; the diagnosis after it can't hold the same word before it. */
function markOutcome(line: string, outcome: Outcome, cells: readonly string[], style: TextStyle): string {
  const word = OUTCOME_WORDS[outcome];
  // behind the name, which may hold any word
  const at = line.indexOf(`  ${word}`, cells[0].length) + 2;
  return line.slice(0, at) + style.outcome(word, outcome) + line.slice(at + word.length);
}

function diagnosisLines(row: ComparisonRow, width: number): string[] {
  if (row.certainty === undefined) return [];
  return wrap(plainText(`${row.package} in ${row.paint}: ${diagnosisWords(row)}.`), width);
}

function asList(row: ComparisonRow, cells: readonly string[], width: number, style: TextStyle): string[] {
  const [name, ...figures] = cells;
  return [
    ...wrap(`${name} in ${plainText(row.paint)}`, width).map(style.bold),
    ...figures.flatMap((figure, i) => {
      const heading = COLUMNS[i + 1].heading.replace('\n', ' ');
      if (heading === 'Outcome') return [`  ${heading}: ${style.outcome(figure, row.outcome)}`];
      return wrap(`${heading}: ${figure}`, width, '  ');
    }),
    '',
  ];
}

/** Strength by every criterion for the recommended package, so that nobody takes one figure for the only one. */
function byEveryCriterion(result: StudyResult, width: number): string[] {
  const spread = criterionSpreads(result).find(({ cell }) => cell.package === result.recommendation.package);
  if (!spread) return [];
  const figures = SPREAD_HEADINGS.map((heading, i) => `${heading} ${spread.strengths[i]}`).join(', ');
  return ['', ...wrap(plainText(`${spread.package} in ${spread.paint} by every criterion, %: ${figures}.`), width)];
}

/** The judgements that keep a package from being recommended. */
function openCriteria(result: StudyResult, width: number, style: TextStyle): string[] {
  const names = namesOf(result);
  const lines = criterionGroups(result).flatMap(({ heading, limit, unit, bound, entries }) =>
    entries
      .filter(({ judgement }) => judgement.outcome !== 'meets')
      .flatMap(({ package: id, judgement }) => {
        const { outcome, paint, readingsNeeded } = judgement;
        const where = paint === undefined ? '' : ` in ${names.paint(paint)}`;
        const more = readingsNeeded === undefined ? '' : `; about ${readingsNeeded} readings a side would decide it`;
        const sentence = `${names.package(id)}${where} ${outcome === 'fails' ? 'fails' : 'is undecided'}: ${heading} ${withUnit(estimateWords(judgement, unit, bound), unit)} against ${limitWords(limit, unit)}${more}.`;
        return wrap(plainText(sentence), width, '  ').map((line) => style.outcome(line, outcome));
      }),
  );
  return lines.length === 0 ? [] : ['', style.bold('Not met or undecided'), ...lines];
}
