import { TintladderError } from './tintladder-error.js';

/** Refuses what is no object with named properties: null, a missing argument, a string, a list, a function. */
export function assertObject(value: unknown, path: string, expected = 'an object'): asserts value is object {
  if (typeof value === 'object' && value !== null && !Array.isArray(value) && !ArrayBuffer.isView(value)) return;
  throw new TintladderError('wrong-type', { path, received: value, expected });
}

/** Refuses what is no list. */
export function assertArray(value: unknown, path: string, expected = 'a list'): asserts value is readonly unknown[] {
  if (Array.isArray(value)) return;
  throw new TintladderError('wrong-type', { path, received: value, expected });
}

/** Refuses what is no list with at least one entry. */
export function assertNonEmptyArray(value: unknown, path: string): asserts value is readonly unknown[] {
  assertArray(value, path);
  if (value.length > 0) return;
  throw new TintladderError('empty', { path, received: value, expected: 'a list of at least one' });
}

/** Refuses what is no list of numbers: an array or a typed array. The numbers themselves are left to the caller. */
export function assertNumberList(value: unknown, path: string): asserts value is ArrayLike<number> {
  if (Array.isArray(value) || isNumberView(value)) return;
  throw new TintladderError('wrong-type', { path, received: value, expected: 'a list of numbers' });
}

/** Refuses what is no `Float64Array`, which kernels over many rows take. */
export function assertFloat64Array(value: unknown, path: string): asserts value is Float64Array {
  if (value instanceof Float64Array) return;
  throw new TintladderError('wrong-type', { path, received: value, expected: 'a Float64Array' });
}

/** Refuses what is no text. */
export function assertString(value: unknown, path: string): asserts value is string {
  if (typeof value === 'string') return;
  throw new TintladderError('wrong-type', { path, received: value, expected: 'a text' });
}

/** Refuses what is no function. */
export function assertFunction(value: unknown, path: string): void {
  if (typeof value === 'function') return;
  throw new TintladderError('wrong-type', { path, received: value, expected: 'a function' });
}

function isNumberView(value: unknown): boolean {
  return (
    ArrayBuffer.isView(value) &&
    !(value instanceof DataView) &&
    !(value instanceof BigInt64Array) &&
    !(value instanceof BigUint64Array)
  );
}
