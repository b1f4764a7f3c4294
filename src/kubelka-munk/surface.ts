import { TintladderError } from '../core/index.js';

/**
 * The geometries for which the surface correction is known: diffuse light and a view near the normal, the reverse of it, and 45° against
 * the normal either way round. `di:8°` and `de:8°` of CIE are `'d:8°'` with the specular reflection included and excluded;
 * `45°a:0°` and `45°x:0°` are `'45°:0°'`.
 *
 * @example SURFACE_GEOMETRIES.length // 4
 * @see CIE 015:2018 for the notation; ISO 18314-2 for surface correction by geometry
 */
export const SURFACE_GEOMETRIES = Object.freeze(['d:8°', '8°:d', '45°:0°', '0°:45°'] as const);

/** One of {@link SURFACE_GEOMETRIES}. */
export type SurfaceGeometry = (typeof SURFACE_GEOMETRIES)[number];

/** Reflection at the boundary between air and film. */
export interface Surface {
  /** k1: share of the light that the surface reflects from outside, 0 <= k1 < 1; see `externalReflection`. */
  readonly external: number;
  /** k2: share of the diffuse light inside the film that the surface throws back, 0 <= k2 < 1. */
  readonly internal: number;
  /** Whether the instrument read the specular reflection with the rest. */
  readonly specular: 'included' | 'excluded';
  /**
   * How the sample was lit and viewed.
   *
   * @default 'd:8°'
   */
  readonly geometry?: SurfaceGeometry | undefined;
}

/**
 * What is to be done about the surface wherever K/S is computed from measured readings: a {@link Surface}, or `'none'` for readings that are
 * taken as internal reflectance as they stand. It is always stated, since it moves a strength by several percent.
 */
export type SurfaceCorrection = Surface | 'none';

/** True where light falls in or is viewed at 45°, so that no sphere gathers the specular reflection. */
export function isDirectional({ geometry }: Surface): boolean {
  return geometry === '45°:0°' || geometry === '0°:45°';
}

/**
 * Refuses a surface that no film can have, and anything that is neither a surface nor `'none'`.
 *
 * @throws TintladderError `invalid-option`
 */
export function assertSurface(surface: SurfaceCorrection, path = 'surface'): void {
  if (surface === 'none') return;
  if (typeof surface !== 'object' || surface === null) {
    throw new TintladderError('invalid-option', {
      path,
      received: surface,
      expected: "a surface { external, internal, specular } or 'none'",
      hint: "K/S from measured readings depends on it: state the surface, or 'none' for no correction.",
    });
  }
  const { external, internal, specular, geometry } = surface;
  for (const [name, value] of Object.entries({ external, internal })) {
    if (!(typeof value === 'number' && value >= 0 && value < 1)) {
      const expected = 'a fraction from 0 to below 1';
      throw new TintladderError('invalid-option', { path: `${path}.${name}`, received: value, expected });
    }
  }
  if (specular !== 'included' && specular !== 'excluded') {
    const expected = "'included' or 'excluded'";
    throw new TintladderError('invalid-option', { path: `${path}.specular`, received: specular, expected });
  }
  if (geometry !== undefined && !SURFACE_GEOMETRIES.includes(geometry)) {
    const expected = `one of ${SURFACE_GEOMETRIES.join(', ')}`;
    throw new TintladderError('invalid-option', { path: `${path}.geometry`, received: geometry, expected });
  }
  if (isDirectional(surface) && specular === 'included') {
    throw new TintladderError('invalid-option', {
      path: `${path}.specular`,
      received: specular,
      expected: `'excluded' for ${geometry}`,
      hint: 'At 45° the specular reflection of a film leaves past the detector.',
    });
  }
}

/**
 * The share of light that enters, is scattered once at the bottom and leaves again towards the detector, before any of it is thrown back
 * inside: (1 - k1)(1 - k2) where one of the two ways is diffuse, T(45°) T(0°) / n² where both are beams.
 *
 * @see Fresnel's equations for T; the factor 1 / n² is the widening of a beam that leaves the film (Snell)
 */
export function passedBySurface(surface: Surface): number {
  const { external, internal } = surface;
  if (!isDirectional(surface)) return (1 - external) * (1 - internal);
  const n = refractiveIndexOf(external);
  return (transmittanceAt45(n) * (1 - external)) / (n * n);
}

/** n of a smooth film in air from its k1: Fresnel at normal incidence, turned round. */
function refractiveIndexOf(external: number): number {
  const root = Math.sqrt(external);
  return (1 + root) / (1 - root);
}

/** Fresnel's transmittance of unpolarised light at 45°; with both cosines times √2, the incident one is 1 and the other √(2 - 1 / n²). */
function transmittanceAt45(n: number): number {
  const inside = Math.sqrt(2 - 1 / (n * n));
  const across = ((1 - n * inside) / (1 + n * inside)) ** 2;
  const along = ((n - inside) / (n + inside)) ** 2;
  return 1 - (across + along) / 2;
}
