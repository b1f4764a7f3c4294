/** Where a cell stands in a file, as people count: from 1. */
export function cellPlace(line: number, column: number): string {
  return `line ${line}, column ${column}`;
}
