import {
  type SymbolType,
  symbol,
  symbolCircle,
  symbolCross,
  symbolDiamond,
  symbolSquare,
  symbolStar,
  symbolTriangle,
  symbolWye,
} from 'd3-shape';
import { element, type Markup } from '../markup/element.js';
import { at } from './svg-parts.js';

/** How one package is drawn in every chart: shape, fill, dash and colour together, so that none of them is needed alone. */
export interface SeriesStyle {
  /** Gives the colour in light and dark. */
  readonly className: string;
  readonly shape: SymbolType;
  readonly filled: boolean;
  /** Dash pattern of its lines; solid if absent. */
  readonly dash?: string;
}

const SHAPES = [symbolSquare, symbolTriangle, symbolDiamond, symbolCross, symbolStar, symbolWye, symbolCircle];
const DASHES = ['7 3', '2 2.5', '9 3 2 3', '4 2', '12 3', '7 2 2 2 2 2'];
const COLOURS = 7;

/** The reference: a filled circle and a solid line in the colour of the text. */
const REFERENCE_STYLE: SeriesStyle = { className: 'series reference', shape: symbolCircle, filled: true };

/**
 * The style of a series by its place: the first as the reference, the others as trials. Shapes return with an open centre
 * before they repeat.
 */
export function styleAt(place: number): SeriesStyle {
  return place === 0 ? REFERENCE_STYLE : trialStyle(place - 1);
}

function trialStyle(index: number): SeriesStyle {
  return {
    className: `series colour-${(index % COLOURS) + 1}`,
    shape: SHAPES[index % SHAPES.length],
    filled: Math.floor(index / SHAPES.length) % 2 === 0,
    dash: DASHES[index % DASHES.length],
  };
}

/** The mark of a package at a point; `size` is its area. */
export function marker(x: number, y: number, { className, shape, filled }: SeriesStyle, size = 44): Markup {
  return element('path', {
    class: `${className} ${filled ? 'mark' : 'mark open'}`,
    transform: `translate(${at(x)} ${at(y)})`,
    d: symbol(shape, size).digits(1)() ?? '',
  });
}
