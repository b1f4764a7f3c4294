import { type Attributes, type Child, element, fragment, type Markup } from '../markup/element.js';

/** What a chart says to someone who can't see it. */
export interface ChartText {
  /** Unique in the page. */
  readonly id: string;
  readonly title: string;
  /** The numbers behind the drawing, in words. */
  readonly description: string;
}

/** A drawing before it is wrapped, and its size in its own units (1 unit is 1 px at full size). */
export interface Drawing {
  readonly width: number;
  readonly height: number;
  readonly content: Markup;
}

/** A drawing as part of a page that brings the style: an SVG that scales with its column. */
export function chartImage(text: ChartText, { width, height, content }: Drawing): Markup {
  return imageElement(text, { viewBox: `0 0 ${width} ${height}`, width, height }, content);
}

/** An SVG that reads as one image with a title and a description. */
export function imageElement(
  { id, title, description }: ChartText,
  attributes: Attributes,
  ...children: readonly Child[]
): Markup {
  return element(
    'svg',
    { ...attributes, role: 'img', 'aria-labelledby': `${id}-title ${id}-description` },
    element('title', { id: `${id}-title` }, title),
    element('desc', { id: `${id}-description` }, description),
    fragment(...children),
  );
}
