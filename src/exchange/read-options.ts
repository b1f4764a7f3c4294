import * as z from 'zod/mini';
import { TintladderError } from '../errors.js';
import type { MeasurementFormat, ReflectanceScale } from './measurement.js';

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

export interface CheckedReadOptions extends ReadOptions {
  readonly outsideRange: 'refuse' | 'drop';
  readonly maxBytes: number;
}

const FORMATS = ['delimited-text', 'iso-28178', 'iso-17972', 'jcamp-dx'] as const;
const DEFAULT_MAX_BYTES = 2 ** 28;

const schema = z.strictObject({
  format: z.optional(z.enum(FORMATS, `one of ${FORMATS.join(', ')}`)),
  scale: z.optional(z.enum(['fraction', 'percent'], "'fraction' or 'percent'")),
  outsideRange: z.optional(z.enum(['refuse', 'drop'], "'refuse' or 'drop'")),
  maxBytes: z.optional(
    z.custom<number>((value) => typeof value === 'number' && value > 0, 'a number of bytes above 0'),
  ),
});

/** @throws TintladderError `invalid-option` */
export function checkReadOptions(options: ReadOptions): CheckedReadOptions {
  const checked = schema.safeParse(options);
  if (!checked.success) throw invalidOption(options, checked.error.issues[0]);
  return {
    ...options,
    outsideRange: options.outsideRange ?? 'refuse',
    maxBytes: options.maxBytes ?? DEFAULT_MAX_BYTES,
  };
}

function invalidOption(options: unknown, issue: z.core.$ZodIssue): TintladderError {
  if (issue.code === 'unrecognized_keys') {
    const expected = `one of ${Object.keys(schema.shape).join(', ')}`;
    return new TintladderError('invalid-option', { place: 'options', seen: issue.keys[0], expected });
  }
  const key = issue.path[0];
  if (key === undefined)
    return new TintladderError('invalid-option', { place: 'options', seen: options, expected: 'an object' });
  const seen = (options as Record<PropertyKey, unknown>)[key];
  return new TintladderError('invalid-option', { place: `options.${String(key)}`, seen, expected: issue.message });
}
