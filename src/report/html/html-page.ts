import type { ReportDocument, Section } from '../document/report-document.js';
import { element, type Markup } from '../markup/element.js';
import { htmlBlock } from './html-block.js';
import { STYLE } from './style.js';

/** A document as a complete HTML file that loads nothing. */
export function htmlPage(document: ReportDocument): string {
  return `<!DOCTYPE html>\n${page(document).markup}\n`;
}

function page({ title, note, answer, sections: [first, ...rest], closing }: ReportDocument): Markup {
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
      element(
        'header',
        {},
        element('h1', {}, title),
        note !== undefined && element('p', { class: 'note' }, note),
        element('p', { class: 'answer' }, answer),
      ),
      element('main', {}, [
        // what is seen first comes before the way to the rest
        first && sectionElement(first),
        rest.length >= LEAST_LISTED && contents(rest),
        rest.map(sectionElement),
      ]),
      element('footer', {}, closing),
    ),
  );
}

/** Fewer sections than these are found without a list of them. */
const LEAST_LISTED = 6;

function contents(sections: readonly Section[]): Markup {
  return element(
    'nav',
    { 'aria-label': 'Contents' },
    element(
      'ul',
      {},
      sections.map(({ id, heading }) => element('li', {}, element('a', { href: `#${id}` }, heading))),
    ),
  );
}

function sectionElement({ id, heading, blocks }: Section): Markup {
  return element('section', { 'aria-labelledby': id }, element('h2', { id }, heading), blocks.map(htmlBlock));
}
