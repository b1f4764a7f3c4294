import { TintladderError } from '../core/index.js';
import { MEASUREMENT_FORMATS, type MeasurementFormat } from './formats.js';
import type { ReaderOptions } from './measurement/format-contract.js';
import type { ReflectanceScale } from './measurement/measurement.js';

/** How {@link readMeasurements} reads. */
export interface ReadOptions {
  /** @default recognised from the content */
  readonly format?: MeasurementFormat;
  /** Scale of the reflectance, over anything the file says. @default what the file says, else decided by its values */
  readonly scale?: ReflectanceScale;
  /** What to do with readings outside 360-830 nm: refuse the file, or drop them and say so. @default 'refuse' */
  readonly outsideRange?: 'refuse' | 'drop';
  /** Largest input, in bytes (characters of a string). @default 268435456 */
  readonly maxBytes?: number;
}

export interface CheckedReadOptions extends ReaderOptions {
  readonly format?: MeasurementFormat;
  readonly maxBytes: number;
}

const DEFAULT_MAX_BYTES = 2 ** 28;

// Checked by hand: a schema library would take longer to load than all the rest of the reader.
const EXPECTED: Readonly<Record<keyof ReadOptions, readonly unknown[] | 'size'>> = {
  format: MEASUREMENT_FORMATS,
  scale: ['fraction', 'percent'],
  outsideRange: ['refuse', 'drop'],
  maxBytes: 'size',
};

/** @throws TintladderError `invalid-option` */
export function checkReadOptions(options: ReadOptions): CheckedReadOptions {
  if (typeof options !== 'object' || options === null) throw invalidOption('options', options, 'an object');
  for (const [key, value] of Object.entries(options)) {
    const expected = Object.hasOwn(EXPECTED, key) ? EXPECTED[key as keyof ReadOptions] : undefined;
    if (expected === undefined) throw invalidOption('options', key, `one of ${Object.keys(EXPECTED).join(', ')}`);
    if (value === undefined) continue;
    if (expected === 'size') {
      if (!(typeof value === 'number' && value > 0)) throw invalidOption(`options.${key}`, value, 'a number above 0');
    } else if (!expected.includes(value)) throw invalidOption(`options.${key}`, value, `one of ${expected.join(', ')}`);
  }
  return {
    ...options,
    outsideRange: options.outsideRange ?? 'refuse',
    maxBytes: options.maxBytes ?? DEFAULT_MAX_BYTES,
  };
}

function invalidOption(path: string, received: unknown, expected: string): TintladderError {
  return new TintladderError('invalid-option', { path, received, expected });
}
