import { displayWidth, pad } from './plain-text.js';

/** A column; `side` is where its fill stands, so `left` sets its text to the right. */
export interface TextColumn {
  /** May be of several lines; the last ones stand on the rule. */
  readonly heading: string;
  readonly side: 'left' | 'right';
}

/** Aligned columns: heading, rule, and a line for each row. Trailing spaces are left out; cells beyond the columns too. */
export function textTable(columns: readonly TextColumn[], rows: readonly (readonly string[])[]): string[] {
  const widths = columnWidths(columns, rows);
  const line = (cells: readonly string[]) =>
    columns
      .map(({ side }, i) => pad(cells[i], widths[i], side))
      .join('  ')
      .trimEnd();
  const headings = columns.map(({ heading }) => heading.split('\n'));
  const tallest = Math.max(...headings.map((lines) => lines.length));
  const headingLines = Array.from({ length: tallest }, (_, i) =>
    line(headings.map((lines) => lines[i - tallest + lines.length] ?? '')),
  );
  return [...headingLines, widths.map((width) => '─'.repeat(width)).join('──'), ...rows.map(line)];
}

/** Columns of the terminal that a table takes. */
export function tableWidth(columns: readonly TextColumn[], rows: readonly (readonly string[])[]): number {
  return columnWidths(columns, rows).reduce((sum, width) => sum + width + 2, -2);
}

function columnWidths(columns: readonly TextColumn[], rows: readonly (readonly string[])[]): number[] {
  return columns.map(({ heading }, i) =>
    Math.max(...heading.split('\n').map(displayWidth), ...rows.map((row) => displayWidth(row[i]))),
  );
}
