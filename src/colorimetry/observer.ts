import { refineBySpline } from '../numeric/internal.js';
import { parseColumns } from './columns.js';
import { OBSERVER_1931 } from './tables/observer-1931.js';
import { OBSERVER_1964 } from './tables/observer-1964.js';
import type { Observer } from './viewing.js';

/** Colour-matching functions at every nm from 360 to 830: index i is 360 + i nm. */
export interface ColourMatchingFunctions {
  readonly x: Float64Array;
  readonly y: Float64Array;
  readonly z: Float64Array;
}

const cache = new Map<Observer, ColourMatchingFunctions>();

/**
 * The colour-matching functions of a standard observer at 1 nm, splined from the 5 nm table and kept.
 */
export function colourMatchingFunctions(observer: Observer): ColourMatchingFunctions {
  const known = cache.get(observer);
  if (known) return known;
  const [, x, y, z] = parseColumns(observer === '2' ? OBSERVER_1931 : OBSERVER_1964);
  const functions = { x: refineBySpline(x, 5), y: refineBySpline(y, 5), z: refineBySpline(z, 5) };
  cache.set(observer, functions);
  return functions;
}
