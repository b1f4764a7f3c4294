import type { Lab, Xyz } from '../colorimetry/index.js';
import { TintladderError } from '../core/index.js';
import { type DecimalMark, notANumber, parseFileNumber } from './file-number.js';
import type { TablePlan } from './table-plan.js';

/** Lightness of twice the perfect diffuser, and chroma beyond any surface colour. */
const LARGEST_LIGHTNESS = 131;
const LARGEST_CHROMATIC = 300;
const LARGEST_TRISTIMULUS = 250;
/** Instruments read a little below zero near black. */
const NOISE = -1;

type Triple = readonly [number, number, number];

/** Three coordinates of a row; `undefined` where all three cells are empty. */
export function readTriple(
  cells: readonly string[],
  indices: readonly [number, number, number],
  mark: DecimalMark,
  placeOf: (index: number) => string,
): Triple | undefined {
  if (indices.every((index) => cells[index].trim() === '')) return undefined;
  const read = (index: number) => {
    const value = parseFileNumber(cells[index], mark);
    if (value === undefined) throw notANumber(cells[index], mark, placeOf(index));
    return value;
  };
  return [read(indices[0]), read(indices[1]), read(indices[2])];
}

function within(value: number, low: number, high: number, path: string, what: string): number {
  if (value >= low && value <= high) return value;
  throw new TintladderError('out-of-range', { path, received: value, expected: `${what} from ${low} to ${high}` });
}

/** L*, a*, b* of a row, refused outside what a colour can have. */
export function toLab([L, a, b]: Triple, { lab }: TablePlan, placeOf: (index: number) => string): Lab {
  const at = (i: number) => placeOf(lab?.indices[i] ?? 0);
  return {
    L: within(L, NOISE, LARGEST_LIGHTNESS, at(0), 'an L*'),
    a: within(a, -LARGEST_CHROMATIC, LARGEST_CHROMATIC, at(1), 'an a*'),
    b: within(b, -LARGEST_CHROMATIC, LARGEST_CHROMATIC, at(2), 'a b*'),
  };
}

/** X, Y, Z of a row, refused outside what a colour can have. */
export function toXyz([X, Y, Z]: Triple, { xyz }: TablePlan, placeOf: (index: number) => string): Xyz {
  const at = (i: number) => placeOf(xyz?.indices[i] ?? 0);
  return {
    X: within(X, NOISE, LARGEST_TRISTIMULUS, at(0), 'a tristimulus value'),
    Y: within(Y, NOISE, LARGEST_TRISTIMULUS, at(1), 'a tristimulus value'),
    Z: within(Z, NOISE, LARGEST_TRISTIMULUS, at(2), 'a tristimulus value'),
  };
}
