import { type SeriesStyle, styleAt } from './series-style.js';
import { TINT_STYLES, type TintName } from './tint-style.js';

/** A style as plain data: the place of a package in the comparison, 0 being the reference, or the name of a tint. */
export type StyleName = number | TintName;

/** How a series of this name is drawn. */
export function styleOf(name: StyleName): SeriesStyle {
  return typeof name === 'number' ? styleAt(name) : TINT_STYLES[name];
}
