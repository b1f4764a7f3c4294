import type { Conditions } from '../colorimetry/index.js';
import { type CommonConditions, commonConditions, type NamedConditions } from '../colorimetry/internal.js';
import type { SurfaceCorrection } from '../kubelka-munk/index.js';
import type { Area } from './area.js';

/** What areas that are compared were read under. */
export interface AreaConditions extends CommonConditions {
  /** Whether the readings saw the specular reflection: as they state it, otherwise as the surface correction does. */
  readonly specular?: 'included' | 'excluded' | undefined;
}

/**
 * What the readings of some areas state, the white among them, under the package's one rule. The surface correction joins in where the
 * readings state what it speaks of.
 *
 * @throws TintladderError `conditions-mismatch`
 */
export function conditionsOfAreas(areas: readonly Area[], surface: SurfaceCorrection): AreaConditions {
  const readings = areas.flatMap(({ readings: given, paths }) =>
    given.map(
      (reading, i): NamedConditions => ({
        name: paths[i],
        conditions: 'conditions' in reading ? reading.conditions : {},
      }),
    ),
  );
  const stated = (condition: keyof Conditions) =>
    readings.some(({ conditions }) => conditions[condition] !== undefined);
  const corrected: Conditions =
    surface === 'none'
      ? {}
      : {
          ...(stated('specular') && { specular: surface.specular }),
          ...(stated('geometry') && surface.geometry !== undefined && { geometry: surface.geometry }),
        };
  const joins = Object.keys(corrected).length > 0;
  const ofSurface: NamedConditions[] = joins ? [{ name: 'options.surface', conditions: corrected }] : [];
  const common = commonConditions([...readings, ...ofSurface]);
  const first = readings.find(({ conditions }) => conditions.specular !== undefined)?.conditions.specular;
  return { ...common, specular: first ?? (surface === 'none' ? undefined : surface.specular) };
}
