import { element, type Markup } from '../markup/element.js';

/** A coordinate to a tenth of a unit, which is finer than a screen and keeps the file small. */
export function at(coordinate: number): number {
  return Math.round(coordinate * 10) / 10;
}

/** Text at a point of a drawing. */
export function text(
  x: number,
  y: number,
  content: string,
  attributes: {
    readonly class?: string;
    readonly 'text-anchor'?: 'start' | 'middle' | 'end';
  } = {},
): Markup {
  return element('text', { x: at(x), y: at(y), ...attributes }, content);
}

/** A straight line of a drawing. */
export function segment(x1: number, y1: number, x2: number, y2: number, className: string): Markup {
  return element('line', { x1: at(x1), y1: at(y1), x2: at(x2), y2: at(y2), class: className });
}
