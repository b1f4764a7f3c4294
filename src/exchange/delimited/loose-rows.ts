import { conditionKey } from '../conditions/condition-key.js';
import type { TableContext } from '../table/heading.js';
import { type Remark, readRemarks } from '../table/preamble.js';
import { nameRank, normaliseHeading } from '../table/sample-words.js';
import { cellPlace } from '../text/cell-place.js';
import type { Notes } from '../text/notes.js';

/** A row that stands outside a table. */
export interface LooseRow {
  readonly cells: readonly string[];
  readonly line: number;
}

const PAIR = /^([^:=]{1,60})[:=]\s*(\S.*)$/s;
const KEY_ALONE = /^([^:=]{1,60})[:=]$/;
/** Where one of several pairs in a cell ends and the next begins. */
const NEXT_PAIR = /[,;|\t]\s*(?=[^,;:=|\t]{1,40}[:=])/;

const MOST_STATEMENTS = 40;

/** Keys with their values, or sentences, of a row: `Illuminant: D65, Observer: 10°`, `Illuminant;D65`, `Sample name;blue;;`. */
export function remarksOf({ cells, line }: LooseRow): Remark[] {
  // nobody states so much in one line
  if (cells.reduce((count, cell) => (cell === '' ? count : count + 1), 0) > MOST_STATEMENTS) return [];
  const filled = cells.flatMap((cell, i) => {
    const text = cell.replace(/^\s*(?:#|\/\/)+/, '').trim();
    return text === '' ? [] : [{ text, place: cellPlace(line, i + 1) }];
  });
  const remarks: Remark[] = [];
  for (let i = 0; i < filled.length; i++) {
    const { text, place } = filled[i];
    const next = filled[i + 1];
    const alone = KEY_ALONE.exec(text);
    if (alone && next) {
      remarks.push({ key: alone[1].trim(), value: next.text, place });
      i++;
    } else if (next && isKey(text)) {
      remarks.push({ key: text, value: next.text, place });
      i++;
    } else if (PAIR.test(text)) {
      for (const part of text.split(NEXT_PAIR)) remarks.push(pairOrSentence(part, place));
    } else if (next && filled.length === 2 && !PAIR.test(next.text)) {
      remarks.push({ key: text, value: next.text, place });
      i++;
    } else remarks.push({ value: text, place });
  }
  return remarks;
}

function isKey(text: string): boolean {
  return conditionKey(text).length > 0 || nameRank(normaliseHeading(text)) >= 0;
}

function pairOrSentence(text: string, place: string): Remark {
  const found = PAIR.exec(text.trim());
  return found ? { key: found[1].trim(), value: found[2].trim(), place } : { value: text.trim(), place };
}

/** What the rows before a table say of its readings; those that say nothing are noted as lines without readings. */
export function readLooseRows(rows: readonly LooseRow[], before: TableContext, notes: Notes): TableContext {
  const said = new Set<string>();
  const remarks = rows.map((row) => ({ row, remarks: remarksOf(row) }));
  const context = readRemarks(
    remarks.flatMap((one) => one.remarks),
    before,
    notes,
    ({ place }) => said.add(place),
  );
  for (const { row, remarks: own } of remarks) {
    if (!own.some(({ place }) => said.has(place))) noteLoose(row, notes);
  }
  return context;
}

/** Notes a line that belongs to no table. */
export function noteLoose({ line }: LooseRow, notes: Notes): void {
  notes.count(
    'lines-outside-tables',
    `line ${line}`,
    (count) =>
      `${count === 1 ? 'One line' : `${count} lines`} outside the tables hold${count === 1 ? 's' : ''} no readings.`,
  );
}
