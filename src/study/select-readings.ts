import { TintladderError } from '../core/index.js';
import type { Repeated } from '../evidence/index.js';
import type { Measurement } from '../exchange/index.js';
import type { AssignedReading } from './assigned-reading.js';
import { nestAssigned } from './nest-assigned.js';
import { freshTintsOf, type ReadingGroups, tintsOf } from './reading-groups.js';
import { SERIES_FIELDS, SERIES_KINDS, type SeriesField } from './series-kinds.js';
import { groupedBy } from './series-steps.js';
import type { Study, StudyPackage } from './study.js';

/** The readings of one package in one paint as they were repeated, at the dosage and grinding time at which it is judged. */
export interface CellReadings {
  readonly unrubbed: Repeated<Measurement> | undefined;
  readonly storedUnrubbed: Repeated<Measurement> | undefined;
  /** Both areas of the drawdowns that were rubbed, in one order. */
  readonly rubOut: RubbedDrawdowns | undefined;
  readonly storedRubOut: RubbedDrawdowns | undefined;
}

/** Both areas of drawdowns, which pair by position. */
export interface RubbedDrawdowns {
  readonly unrubbed: Repeated<Measurement>;
  readonly rubbed: Repeated<Measurement>;
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
    judged.filter((reading) => reading.area === area && reading.storage === storage);
  return {
    unrubbed: nestAssigned(pick('unrubbed', 'fresh')),
    storedUnrubbed: nestAssigned(pick('unrubbed', 'stored')),
    rubOut: pairAreas(pick('unrubbed', 'fresh'), pick('rubbed', 'fresh')),
    storedRubOut: pairAreas(pick('unrubbed', 'stored'), pick('rubbed', 'stored')),
  };
}

/** The readings of both areas of each drawdown that has both; a drawdown that was left alone says nothing of rubbing. */
function pairAreas(
  unrubbed: readonly AssignedReading[],
  rubbed: readonly AssignedReading[],
): RubbedDrawdowns | undefined {
  const [whole, worked] = [groupedBy(unrubbed, drawdownOf), groupedBy(rubbed, drawdownOf)];
  const both = [...whole.keys()].filter((drawdown) => worked.has(drawdown));
  const [before, after] = [whole, worked].map((area) =>
    nestAssigned(both.flatMap((drawdown) => area.get(drawdown) ?? [])),
  );
  return before && after && { unrubbed: before, rubbed: after };
}

/** What two readings of one drawdown share. */
function drawdownOf({ grind, weighing, drawdown }: AssignedReading): string {
  return JSON.stringify([grind, weighing, drawdown]);
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
