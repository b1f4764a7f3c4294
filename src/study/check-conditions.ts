import { commonConditions } from '../colorimetry/internal.js';
import type { Warning } from '../core/index.js';
import { assertOnSurface } from '../kubelka-munk/internal.js';
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
  assertOnSurface(named, study.surface, 'the surface of the study');
  const stated = readings.some(({ reading }) => reading.conditions.specular !== undefined);
  return { specularFrom: stated ? 'files' : study.surface === 'none' ? 'nowhere' : 'study', warnings };
}
