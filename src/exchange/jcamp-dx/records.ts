import { TintladderError } from '../../core/index.js';
import type { DataLine } from './asdf.js';

/** One block, `##TITLE=` ... `##END=`. */
export interface Block {
  readonly title: string;
  readonly line: number;
  /** Values of its labelled records by their normalised labels. */
  readonly records: ReadonlyMap<string, LabelledRecord>;
}

export interface LabelledRecord {
  /** The label as it stands. */
  readonly label: string;
  readonly value: string;
  readonly line: number;
  /** The lines below the first, which hold the data of a table. */
  readonly lines: readonly DataLine[];
}

interface OpenBlock {
  readonly title: string;
  readonly line: number;
  readonly records: Map<string, LabelledRecord>;
}

/**
 * Splits a JCAMP-DX text into its blocks; a link block comes before the blocks inside it.
 *
 * @throws TintladderError `truncated` for a block that does not end; `malformed` for text outside a block
 * @see McDonald & Wilks (1988), Appl. Spectrosc. 42, 151-162
 */
export function readBlocks(text: string): Block[] {
  const blocks: Block[] = [];
  const open: OpenBlock[] = [];
  for (const record of labelledRecords(text)) {
    const key = normaliseLabel(record.label);
    if (key === 'TITLE') {
      const block = { title: record.value, line: record.line, records: new Map<string, LabelledRecord>() };
      blocks.push(block);
      open.push(block);
      continue;
    }
    const block = open.at(-1);
    if (!block) {
      throw new TintladderError('malformed', {
        path: `line ${record.line}, column 1`,
        received: `##${record.label}=`,
        expected: '##TITLE=',
      });
    }
    if (key === 'END') open.pop();
    else if (!block.records.has(key)) block.records.set(key, record);
  }
  const last = open.at(-1);
  if (last) {
    throw new TintladderError('truncated', {
      path: `line ${text.split('\n').length}, column 1`,
      received: '',
      expected: `##END= of the block at line ${last.line}`,
      hint: 'The file is cut off; export it again.',
    });
  }
  return blocks;
}

/** Labels are compared in upper case without blanks, dashes, slashes and underscores. */
export function normaliseLabel(label: string): string {
  return label.toUpperCase().replace(/[\s\-/_]/g, '');
}

function* labelledRecords(text: string): Generator<LabelledRecord> {
  let current: { label: string; value: string; line: number; lines: DataLine[] } | undefined;
  let line = 0;
  for (const raw of text.split(/\r\n?|\n/)) {
    line++;
    const content = raw.replace(/\$\$.*$/, '').trimEnd();
    const found = /^\s*##([^=]{0,80})=(.*)$/.exec(content);
    if (found) {
      if (current) yield current;
      current = { label: found[1].trim(), value: found[2].trim(), line, lines: [] };
    } else if (content.trim() !== '') {
      if (!current) {
        throw new TintladderError('malformed', {
          path: `line ${line}, column 1`,
          received: content,
          expected: '##TITLE=',
        });
      }
      current.lines.push({ text: content, line });
    }
  }
  if (current) yield current;
}
