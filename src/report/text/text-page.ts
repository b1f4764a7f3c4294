import { matrixTable } from '../document/matrix.js';
import type { Block, ReportDocument } from '../document/report-document.js';
import { fittedTable } from './fitted-table.js';
import { plainText, wrap } from './plain-text.js';
import { type TextStyle, textStyle } from './text-style.js';

/** How a document is laid out on a terminal. */
export interface TextLayout {
  readonly width: number;
  readonly colour: boolean;
}

/** Narrower than this no terminal is. */
const NARROWEST = 30;

/** A document as text for a terminal. Charts are left out: what they show stands in the tables. */
export function textPage({ title, note, answer, sections }: ReportDocument, { width, colour }: TextLayout): string {
  const style = textStyle(colour);
  const room = Math.max(NARROWEST, width);
  const lines = [
    ...wrap(plainText(title), room).map(style.bold),
    ...(note === undefined ? [] : wrap(plainText(note), room).map(style.faint)),
    '',
    ...wrap(plainText(answer), room),
    ...sections.flatMap(({ heading, blocks, forTheRecord }) => {
      if (forTheRecord) return [];
      const shown = blocks.flatMap((block) => textBlock(block, room, style));
      return shown.length === 0 ? [] : ['', ...wrap(plainText(heading), room).map(style.bold), ...shown];
    }),
  ];
  return `${lines.join('\n')}\n`;
}

function textBlock(block: Block, room: number, style: TextStyle): string[] {
  switch (block.kind) {
    case 'paragraph':
      return ['', ...wrap(plainText(block.text), room)];
    case 'list':
      return block.items.flatMap(({ text, outcome }) => {
        const lines = wrap(plainText(text), room, '  ');
        return outcome === undefined ? lines : lines.map((line) => style.outcome(line, outcome));
      });
    case 'part':
      return [
        '',
        ...wrap(plainText(block.heading), room).map(style.bold),
        ...block.blocks.flatMap((one) => textBlock(one, room, style)),
      ];
    case 'matrix':
      return fittedTable(matrixTable(block), room, style);
    case 'table':
      return fittedTable(block, room, style);
    case 'key':
      return block.entries.flatMap(({ name, note }) => wrap(plainText(`${name} ${note}`), room, '  '));
    case 'charts':
      return [];
  }
}
