import { TintladderError } from '../core/index.js';
import { assertOneOf, assertOptions } from '../core/internal.js';
import { MEASUREMENT_FORMATS, type MeasurementFormat } from './formats.js';
import type { Exclusion, ReaderOptions } from './measurement/format-contract.js';
import type { ReflectanceScale } from './quantity/reflectance-scale.js';
import { QUANTITIES_READ, type QuantityRead } from './quantity/to-reflectance.js';

/** How {@link readMeasurements} reads. Every option is the caller's word, which is stronger than anything the file says. */
export interface ReadOptions {
  /** @default recognised from the content */
  readonly format?: MeasurementFormat | undefined;
  /** Scale of the reflectance. @default what the file says, else decided by its values */
  readonly scale?: ReflectanceScale | undefined;
  /**
   * What the values are. `'K/S'` and `'absorbance'` are turned into reflectance, which is noted; `'reflectance'` reads a file that says something
   * else of its values.
   *
   * @default reflectance; a file that says something else is refused
   */
  readonly quantity?: QuantityRead | undefined;
  /** What to do with readings outside 360-830 nm: refuse the file, or drop them and say so. @default 'refuse' */
  readonly outsideRange?: 'refuse' | 'drop' | undefined;
  /** Step in nm, 1 to 20, to which fine or unevenly spaced readings are brought. @default none; such a file is refused */
  readonly resample?: number | undefined;
  /** Heading of the column that names the samples. @default the most telling heading */
  readonly names?: string | undefined;
  /** Readings to leave out, each with the reason, which is noted. */
  readonly exclude?: readonly Exclusion[] | undefined;
  /** What to do with rows named as a mean, a standard deviation or a difference of others. @default 'leave-out' */
  readonly computedRows?: 'leave-out' | 'keep' | undefined;
  /** Name of the file without its ending: it names the reading of a file that names none. */
  readonly fileName?: string | undefined;
  /** Largest input, in bytes (characters of a string). @default 268435456 */
  readonly maxBytes?: number | undefined;
}

export interface CheckedReadOptions extends ReaderOptions {
  readonly format?: MeasurementFormat | undefined;
  readonly maxBytes: number;
}

const DEFAULT_MAX_BYTES = 2 ** 28;

type Check = (value: unknown, path: string) => void;

// Checked by hand: a schema library would take longer to load than all the rest of the reader.
const CHECKS: Readonly<Record<keyof ReadOptions, Check>> = {
  format: oneOf(MEASUREMENT_FORMATS),
  scale: oneOf(['fraction', 'percent']),
  quantity: oneOf(QUANTITIES_READ),
  outsideRange: oneOf(['refuse', 'drop']),
  resample: between(1, 20, 'a step from 1 to 20 nm'),
  names: text,
  exclude: exclusions,
  computedRows: oneOf(['leave-out', 'keep']),
  fileName: text,
  maxBytes: between(Number.MIN_VALUE, Number.POSITIVE_INFINITY, 'a number above 0'),
};

/** The names of {@link ReadOptions}. */
export const READ_OPTIONS: readonly string[] = /* @__PURE__ */ Object.keys(CHECKS);

/** @throws TintladderError `wrong-type`, `invalid-option` */
export function checkReadOptions(options: ReadOptions): CheckedReadOptions {
  assertOptions(options, READ_OPTIONS);
  for (const [key, value] of Object.entries(options)) {
    if (isOption(key) && value !== undefined) CHECKS[key](value, `options.${key}`);
  }
  return {
    ...options,
    outsideRange: options.outsideRange ?? 'refuse',
    computedRows: options.computedRows ?? 'leave-out',
    maxBytes: options.maxBytes ?? DEFAULT_MAX_BYTES,
  };
}

function isOption(key: string): key is keyof ReadOptions {
  return Object.hasOwn(CHECKS, key);
}

function oneOf(allowed: readonly string[]): Check {
  return (value, path) => assertOneOf(value, allowed, path);
}

function between(low: number, high: number, expected: string): Check {
  return (value, path) => {
    if (!(typeof value === 'number' && value >= low && value <= high)) throw invalidOption(path, value, expected);
  };
}

function text(value: unknown, path: string): void {
  if (typeof value !== 'string' || value.trim() === '') throw invalidOption(path, value, 'a text');
}

function exclusions(value: unknown, path: string): void {
  if (!Array.isArray(value)) throw invalidOption(path, value, 'a list of { name, line, reason }');
  value.forEach((one: unknown, i) => {
    const at = `${path}[${i}]`;
    if (typeof one !== 'object' || one === null) throw invalidOption(at, one, '{ name, line, reason }');
    for (const [key, part] of Object.entries(one)) {
      if (key === 'name' || key === 'reason') text(part, `${at}.${key}`);
      else if (key !== 'line') throw invalidOption(at, key, 'name, line and reason');
      else if (part !== undefined) between(1, Number.MAX_SAFE_INTEGER, 'a line, counted from 1')(part, `${at}.line`);
    }
    for (const key of ['name', 'reason']) {
      if (!Object.hasOwn(one, key)) throw invalidOption(`${at}.${key}`, undefined, 'a text');
    }
  });
}

function invalidOption(path: string, received: unknown, expected: string): TintladderError {
  return new TintladderError('invalid-option', { path, received, expected });
}
