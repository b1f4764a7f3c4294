import { type CommonConditions, isReading } from '../colorimetry/internal.js';
import type { SurfaceCorrection } from '../kubelka-munk/index.js';
import { conditionsOnSurface } from '../kubelka-munk/internal.js';
import type { Area } from './area.js';

/** What areas that are compared were read under. */
export interface AreaConditions extends CommonConditions {
  /** Whether the readings saw the specular reflection: as they state it, otherwise as the surface correction does. */
  readonly specular?: 'included' | 'excluded' | undefined;
}

/**
 * What the readings of some areas state, the white among them, under the package's one rule, and that they fit the surface.
 *
 * @throws TintladderError `conditions-mismatch`
 */
export function conditionsOfAreas(areas: readonly Area[], surface: SurfaceCorrection): AreaConditions {
  const placed = areas.flatMap(({ readings, paths }) => readings.map((reading, i) => ({ reading, path: paths[i] })));
  const common = conditionsOnSurface(placed, surface);
  const stated = placed.flatMap(({ reading }) => (isReading(reading) ? (reading.conditions.specular ?? []) : []));
  return { ...common, specular: stated.at(0) ?? (surface === 'none' ? undefined : surface.specular) };
}
