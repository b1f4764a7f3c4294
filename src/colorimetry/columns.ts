/**
 * Reads a table of plain columns, as the files in `tables/` hold them, into one array per column.
 *
 * The tables stay readable beside their printed source, and nothing is parsed until it is needed.
 */
export function parseColumns(table: string): Float64Array[] {
  const rows = table
    .trim()
    .split('\n')
    .map((line) => line.split(' ').map(Number));
  const width = rows[0].length;
  return Array.from({ length: width }, (_, column) => Float64Array.from(rows, (row) => row[column] ?? Number.NaN));
}
