import { assertFloat64Array } from './argument.js';
import { TintladderError } from './tintladder-error.js';

/**
 * The number of rows in a row-major array.
 *
 * @throws TintladderError `wrong-type`; `empty`; `not-a-multiple` if the last row is incomplete
 */
export function assertRows(values: Float64Array, stride: number, path: string): number {
  assertFloat64Array(values, path);
  if (values.length === 0) {
    throw new TintladderError('empty', { path: `${path}.length`, received: 0, expected: 'at least one row' });
  }
  if (values.length % stride !== 0) {
    throw new TintladderError('not-a-multiple', {
      path: `${path}.length`,
      received: values.length,
      expected: `a multiple of ${stride}`,
    });
  }
  return values.length / stride;
}

/**
 * The caller's output array, or a new one.
 *
 * @throws TintladderError `wrong-type`, `wrong-length`
 */
export function rowsOutput(out: Float64Array | undefined, length: number): Float64Array {
  if (out === undefined) return new Float64Array(length);
  assertFloat64Array(out, 'out');
  if (out.length !== length) {
    throw new TintladderError('wrong-length', { path: 'out.length', received: out.length, expected: `${length}` });
  }
  return out;
}
