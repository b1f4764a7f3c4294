import type { BandPass, Conditions, IlluminantName, Observer, SpecularMode } from '../../colorimetry/index.js';

/** What a file says of the conditions, each part on its own. */
export interface StatedParts {
  readonly illuminant?: IlluminantName;
  readonly observer?: Observer;
  readonly specular?: SpecularMode;
  readonly geometry?: string;
  readonly instrument?: string;
  /** What was read between two calibrations of one instrument. */
  readonly session?: string;
  readonly bandPass?: BandPass;
}

/** The parts of {@link StatedParts}. */
export const CONDITION_PARTS = [
  'illuminant',
  'observer',
  'specular',
  'geometry',
  'instrument',
  'session',
  'bandPass',
] as const;

/** One of {@link CONDITION_PARTS}. */
export type ConditionPart = (typeof CONDITION_PARTS)[number];

export const NOTHING_STATED: StatedParts = Object.freeze({});

/** Parts of two statements, of which `near` is the nearer to the number and wins; `contradicted` is told of each part that differs. */
export function mergeParts(
  near: StatedParts,
  far: StatedParts,
  contradicted?: (part: ConditionPart, near: string, far: string) => void,
): StatedParts {
  if (contradicted) {
    for (const part of CONDITION_PARTS) {
      const [first, second] = [near[part], far[part]];
      if (first !== undefined && second !== undefined && first !== second) contradicted(part, first, second);
    }
  }
  return { ...far, ...near };
}

/** Illuminant and observer of stated parts as a viewing, where both are stated. */
export function viewingOf({ illuminant, observer }: StatedParts): Conditions['viewing'] {
  return illuminant !== undefined && observer !== undefined ? { illuminant, observer } : undefined;
}

/** Conditions of a reading from their parts. */
export function toConditions(parts: StatedParts): Conditions {
  const { specular, geometry, instrument, session, bandPass } = parts;
  const viewing = viewingOf(parts);
  return {
    ...(viewing ? { viewing } : {}),
    ...(specular ? { specular } : {}),
    ...(geometry ? { geometry } : {}),
    ...(instrument ? { instrument } : {}),
    ...(session ? { session } : {}),
    ...(bandPass ? { bandPass } : {}),
  };
}
