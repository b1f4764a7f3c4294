import type { Spectrum } from '../colorimetry/index.js';
import { TintladderError } from '../core/index.js';
import type { AssignedReading } from './assigned-reading.js';
import { freshTintsOf, type ReadingGroups, tintsOf } from './reading-groups.js';
import { SERIES_FIELDS, SERIES_KINDS, type SeriesField } from './series-kinds.js';
import type { Study, StudyPackage } from './study.js';

/** The spectra of one package in one paint, at the dosage and grinding time at which it is judged. */
export interface CellReadings {
  readonly unrubbed: readonly Spectrum[];
  readonly rubbed: readonly Spectrum[];
  readonly storedUnrubbed: readonly Spectrum[];
  readonly storedRubbed: readonly Spectrum[];
}

/**
 * The readings that a package is judged by in a paint: at the values that it states for its series, else at those which the kinds
 * of series take, such as the longest grinding time.
 *
 * @throws TintladderError `study-invalid` if there are several values, the kind takes none and the package states none
 */
export function selectReadings(groups: ReadingGroups, item: StudyPackage, paint: string): CellReadings {
  const own = tintsOf(groups, item.id, paint);
  const places = SERIES_FIELDS.map((field) => [field, judgedAt(field, item, own)] as const);
  const judged = own.filter((reading) =>
    places.every(([field, value]) => reading[field] === undefined || reading[field] === value),
  );
  const pick = (area: 'unrubbed' | 'rubbed', storage: 'fresh' | 'stored') =>
    judged.filter((reading) => reading.area === area && reading.storage === storage).map(({ spectrum }) => spectrum);
  return {
    unrubbed: pick('unrubbed', 'fresh'),
    rubbed: pick('rubbed', 'fresh'),
    storedUnrubbed: pick('unrubbed', 'stored'),
    storedRubbed: pick('rubbed', 'stored'),
  };
}

/**
 * The value of a series at which a package is judged; undefined where its readings state none.
 *
 * @throws TintladderError `study-invalid` if the package has to state it
 */
export function judgedAt(
  field: SeriesField,
  item: StudyPackage,
  readings: readonly AssignedReading[],
): number | undefined {
  const stated = item[field];
  if (stated !== undefined) return stated;
  const values = [...new Set(readings.flatMap((reading) => reading[field] ?? []))].sort((a, b) => a - b);
  if (values.length === 0) return undefined;
  const value = SERIES_KINDS[field].judgedAt(values);
  if (value !== undefined) return value;
  throw new TintladderError('study-invalid', {
    path: `package ${item.id}, ${field}`,
    received: values,
    expected: `the one ${field} at which the package is judged`,
    hint: `Give the package its '${field}'.`,
  });
}

/** Refuses a paint in which the reference was not read: nothing could be compared there. */
export function assertReferenceRead(study: Study, groups: ReadingGroups): void {
  for (const paint of study.paints) {
    if (freshTintsOf(groups, study.reference, paint.id).length > 0) continue;
    throw new TintladderError('no-reference', {
      path: `paint ${paint.id}`,
      received: 0,
      expected: `at least one fresh, unrubbed reading of package ${study.reference}`,
    });
  }
}
