import type { Outcome } from '../../rubout/index.js';
import type { StudyResult } from '../../study/index.js';
import { comparisonRows } from '../comparison-row.js';
import { criterionGroups } from '../criterion-group.js';
import { estimateWords, valueWords } from '../estimate-words.js';
import { limitWords } from '../limit-words.js';
import { namesOf } from '../names.js';
import { rankingSentences } from '../ranking-sentences.js';
import { OUTCOME_WORDS } from '../words.js';
import { displayWidth, plainText, wrap } from './plain-text.js';
import { type TextStyle, textStyle } from './text-style.js';
import { type TextColumn, textTable } from './text-table.js';

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
 */
export function renderText(result: StudyResult, { width = 100, colour = false }: RenderTextOptions = {}): string {
  const style = textStyle(colour);
  const room = Math.max(30, width);
  const lines = [
    ...wrap(plainText(result.title), room).map(style.bold),
    ...(result.note === undefined ? [] : wrap(plainText(result.note), room).map(style.faint)),
    '',
    ...wrap(plainText(result.recommendation.statement), room),
    '',
    ...comparison(result, room, style),
    ...openCriteria(result, room, style),
    '',
    ...rankingSentences(result).flatMap((sentence) => wrap(plainText(sentence), room)),
    ...result.warnings.flatMap(({ message, place }) =>
      wrap(plainText(`Note: ${place === undefined ? '' : `${place}: `}${message}`), room).map(style.faint),
    ),
  ];
  return `${lines.join('\n')}\n`;
}

const COLUMNS: readonly TextColumn[] = [
  { heading: 'Paint', side: 'right' },
  { heading: 'Package', side: 'right' },
  { heading: 'Strength, %', side: 'left' },
  { heading: 'Residual ΔE00', side: 'left' },
  { heading: 'Rub-out ΔE*ab', side: 'left' },
  { heading: 'Diagnosis', side: 'right' },
  { heading: 'Outcome', side: 'right' },
];

function comparison(result: StudyResult, width: number, style: TextStyle): string[] {
  const rows = comparisonRows(result);
  const cells = rows.map((row) => [
    row.paint,
    row.package,
    row.isReference ? '100 (reference)' : estimateWords(row.strength, '%'),
    valueWords(row.residual, 'ΔE00'),
    estimateWords(row.rubOut, 'ΔE*ab'),
    row.diagnosis ?? '–',
    OUTCOME_WORDS[row.outcome],
  ]);
  const outcomes = rows.map(({ outcome }) => outcome);
  const table = textTable(
    COLUMNS,
    cells.map((row) => row.map(plainText)),
  );
  const [heading, rule, ...body] = table;
  if (displayWidth(heading) > width) return cells.flatMap((row, i) => asList(row.map(plainText), outcomes[i], style));
  return [
    style.bold(heading),
    rule,
    ...body.map((line, i) => markEnd(line, cells[i][6], outcomes[i], style)),
    style.faint('In brackets: 95 % interval.'),
  ];
}

/** The outcome is the last thing on its line, so it can be marked without disturbing the columns. */
function markEnd(line: string, word: string, outcome: Outcome, style: TextStyle): string {
  const end = line.lastIndexOf(word);
  return line.slice(0, end) + style.outcome(word, outcome) + line.slice(end + word.length);
}

function asList(cells: readonly string[], outcome: Outcome, style: TextStyle): string[] {
  const [paint, name, ...figures] = cells;
  return [
    style.bold(`${name} in ${paint}`),
    ...figures.map((figure, i) => {
      const shown = i === figures.length - 1 ? style.outcome(figure, outcome) : figure;
      return `  ${COLUMNS[i + 2].heading}: ${shown}`;
    }),
    '',
  ];
}

/** The judgements that keep a package from being recommended. */
function openCriteria(result: StudyResult, width: number, style: TextStyle): string[] {
  const names = namesOf(result);
  const lines = criterionGroups(result).flatMap(({ heading, limit, unit, entries }) =>
    entries
      .filter(({ judgement }) => judgement.outcome !== 'meets')
      .flatMap(({ package: id, judgement }) => {
        const { outcome, paint, readingsNeeded } = judgement;
        const where = paint === undefined ? '' : ` in ${names.paint(paint)}`;
        const more = readingsNeeded === undefined ? '' : `; about ${readingsNeeded} readings a side would decide it`;
        const sentence = `${names.package(id)}${where} ${outcome === 'fails' ? 'fails' : 'is undecided'}: ${heading} ${estimateWords(judgement, unit)} ${unit} against ${limitWords(limit, unit)}${more}.`;
        return wrap(plainText(sentence), width, '  ').map((line) => style.outcome(line, outcome));
      }),
  );
  return lines.length === 0 ? [] : ['', style.bold('Not met or undecided'), ...lines];
}
