import { TintladderError } from '../../core/index.js';
import { element } from '../html/element.js';
import { type Drawing, type FigureText, imageElement } from './figure.js';
import { figureColours, figureShapes } from './figure-style.js';
import { DARK, LIGHT, SANS } from './palette.js';
import { text } from './svg-parts.js';
import { wrapBold } from './text-width.js';

const SCOPE = '.tintladder-figure';

/** Every rule is held to the figure, since a style inside an SVG holds for the whole page that it stands in. */
const STYLE = `${SCOPE}{display:block;max-width:100%;height:auto;font:12px ${SANS};font-variant-numeric:tabular-nums lining-nums}${figureShapes(SCOPE)}${figureColours(SCOPE, LIGHT)}@media screen and (prefers-color-scheme:dark){${figureColours(SCOPE, DARK)}}`;

const LINE = 16;

/** A drawing as an SVG that needs nothing around it: with its style, its paper and its title as a heading. */
export function standaloneFigure(words: FigureText, { width, height, content }: Drawing): string {
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
