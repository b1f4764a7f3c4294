import { type Child, element, fragment, type Markup } from '../html/element.js';

/** What a figure says to someone who can't see it, and its size in its own units (1 unit is 1 px at full size). */
export interface FigureText {
  /** Unique in the page. */
  readonly id: string;
  readonly title: string;
  /** The figures behind the drawing, in words. */
  readonly description: string;
  readonly width: number;
  readonly height: number;
}

/** An SVG that scales with its column and reads as one image with a title and a description. */
export function figure({ id, title, description, width, height }: FigureText, ...children: readonly Child[]): Markup {
  return element(
    'svg',
    {
      viewBox: `0 0 ${width} ${height}`,
      width,
      height,
      role: 'img',
      'aria-labelledby': `${id}-title ${id}-description`,
    },
    element('title', { id: `${id}-title` }, title),
    element('desc', { id: `${id}-description` }, description),
    fragment(...children),
  );
}

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
    readonly transform?: string;
  } = {},
): Markup {
  return element('text', { x: at(x), y: at(y), ...attributes }, content);
}

/** A straight line of a drawing. */
export function segment(x1: number, y1: number, x2: number, y2: number, className: string): Markup {
  return element('line', { x1: at(x1), y1: at(y1), x2: at(x2), y2: at(y2), class: className });
}
