import { displayWidth, pad } from './plain-text.js';

/** A column; `side` is where its fill stands, so `left` sets its text to the right. */
export interface TextColumn {
  readonly heading: string;
  readonly side: 'left' | 'right';
}

/** Aligned columns: heading, rule, and a line for each row. Trailing spaces are left out. */
export function textTable(columns: readonly TextColumn[], rows: readonly (readonly string[])[]): string[] {
  const widths = columns.map(({ heading }, i) =>
    rows.reduce((widest, row) => Math.max(widest, displayWidth(row[i])), displayWidth(heading)),
  );
  const line = (cells: readonly string[]) =>
    cells
      .map((cell, i) => pad(cell, widths[i], columns[i].side))
      .join('  ')
      .trimEnd();
  return [
    line(columns.map(({ heading }) => heading)),
    widths.map((width) => '─'.repeat(width)).join('──'),
    ...rows.map(line),
  ];
}
