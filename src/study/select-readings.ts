import type { Spectrum } from '../colorimetry/index.js';
import { TintladderError } from '../errors.js';
import type { AssignedReading } from './assign-readings.js';
import type { Study, StudyPackage } from './study.js';

/** The spectra of one package in one paint, at the dosage and grinding time at which it is judged. */
export interface CellReadings {
  readonly unrubbed: readonly Spectrum[];
  readonly rubbed: readonly Spectrum[];
  readonly storedUnrubbed: readonly Spectrum[];
  readonly storedRubbed: readonly Spectrum[];
}

/** Fresh, unrubbed tints of one package in one paint: what curves over time and dosage are made of. */
export function freshTints(readings: readonly AssignedReading[], id: string, paint: string): AssignedReading[] {
  return readings.filter(
    (reading) =>
      reading.role === 'tint' &&
      reading.package === id &&
      reading.paint === paint &&
      reading.area === 'unrubbed' &&
      reading.storage === 'fresh',
  );
}

/** The readings of the untinted white base of a paint. */
export function whiteReadings(readings: readonly AssignedReading[], paint: string): Spectrum[] {
  return readings.filter(({ role, paint: own }) => role === 'white' && own === paint).map(({ spectrum }) => spectrum);
}

/**
 * The readings that a package is judged by in a paint: at its own dosage and grinding time if it states them, else at the only
 * dosage and the longest time there are.
 *
 * @throws TintladderError `study-invalid` if there are several dosages and the package states none
 */
export function selectReadings(readings: readonly AssignedReading[], item: StudyPackage, paint: string): CellReadings {
  const own = readings.filter(
    ({ role, package: id, paint: base }) => role === 'tint' && id === item.id && base === paint,
  );
  const dosage = item.dosage ?? onlyDosage(own, item);
  const times = own.flatMap(({ grindTime }) => (grindTime === undefined ? [] : [grindTime]));
  const time = item.grindTime ?? (times.length > 0 ? Math.max(...times) : undefined);
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

function onlyDosage(own: readonly AssignedReading[], item: StudyPackage): number | undefined {
  const dosages = [...new Set(own.flatMap(({ dosage }) => (dosage === undefined ? [] : [dosage])))];
  if (dosages.length > 1) {
    throw new TintladderError('study-invalid', {
      place: `package ${item.id}, dosage`,
      seen: dosages,
      expected: 'the one dosage at which the package is judged',
      mend: "Give the package its 'dosage'.",
    });
  }
  return dosages[0];
}

/** Refuses a paint in which the reference was not read: nothing could be compared there. */
export function assertReferenceRead(study: Study, readings: readonly AssignedReading[]): void {
  for (const paint of study.paints) {
    if (freshTints(readings, study.reference, paint.id).length > 0) continue;
    throw new TintladderError('no-reference', {
      place: `paint ${paint.id}`,
      seen: 'no fresh, unrubbed reading of the reference',
      expected: `at least one reading of package ${study.reference}`,
    });
  }
}
