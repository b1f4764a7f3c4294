import type { Outcome } from '../../decision/index.js';
import type { Row, Table } from './table.js';
import { NONE, outcomeCell, type TableCell, textCell } from './table-cell.js';

/** What is said in one cell of a matrix. */
export interface Verdict {
  readonly outcome: Outcome;
  /** In the order of the matrix's lines. */
  readonly figures: readonly TableCell[];
  /** Why it is so, and what was found, most important first. */
  readonly remarks: readonly string[];
}

/** One row of a matrix: its verdict over all columns, and one for each column, absent where nothing was read. */
export interface MatrixRow {
  readonly name: string;
  readonly overall: Omit<Verdict, 'figures'>;
  readonly verdicts: readonly (Verdict | undefined)[];
}

/** A figure that every cell of a matrix has. */
export interface MatrixLine {
  readonly label: string;
  readonly unit: string;
  /** Shown only where the matrix is written as a table. */
  readonly detail?: boolean;
}

/** Rows against columns, each cell a verdict with its figures: what a reader takes in at a glance. */
export interface Matrix {
  readonly kind: 'matrix';
  readonly caption: string;
  readonly rowHeading: string;
  readonly columnHeading: string;
  readonly overallHeading: string;
  readonly columns: readonly string[];
  readonly lines: readonly MatrixLine[];
  readonly rows: readonly MatrixRow[];
}

/** The same as a table, a group for each column, for forms of a report that have no cells of several lines. */
export function matrixTable(matrix: Matrix): Table {
  const { lines, rows, columns } = matrix;
  const remark = (remarks: readonly string[]) => (remarks.length === 0 ? NONE : textCell(remarks.join('; ')));
  const rowOf = (name: string, verdict: Verdict | undefined): Row =>
    verdict
      ? [textCell(name), ...verdict.figures, outcomeCell(verdict.outcome), remark(verdict.remarks)]
      : [textCell(name), ...lines.map(() => NONE), textCell('not read'), NONE];
  return {
    kind: 'table',
    caption: matrix.caption,
    columns: [
      { heading: matrix.rowHeading },
      ...lines.map(({ label, unit }) => ({
        heading: unit.startsWith('ΔE') ? `${label} ${unit}` : `${label}, ${unit}`,
        numeric: true,
      })),
      { heading: 'Outcome' },
      { heading: 'Remarks', detail: true },
    ],
    groupedBy: matrix.columnHeading,
    groups: [
      ...columns.map((heading, i) => ({ heading, rows: rows.map(({ name, verdicts }) => rowOf(name, verdicts[i])) })),
      {
        heading: matrix.overallHeading,
        rows: rows.map(({ name, overall }) => rowOf(name, { ...overall, figures: lines.map(() => textCell('')) })),
      },
    ],
  };
}
