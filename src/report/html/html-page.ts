import type { ReportDocument, Section } from '../document/report-document.js';
import { type Child, element, type Markup } from '../markup/element.js';
import { htmlBlock } from './html-block.js';
import { STYLE } from './style.js';

/** A document as a complete HTML file that loads nothing. */
export function htmlPage(document: ReportDocument): string {
  return `<!DOCTYPE html>\n${page(document).markup}\n`;
}

function page({ title, note, answer, sections, closing }: ReportDocument): Markup {
  return element(
    'html',
    { lang: 'en' },
    element(
      'head',
      {},
      element('meta', { charset: 'utf-8' }),
      element('meta', { name: 'viewport', content: 'width=device-width, initial-scale=1' }),
      element('meta', { name: 'color-scheme', content: 'light dark' }),
      element('title', {}, title),
      element('style', {}, { markup: STYLE }),
    ),
    element(
      'body',
      {},
      element('header', {}, element('h1', {}, title), note !== undefined && element('p', { class: 'note' }, note)),
      element(
        'main',
        {},
        section('answer', 'Answer', element('p', { class: 'answer' }, answer)),
        sections.map(({ id, heading, blocks }: Section) => section(id, heading, ...blocks.map(htmlBlock))),
      ),
      element('footer', {}, closing),
    ),
  );
}

/** A part of the page under its heading. */
function section(id: string, heading: string, ...children: readonly Child[]): Markup {
  return element('section', { 'aria-labelledby': id }, element('h2', { id }, heading), ...children);
}
