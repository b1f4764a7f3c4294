import type { TableCell } from './table-cell.js';

/** A column; figures stand on the right, so that their decimals can be compared. */
export interface Column {
  readonly heading: string;
  readonly numeric?: boolean;
  /** May be set below the table where there is no room for it. */
  readonly detail?: boolean;
}

/** A row: its first cell names it. */
export type Row = readonly TableCell[];

/** Rows under a common heading; one group without a heading is a plain table. */
export interface RowGroup {
  readonly heading?: string;
  readonly rows: readonly Row[];
}

/** A table with its caption. */
export interface Table {
  readonly kind: 'table';
  readonly caption: string;
  readonly columns: readonly Column[];
  /** What the headings of the groups name, such as the paint; absent where they are sentences of their own. */
  readonly groupedBy?: string;
  readonly groups: readonly RowGroup[];
  /** Short figures, which a narrow screen sets side by side. */
  readonly compact?: boolean;
}

/** The table without the columns in which no row holds anything; undefined where no row is left. */
export function withoutEmptyColumns(table: Table): Table | undefined {
  const rows = table.groups.flatMap((group) => group.rows);
  if (rows.length === 0) return undefined;
  const shown = table.columns.map((_, i) => rows.some((row) => row[i].kind !== 'none'));
  const some = <T>(cells: readonly T[]) => cells.filter((_, i) => shown[i]);
  return {
    ...table,
    columns: some(table.columns),
    groups: table.groups.map((group) => ({ ...group, rows: group.rows.map(some) })),
  };
}
