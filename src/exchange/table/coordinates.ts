import type { Lab, Xyz } from '../../colorimetry/index.js';
import { TintladderError } from '../../core/index.js';

/** L*, a*, b* or X, Y, Z as they stand in a file. */
export type Triple = readonly [number, number, number];

/** Lightness of twice the perfect diffuser, and chroma beyond any surface colour. */
const LARGEST_LIGHTNESS = 131;
const LARGEST_CHROMATIC = 300;
const LARGEST_TRISTIMULUS = 250;
/** Instruments read a little below zero near black. */
const NOISE = -1;

function within(value: number, low: number, high: number, path: string, what: string): number {
  if (value >= low && value <= high) return value;
  throw new TintladderError('out-of-range', { path, received: value, expected: `${what} from ${low} to ${high}` });
}

/** L*, a*, b*, refused outside what a colour can have; `placeOf` gives the place of each. */
export function toLab([L, a, b]: Triple, placeOf: (i: number) => string): Lab {
  return {
    L: within(L, NOISE, LARGEST_LIGHTNESS, placeOf(0), 'an L*'),
    a: within(a, -LARGEST_CHROMATIC, LARGEST_CHROMATIC, placeOf(1), 'an a*'),
    b: within(b, -LARGEST_CHROMATIC, LARGEST_CHROMATIC, placeOf(2), 'a b*'),
  };
}

/** X, Y, Z, refused outside what a colour can have. */
export function toXyz([X, Y, Z]: Triple, placeOf: (i: number) => string): Xyz {
  return {
    X: within(X, NOISE, LARGEST_TRISTIMULUS, placeOf(0), 'a tristimulus value'),
    Y: within(Y, NOISE, LARGEST_TRISTIMULUS, placeOf(1), 'a tristimulus value'),
    Z: within(Z, NOISE, LARGEST_TRISTIMULUS, placeOf(2), 'a tristimulus value'),
  };
}
