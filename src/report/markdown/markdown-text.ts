import { matrixTable } from '../document/matrix.js';
import type { Block, ReportDocument } from '../document/report-document.js';
import { escapeMarkdown } from './escape-markdown.js';
import { markdownTable } from './markdown-table.js';

/** A document as Markdown. Charts are left out: what they show stands in the tables. */
export function markdownText({ title, note, answer, sections }: ReportDocument): string {
  const blocks = [
    `# ${escapeMarkdown(title)}`,
    ...(note === undefined ? [] : [`*${escapeMarkdown(note)}*`]),
    `**${escapeMarkdown(answer)}**`,
    ...sections.flatMap(({ heading, blocks }) => {
      const shown = blocks.flatMap((block) => markdownBlock(block, 3));
      return shown.length === 0 ? [] : [`## ${escapeMarkdown(heading)}`, ...shown];
    }),
  ];
  return `${blocks.join('\n\n')}\n`;
}

function markdownBlock(block: Block, level: number): string[] {
  switch (block.kind) {
    case 'paragraph':
      return [escapeMarkdown(block.text)];
    case 'list':
      return [markdownList(block.items.map(({ text }) => escapeMarkdown(text)))];
    case 'part': {
      const heading = `${'#'.repeat(level)} ${escapeMarkdown(block.heading)}`;
      return [heading, ...block.blocks.flatMap((one) => markdownBlock(one, level + 1))];
    }
    case 'matrix':
      return markdownTable(matrixTable(block));
    case 'table':
      return markdownTable(block);
    case 'key':
      return [
        markdownList(block.entries.map(({ name, note }) => `**${escapeMarkdown(name)}** ${escapeMarkdown(note)}`)),
      ];
    case 'charts':
      return [];
  }
}

function markdownList(items: readonly string[]): string {
  return items.map((item) => `- ${item}`).join('\n');
}
