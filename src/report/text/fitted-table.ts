import { shortInterval } from '../../decision/internal.js';
import { type Column, type RowGroup, type Table, withoutEmptyColumns } from '../document/table.js';
import { cellText, cellTextWithAside, type TableCell } from '../document/table-cell.js';
import { displayWidth, plainText, wrap } from './plain-text.js';
import { shorten } from './shorten.js';
import type { TextStyle } from './text-style.js';
import { type TextColumn, tableWidth, textTable } from './text-table.js';

/** A name cut shorter than this says too little. */
const SHORTEST_NAME = 12;

interface PlacedRow {
  readonly group: RowGroup;
  readonly cells: readonly TableCell[];
  readonly texts: readonly string[];
}

/**
 * A table as wide as the terminal allows: whole, with its details below it and names cut, or as a list of its rows. Asides
 * of figures are left out, since they would take the room of the figures.
 */
export function fittedTable(table: Table, width: number, style: TextStyle): string[] {
  const { columns, groups, caption } = withoutEmptyColumns(table) ?? table;
  const rows = groups.flatMap((group) =>
    group.rows.map((cells): PlacedRow => ({ group, cells, texts: cells.map((cell) => textOf(cell, style)) })),
  );
  const texts = rows.map((row) => row.texts);
  const wide = tableWidth(textColumns(columns, texts), texts) <= width;
  const kept = columns.map(({ detail }) => wide || detail !== true);
  const some = <T>(items: readonly T[]) => items.filter((_, i) => kept[i]);
  const shown = textColumns(some(columns), texts.map(some));
  const fitted = withNamesCut(shown, texts.map(some), width);
  if (!fitted) return rows.flatMap((row) => asList(row, columns, width, style));
  const lines = textTable(shown, fitted);
  const heading = lines.slice(0, -rows.length);
  const body = lines.slice(-rows.length);
  return [
    ...heading.slice(0, -1).map(style.bold),
    ...heading.slice(-1),
    ...rows.flatMap(({ group }, i) => [...groupHeading(group, rows[i - 1]?.group, width, style), body[i]]),
    '',
    ...wrap(plainText(caption), width).map(style.faint),
    ...(wide ? [] : rows.flatMap((row) => detailLines(row, columns, width))),
  ];
}

function textOf(cell: TableCell, style: TextStyle): string {
  const text = plainText(
    cell.kind === 'text' || (cell.kind === 'figure' && cell.outcome)
      ? cellTextWithAside(cell, shortInterval)
      : cellText(cell, shortInterval),
  );
  return cell.kind === 'outcome' ? style.outcome(text, cell.outcome) : text;
}

/** The columns with their headings broken to the width of what stands below them. */
function textColumns(columns: readonly Column[], rows: readonly (readonly string[])[]): TextColumn[] {
  return columns.map(({ heading, numeric }, i) => {
    const widest = Math.max(...rows.map((row) => displayWidth(row[i])));
    return { heading: wrap(plainText(heading), widest).join('\n'), side: numeric ? 'left' : 'right' };
  });
}

function groupHeading(group: RowGroup, before: RowGroup | undefined, width: number, style: TextStyle): string[] {
  if (group === before || group.heading === undefined) return [];
  return [...(before ? [''] : []), ...wrap(plainText(group.heading), width).map(style.bold)];
}

/** Rows whose names are cut to fit the terminal; undefined where they would be too short or alike. */
function withNamesCut(
  columns: readonly TextColumn[],
  rows: readonly (readonly string[])[],
  width: number,
): readonly (readonly string[])[] | undefined {
  const longest = Math.max(...rows.map(([name]) => displayWidth(name)));
  const room = longest - Math.max(0, tableWidth(columns, rows) - width);
  if (room >= longest) return rows;
  if (room < SHORTEST_NAME) return undefined;
  const cut = rows.map(([name, ...rest]) => [shorten(name, room), ...rest]);
  const count = (some: readonly (readonly string[])[]) => new Set(some.map(([name]) => name)).size;
  return count(cut) === count(rows) ? cut : undefined;
}

/** The details of a row that the table had no room for. */
function detailLines({ group, texts, cells }: PlacedRow, columns: readonly Column[], width: number): string[] {
  const details = texts.filter((_, i) => columns[i].detail === true && isNotable(cells[i]));
  if (details.length === 0) return [];
  const where = group.heading === undefined ? '' : `, ${plainText(group.heading)}`;
  return wrap(`${texts[0]}${where}: ${details.join('; ')}.`, width);
}

function isNotable(cell: TableCell): boolean {
  return cell.kind !== 'none' && !(cell.kind === 'text' && cell.ordinary);
}

function asList(
  { group, texts, cells }: PlacedRow,
  columns: readonly Column[],
  width: number,
  style: TextStyle,
): string[] {
  const where = group.heading === undefined ? '' : `, ${plainText(group.heading)}`;
  return [
    ...wrap(`${texts[0]}${where}`, width).map(style.bold),
    ...cells.slice(1).flatMap((cell, i) => {
      const { heading } = columns[i + 1];
      const text = texts[i + 1];
      // an outcome is a short word, which may hold the escapes of its colour
      if (cell.kind === 'outcome') return [`  ${heading}: ${text}`];
      return wrap(`${plainText(heading)}: ${text}`, width, '  ');
    }),
    '',
  ];
}
