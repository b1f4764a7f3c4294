import { type CommonConditions, commonConditions, isReading, type NamedConditions } from '../colorimetry/internal.js';
import type { SurfaceCorrection } from './surface.js';

/** A reading with the path where it was given. */
interface PlacedReading {
  readonly reading: object;
  readonly path: string;
}

/**
 * What readings state that are evaluated together on one surface, by the one rule of the package; a bare spectrum or colour states nothing.
 *
 * @throws TintladderError `conditions-mismatch`, its path the reading and the condition, where readings or the surface differ
 */
export function conditionsOnSurface(readings: readonly PlacedReading[], surface: SurfaceCorrection): CommonConditions {
  const named = readings.map(({ reading, path }) => ({
    name: path,
    conditions: isReading(reading) ? reading.conditions : {},
  }));
  const common = commonConditions(named);
  assertOnSurface(named, surface, 'options.surface');
  return common;
}

/**
 * Refuses readings that state another specular mode or geometry than the surface is corrected for; what readings leave open is the surface's to
 * state. A surface without geometry is corrected as for `d:8°`.
 *
 * @param name - what messages call the surface
 * @throws TintladderError `conditions-mismatch`, its path the reading and the condition
 */
export function assertOnSurface(readings: readonly NamedConditions[], surface: SurfaceCorrection, name: string): void {
  if (surface === 'none') return;
  const { specular, geometry = 'd:8°' } = surface;
  const stated = (key: 'specular' | 'geometry') =>
    readings.flatMap(({ name: reading, conditions: { [key]: value } }) =>
      value === undefined ? [] : [{ name: reading, conditions: { [key]: value } }],
    );
  commonConditions([{ name, conditions: { specular, geometry } }, ...stated('specular'), ...stated('geometry')]);
}
