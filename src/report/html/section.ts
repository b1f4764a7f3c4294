import { type Child, element, fragment, type Markup } from './element.js';

/** A part of the report under its heading. */
export function section(id: string, heading: string, ...children: readonly Child[]): Markup {
  return element('section', { 'aria-labelledby': id }, element('h2', { id }, heading), ...children);
}

/** A paragraph. */
export function paragraph(...children: readonly Child[]): Markup {
  return element('p', {}, ...children);
}

/** A list of sentences. */
export function sentences(items: readonly Child[]): Markup {
  return element(
    'ul',
    {},
    items.map((item) => element('li', {}, item)),
  );
}

/** Drawings under one numbered caption, side by side where there is room. */
export function panels(caption: string, drawings: readonly Markup[]): Markup {
  return element(
    'figure',
    { class: 'panels' },
    element('figcaption', {}, caption),
    element(
      'div',
      { class: 'grid' },
      drawings.map((drawing) => element('div', { class: 'panel' }, drawing)),
    ),
  );
}

/** A panel's own heading above its drawing. */
export function panel(heading: string, drawing: Markup): Markup {
  return fragment(element('p', { class: 'panel-heading' }, heading), drawing);
}
