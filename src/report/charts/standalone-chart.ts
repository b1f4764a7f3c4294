import { TintladderError } from '../../core/index.js';
import { element } from '../markup/element.js';
import { type ChartText, type Drawing, imageElement } from './chart-image.js';
import { chartColours, chartShapes } from './chart-style.js';
import { DARK, LIGHT, SANS } from './palette.js';
import { text } from './svg-parts.js';
import { wrapBold } from './text-width.js';

const SCOPE = '.tintladder-chart';

/** Every rule is confined to the chart, since a style inside an SVG holds for the whole page that it stands in. */
const STYLE = `${SCOPE}{display:block;max-width:100%;height:auto;font:12px ${SANS};font-variant-numeric:tabular-nums lining-nums}${chartShapes(SCOPE)}${chartColours(SCOPE, LIGHT)}@media screen and (prefers-color-scheme:dark){${chartColours(SCOPE, DARK)}}`;

const LINE = 16;

/** A drawing as an SVG that needs nothing around it: with its style, its paper and its title as a heading. */
export function standaloneChart(words: ChartText, { width, height, content }: Drawing): string {
  assertId(words.id);
  const heading = wrapBold(words.title, width - 4);
  const room = LINE * heading.length + 10;
  return imageElement(
    words,
    {
      xmlns: 'http://www.w3.org/2000/svg',
      class: SCOPE.slice(1),
      viewBox: `0 ${-room} ${width} ${height + room}`,
      width,
      height: height + room,
    },
    element('style', {}, { markup: STYLE }),
    element('rect', { class: 'paper', x: 0, y: -room, width, height: height + room }),
    heading.map((line, i) => text(2, LINE * (i + 1) - room - 2, line, { class: 'heading' })),
    content,
  ).markup;
}

/** Title and description are found by their ids in a list that spaces divide. */
function assertId(id: string): void {
  if (typeof id === 'string' && /^[^\s\p{Cc}]+$/u.test(id)) return;
  throw new TintladderError('invalid-option', { path: 'id', received: id, expected: 'a name without spaces' });
}
