import { symbolCircle, symbolDiamond, symbolSquare, symbolTriangle } from 'd3-shape';
import type { SeriesStyle } from './series-style.js';

/** The tints that are shown of one package in one paint. */
export type TintName = 'reference' | 'unrubbed' | 'rubbed' | 'matched';

/** How each is drawn: by shape, dash and colour. */
export const TINT_STYLES: Readonly<Record<TintName, SeriesStyle>> = {
  reference: { className: 'series reference', shape: symbolCircle, filled: true },
  unrubbed: { className: 'series colour-1', shape: symbolSquare, filled: true, dash: '6 3' },
  rubbed: { className: 'series colour-2', shape: symbolTriangle, filled: true, dash: '2 2.5' },
  matched: { className: 'series colour-3', shape: symbolDiamond, filled: false, dash: '9 2 2 2' },
};
