import type { Spectrum } from '../colorimetry/index.js';
import { TintladderError } from '../core/index.js';
import type { AssignedReading } from './assign-readings.js';
import { freshTintsOf, type ReadingGroups, tintsOf } from './reading-groups.js';
import type { Study, StudyPackage } from './study.js';

/** The spectra of one package in one paint, at the dosage and grinding time at which it is judged. */
export interface CellReadings {
  readonly unrubbed: readonly Spectrum[];
  readonly rubbed: readonly Spectrum[];
  readonly storedUnrubbed: readonly Spectrum[];
  readonly storedRubbed: readonly Spectrum[];
}

/**
 * The readings that a package is judged by in a paint: at its own dosage and grinding time if it states them, else at the only
 * dosage and the longest time there are.
 *
 * @throws TintladderError `study-invalid` if there are several dosages and the package states none
 */
export function selectReadings(groups: ReadingGroups, item: StudyPackage, paint: string): CellReadings {
  const own = tintsOf(groups, item.id, paint);
  const dosage = item.dosage ?? onlyDosage(own, item);
  const time = item.grindTime ?? longestTime(own);
  const judged = own.filter(
    (reading) =>
      (reading.dosage === undefined || reading.dosage === dosage) &&
      (reading.grindTime === undefined || reading.grindTime === time),
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

/** The longest grinding time among readings, min. */
export function longestTime(readings: readonly AssignedReading[]): number | undefined {
  const times = readings.flatMap(({ grindTime }) => grindTime ?? []);
  return times.length > 0 ? Math.max(...times) : undefined;
}

function onlyDosage(own: readonly AssignedReading[], item: StudyPackage): number | undefined {
  const dosages = [...new Set(own.flatMap(({ dosage }) => dosage ?? []))];
  if (dosages.length > 1) {
    throw new TintladderError('study-invalid', {
      path: `package ${item.id}, dosage`,
      received: dosages,
      expected: 'the one dosage at which the package is judged',
      hint: "Give the package its 'dosage'.",
    });
  }
  return dosages[0];
}

/** Refuses a paint in which the reference was not read: nothing could be compared there. */
export function assertReferenceRead(study: Study, groups: ReadingGroups): void {
  for (const paint of study.paints) {
    if (freshTintsOf(groups, study.reference, paint.id).length > 0) continue;
    throw new TintladderError('no-reference', {
      path: `paint ${paint.id}`,
      received: 'no fresh, unrubbed reading of the reference',
      expected: `at least one reading of package ${study.reference}`,
    });
  }
}
