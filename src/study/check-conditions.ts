import { commonConditions, type NamedConditions } from '../colorimetry/internal.js';
import type { Warning } from '../core/index.js';
import { type AssignedReading, placeText } from './assigned-reading.js';
import type { Study } from './study.js';

/** What the conditions of all readings come to, and where they were stated. */
export interface StudyConditions {
  /** Who states the specular mode that the surface correction takes: files and study alike, or the study alone. */
  readonly specularFrom: 'files' | 'study' | 'nowhere';
  readonly warnings: readonly Warning[];
}

/**
 * Compares the conditions of all readings of each paint, fresh and stored, whites included, by the one rule of the package; and those that files
 * state with the surface of the study.
 *
 * @throws TintladderError `conditions-mismatch` naming the reading, where specular mode or geometry differ from other readings of the paint or from
 * the surface of the study
 */
export function checkConditions(study: Study, readings: readonly AssignedReading[]): StudyConditions {
  const named = readings.map(({ reading, paint }) => ({
    paint,
    name: placeText(reading),
    conditions: reading.conditions,
  }));
  const warnings = study.paints.flatMap(({ id }) =>
    commonConditions(named.filter(({ paint }) => paint === id)).warnings.map((warning) => ({
      ...warning,
      path: `${warning.path} in ${id}`,
    })),
  );
  compareWithSurface(study, named);
  const stated = readings.some(({ reading }) => reading.conditions.specular !== undefined);
  return { specularFrom: stated ? 'files' : study.surface === 'none' ? 'nowhere' : 'study', warnings };
}

/**
 * A surface is corrected for the mode and geometry that the study states, so no file may state another; what files leave open is the study's to
 * state. A surface without geometry is corrected as for `d:8°`.
 */
function compareWithSurface({ surface }: Study, named: readonly NamedConditions[]): void {
  if (surface === 'none') return;
  const { specular, geometry = 'd:8°' } = surface;
  const stated = (key: 'specular' | 'geometry') =>
    named.flatMap(({ name, conditions: { [key]: value } }) =>
      value === undefined ? [] : [{ name, conditions: { [key]: value } }],
    );
  const own = { name: 'the surface of the study', conditions: { specular, geometry } };
  commonConditions([own, ...stated('specular'), ...stated('geometry')]);
}
