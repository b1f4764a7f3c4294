import { type Lab, labFromXyz, type Viewing, whitePoint, xyzFromLab } from '../colorimetry/index.js';
import type { Warning } from '../core/index.js';
import type { Interval } from '../decision/index.js';
import { studentQuantile } from '../numeric/internal.js';
import type { Deviations } from './change-noise.js';
import { changeOfRatio, type SpectralChange } from './spectral-change.js';
import { dot } from './spectral-noise.js';

/** How much stronger the rubbed area is than the unrubbed one. */
export interface RubOutStrengthChange {
  /** By least squares over the spectrum, %: positive where rubbing made the area stronger. */
  readonly changePercent: number;
  /** 95 %; absent where the readings do not show the scatter. */
  readonly interval?: Interval;
  /** Whether it comes from Lab values and not from spectra. */
  readonly approximate: boolean;
  /** ΔE*ab left between the rubbed area and the unrubbed one brought to its strength: the part that is no strength. */
  readonly residualDEab: number;
}

/** What the strength is a factor of, and how it fits. */
export interface FittedStrength {
  /** 0 = no change. */
  readonly change: number;
  /** Its 95 % interval. */
  readonly interval?: Interval;
  /** Change of reflectance at that strength. */
  readonly curve: Float64Array;
}

/** A strength, or why there is none. */
export interface StrengthFit {
  readonly fitted?: FittedStrength;
  readonly warnings: readonly Warning[];
}

/** Root mean square of what doubling the strength would do to the reflectance, below which there is no strength to speak of, or a weak one. */
const NONE = 5e-4;
const WEAK = 4e-3;
const STEPS = 6;

/**
 * The factor of the absorption that the coloured pigments add to the white, by least squares of reflectance over the spectrum: residuals of K/S
 * times dR/dF. A mass tone and a tint whose white isn't known have a factor of all their absorption.
 *
 * @returns without `fitted` where there is no absorption to speak of
 */
export function fitStrength(found: SpectralChange, deviations: readonly Deviations[]): StrengthFit {
  const { ratio, white, slope, change, surface } = found;
  const added = ratio.map((F, i) => F - white[i]);
  const effect = slope.map((value, i) => value * added[i]);
  const size = Math.sqrt(dot(effect, effect) / effect.length);
  const darker = added.filter((value) => value < 0).length;
  if (size < NONE || darker > added.length / 2) return { warnings: [noStrength(darker > added.length / 2)] };
  const next = (t: number) => changeOfRatio(ratio, (i) => white[i] + (1 + t) * added[i], surface);
  let t = 0;
  let tangent = effect;
  for (let step = 0; step < STEPS; step++) {
    const curve = next(t);
    const moved = next(t + 1e-4);
    tangent = moved.map((value, i) => (value - curve[i]) / 1e-4);
    const left = change.map((value, i) => value - curve[i]);
    t = Math.max(t + dot(tangent, left) / dot(tangent, tangent), -0.95);
  }
  const half = halfWidth(tangent, deviations);
  return {
    fitted: {
      change: t,
      ...(half !== undefined && { interval: { low: t - half, high: t + half } }),
      curve: next(t),
    },
    warnings: size < WEAK ? [weakStrength(size)] : [],
  };
}

/** Half of the 95 % interval: the larger scatter of spots and of drawdowns, with its own degrees of freedom. */
function halfWidth(tangent: Float64Array, deviations: readonly Deviations[]): number | undefined {
  const squares = dot(tangent, tangent);
  const halves = deviations.map(({ residuals, degreesOfFreedom, share }) => {
    const sum = residuals.reduce((total, residual) => total + (dot(tangent, residual) / squares) ** 2, 0);
    return studentQuantile(0.975, degreesOfFreedom) * Math.sqrt((share * sum) / degreesOfFreedom);
  });
  return halves.length > 0 ? Math.max(...halves) : undefined;
}

/** Wavelengths in nm that stand for X, Y and Z as three broad bands, for readings that are Lab values only. */
export const TRISTIMULUS_BANDS = [600, 550, 450] as const;

/** X, Y and Z over those of the white. */
export function tristimulusRow(lab: Lab, viewing: Viewing): Float64Array {
  const white = whitePoint(viewing);
  const { X, Y, Z } = xyzFromLab(lab, white);
  return Float64Array.of(X / white.X, Y / white.Y, Z / white.Z);
}

/** The way back from {@link tristimulusRow}. */
export function labOfTristimulusRow([x, y, z]: Float64Array, viewing: Viewing): Lab {
  const white = whitePoint(viewing);
  return labFromXyz({ X: x * white.X, Y: y * white.Y, Z: z * white.Z }, white);
}

function noStrength(darker: boolean): Warning {
  return {
    code: 'no-strength-change',
    message: darker
      ? 'The white absorbs more than the tint over most of the spectrum, so there is no strength: was the right white passed, or is this a mass tone?'
      : 'The film absorbs next to nothing beyond its white, so there is no strength that rubbing could change.',
    path: 'options.white',
  };
}

function weakStrength(size: number): Warning {
  return {
    code: 'absorption-weak',
    message: `Doubling the strength of this tint would change its reflectance by ${(100 * size).toFixed(2)} % of the perfect diffuser on average, so a strength is known roughly at best.`,
    path: 'unrubbed',
  };
}
