import { isComputed } from './computed-rows.js';
import { isExcluded } from './exclusions.js';
import type { FileContext } from './file-context.js';

/** What tells whether a reading is left out. */
export interface Identity {
  readonly name: string;
  readonly replicate: string;
  readonly line: number;
}

/** Whether a row is no reading, or one that the caller leaves out; noted. */
export function isLeftOut(
  { name, replicate, line }: Identity,
  place: () => string,
  file: FileContext,
  samplesOnly = false,
): boolean {
  const { options, notes } = file;
  const out =
    (options.exclude !== undefined && isExcluded(name, line, options.exclude, place, notes)) ||
    (options.computedRows === 'leave-out' && !samplesOnly && isComputed(name, replicate, place, notes));
  if (out) file.leftOut++;
  return out;
}
