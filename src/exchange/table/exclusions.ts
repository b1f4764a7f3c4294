import type { Exclusion } from '../measurement/format-contract.js';
import type { Notes } from '../text/notes.js';

/** Whether the caller leaves a reading out; what is left out is noted with the reason. */
export function isExcluded(
  name: string,
  line: number,
  exclusions: readonly Exclusion[],
  place: () => string,
  notes: Notes,
): boolean {
  const found = exclusions.find((one) => one.name === name && (one.line === undefined || one.line === line));
  if (!found) return false;
  notes.count(
    'readings-excluded',
    place(),
    (count) =>
      `${count === 1 ? 'One reading was' : `${count} readings were`} left out as the caller asks; the first, ${JSON.stringify(name)}, because: ${found.reason}`,
  );
  return true;
}
