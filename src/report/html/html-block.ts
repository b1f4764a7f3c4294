import { drawChart } from '../charts/chart.js';
import { marker } from '../charts/series-style.js';
import { styleOf } from '../charts/style-name.js';
import type { Block, ChartGroup, Key } from '../document/report-document.js';
import { element, fragment, type Markup } from '../markup/element.js';
import { htmlMatrix } from './html-matrix.js';
import { htmlTable } from './html-table.js';

/** A block of a document. */
export function htmlBlock(block: Block): Markup {
  switch (block.kind) {
    case 'paragraph':
      return element('p', {}, block.text);
    case 'list':
      return element(
        'ul',
        {},
        block.items.map(({ text }) => element('li', {}, text)),
      );
    case 'part':
      return element('div', { class: 'part' }, element('h3', {}, block.heading), block.blocks.map(htmlBlock));
    case 'matrix':
      return htmlMatrix(block);
    case 'table':
      return htmlTable(block);
    case 'charts':
      return block.layout === 'plate' ? plate(block) : panels(block);
    case 'key':
      return key(block);
  }
}

/** Charts under one numbered caption, side by side where there is room. */
function panels({ caption, panels: shown }: ChartGroup): Markup {
  return element(
    'figure',
    { class: 'panels' },
    element('figcaption', {}, caption),
    element(
      'div',
      { class: 'grid' },
      shown.map(({ heading, chart }) =>
        element(
          'div',
          { class: 'panel' },
          heading !== undefined && element('p', { class: 'panel-heading' }, heading),
          drawChart(chart),
        ),
      ),
    ),
  );
}

/** Charts about one thing in one row under its name. */
function plate({ caption, panels: shown }: ChartGroup): Markup {
  return element(
    'figure',
    { class: 'plate' },
    element('figcaption', {}, caption),
    element(
      'div',
      { class: 'plate-grid' },
      shown.map(({ chart }) => drawChart(chart)),
    ),
  );
}

function key({ entries }: Key): Markup {
  return element(
    'ul',
    { class: 'key' },
    entries.map(({ style: styleName, name, note }) => {
      const style = styleOf(styleName);
      return element(
        'li',
        {},
        element(
          'svg',
          { viewBox: '0 0 40 14', width: 40, height: 14, 'aria-hidden': 'true', focusable: 'false' },
          element('path', { class: `${style.className} curve`, d: 'M1 7H39', 'stroke-dasharray': style.dash }),
          marker(20, 7, style),
        ),
        element('span', {}, fragment(element('b', {}, name), ` ${note}`)),
      );
    }),
  );
}
