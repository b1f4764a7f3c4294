import { worstOutcome } from '../../decision/index.js';
import { formatLimit } from '../../decision/internal.js';
import type { Figure, Judgement, PackageResult } from '../../study/index.js';
import type { Row, Table } from '../document/table.js';
import { figureCell, type TableCell, textCell } from '../document/table-cell.js';
import type { ComparisonRow } from '../subject/comparison-row.js';
import { quantityWords } from '../words/words.js';

/** So many paints stand side by side on a printed page. */
const SIDE_BY_SIDE = 4;

/** Figures with the judgements on them, of one paint or of the package as a whole. */
interface FigureColumn {
  readonly heading: string;
  readonly figures: readonly Figure[];
  readonly judgements: readonly Judgement[];
}

/** Every figure of a package with its limit: the paints side by side, then what holds for all of them. */
export function figureTables({ figures, judgements }: PackageResult, rows: readonly ComparisonRow[]): Table[] {
  const paints = rows.map(({ paint, cell }) => ({
    heading: paint,
    figures: cell.figures,
    judgements: cell.judgements,
  }));
  const starts = Array.from({ length: Math.ceil(paints.length / SIDE_BY_SIDE) }, (_, i) => SIDE_BY_SIDE * i);
  const groups = starts.map((start) => paints.slice(start, start + SIDE_BY_SIDE));
  return [...groups, [{ heading: 'All paints', figures, judgements }]].flatMap((columns) => figureTable(columns) ?? []);
}

function figureTable(columns: readonly FigureColumn[]): Table | undefined {
  const all = columns.flatMap((column) => column.figures);
  const kinds = [...new Map(all.map((figure) => [JSON.stringify([figure.quantity, figure.unit]), figure])).values()];
  if (kinds.length === 0) return undefined;
  return {
    kind: 'table',
    caption:
      'Every figure with its 95 % interval, below its name the limit and how it was found. A limit is met or failed only if the whole interval does.',
    columns: [{ heading: 'Figure' }, ...columns.map(({ heading }) => ({ heading, numeric: true }))],
    groups: [{ rows: kinds.map((kind) => rowOf(kind, columns)) }],
  };
}

function rowOf({ quantity, unit, method }: Figure, columns: readonly FigureColumn[]): Row {
  const own = columns.flatMap(({ judgements }) => judgements.filter((one) => one.quantity === quantity));
  const limits = [...new Set(own.map((judgement) => formatLimit(judgement.limit, judgement.unit)))];
  return [
    textCell(unit === '' ? quantityWords(quantity) : `${quantityWords(quantity)}, ${unit}`, {
      aside: [...limits, method].join('; '),
    }),
    ...columns.map((column) => cellOf(column, quantity, unit)),
  ];
}

function cellOf({ figures, judgements }: FigureColumn, quantity: string, unit: string): TableCell {
  const figure = figures.find((one) => one.quantity === quantity && one.unit === unit);
  const outcomes = judgements.filter((one) => one.quantity === quantity).map(({ outcome }) => outcome);
  return figureCell(figure, unit, { outcome: outcomes.length === 0 ? undefined : worstOutcome(outcomes) });
}
