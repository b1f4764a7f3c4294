import { computedRow } from '../measurement/computed-names.js';
import type { Notes } from '../text/notes.js';

/** Notes and reports a row that is computed from others (a mean, a standard deviation, a difference) and no reading of its own. */
export function isComputed(name: string, replicate: string, place: () => string, notes: Notes): boolean {
  const kind = computedRow(name) ?? computedRow(replicate);
  if (!kind) return false;
  if (kind === 'statistic') {
    notes.count(
      'statistics-left-out',
      place(),
      (count) =>
        `${count === 1 ? 'One row is' : `${count} rows are`} named as a mean or another statistic of others and no reading; left out.`,
    );
  } else {
    notes.count(
      'differences-left-out',
      place(),
      (count) => `${count === 1 ? 'One row is' : `${count} rows are`} named as a difference and no reading; left out.`,
    );
  }
  return true;
}
