import { type Table, withoutEmptyColumns } from '../document/table.js';
import { cellTextWithAside } from '../document/table-cell.js';
import { escapeMarkdown } from './escape-markdown.js';

/** A table behind its caption. Groups become a column of their own, or tables of their own where their headings are sentences. */
export function markdownTable(table: Table): string[] {
  const { caption, columns, groups, groupedBy } = withoutEmptyColumns(table) ?? table;
  const headings = columns.map(({ heading }) => heading);
  const texts = groups.map(({ heading, rows }) => ({
    heading,
    rows: rows.map((row) => row.map((cell) => cellTextWithAside(cell))),
  }));
  if (groupedBy !== undefined) {
    const rows = texts.flatMap((group) => group.rows.map((row) => [group.heading ?? '', ...row]));
    return [escapeMarkdown(caption), pipeTable([groupedBy, ...headings], rows)];
  }
  return [
    escapeMarkdown(caption),
    ...texts.flatMap(({ heading, rows }) => [
      ...(heading === undefined ? [] : [escapeMarkdown(heading)]),
      pipeTable(headings, rows),
    ]),
  ];
}

function pipeTable(header: readonly string[], rows: readonly (readonly string[])[]): string {
  const line = (cells: readonly string[]) => `| ${cells.map(escapeMarkdown).join(' | ')} |`;
  return [line(header), `| ${header.map(() => '---').join(' | ')} |`, ...rows.map(line)].join('\n');
}
