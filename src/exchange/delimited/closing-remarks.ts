import type { FileContext } from '../table/file-context.js';
import type { TableContext } from '../table/heading.js';
import { readRemarks } from '../table/preamble.js';
import { type LooseRow, noteLoose, remarksOf } from './loose-rows.js';

/** Notes the lines below the last table; a condition that stands only there belongs to no reading, and is told. */
export function noteClosing(rows: readonly LooseRow[], context: TableContext, { notes }: FileContext): void {
  for (const row of rows) {
    noteLoose(row, notes);
    const { stated } = readRemarks(remarksOf(row), { ...context, stated: {} }, notes);
    if (Object.keys(stated).length === 0) continue;
    const message = 'A condition is stated below the last table; it was not applied to the readings above.';
    notes.add('condition-after-data', message, `line ${row.line}`, { part: Object.keys(stated) });
  }
}
