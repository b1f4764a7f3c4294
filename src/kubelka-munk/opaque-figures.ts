import { boundedFigure } from './bounded-figure.js';
import { ratioOf } from './kubelka-munk.js';

/** R∞ with its bounds, and the K/S that belongs to each: a low reflectance has a high K/S. */
export function opaqueFigures(value: number | undefined, low: number, high: number) {
  const [lowest, highest] = [Math.max(0, low), Math.min(1, high)];
  return {
    opaqueReflectance: boundedFigure(value, lowest, highest),
    kOverS: boundedFigure(value === undefined ? undefined : ratioOf(value), ratioOf(highest), ratioOf(lowest)),
  };
}
