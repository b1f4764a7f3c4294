import type { SurfaceCorrection } from '../kubelka-munk/index.js';
import { internalOf, measuredOf, opaqueReflectance, ratioOf } from '../kubelka-munk/internal.js';

/** What rubbing did to the reflectance of a film, at the wavelengths at which the film has a K/S. */
export interface SpectralChange {
  /** nm */
  readonly wavelengths: readonly number[];
  /** Measured reflectance of the unrubbed area. */
  readonly reflectance: Float64Array;
  /** Measured reflectance, rubbed minus unrubbed. */
  readonly change: Float64Array;
  /** K/S of the unrubbed area. */
  readonly ratio: Float64Array;
  /** K/S of the white; zeros where it isn't known. */
  readonly white: Float64Array;
  readonly whiteKnown: boolean;
  /** Change of the measured reflectance for a unit of K/S, at the unrubbed area. */
  readonly slope: Float64Array;
  readonly surface: SurfaceCorrection;
  /** Of all wavelengths read, those that are looked at. */
  readonly bands: readonly number[];
}

const FIRST = 400;
const LAST = 700;
/** nm: grids such as 10/3 nm add up with rounding. */
const ROUNDING = 1e-6;
/** K/S: near a perfect white the slope has no bound. */
const LEAST = 1e-5;
const NUDGE = 1e-4;
/** Of the wavelengths between 400 and 700 nm, those that must have a K/S. */
const ENOUGH = 0.5;

/** Measured reflectance of both areas and, where it is known, of the white base, at some wavelengths in nm. */
export interface ReflectanceRows {
  readonly wavelengths: readonly number[];
  readonly unrubbed: Float64Array;
  readonly rubbed: Float64Array;
  readonly white?: Float64Array | undefined;
}

/**
 * The change from one reflectance to another, with what the forward models of the causes need. Without a white its K/S counts as none.
 *
 * @returns undefined where the film has no K/S at more than half of the wavelengths between 400 and 700 nm
 */
export function spectralChange(rows: ReflectanceRows, surface: SurfaceCorrection): SpectralChange | undefined {
  const { wavelengths, unrubbed, rubbed, white } = rows;
  const inside = wavelengths.flatMap((nm, i) => (nm >= FIRST - ROUNDING && nm <= LAST + ROUNDING ? [i] : []));
  const hasRatio = (R: number) => {
    const internal = internalOf(R, surface);
    return internal > 0 && internal <= 1;
  };
  const bands = inside.filter((i) => hasRatio(unrubbed[i]) && hasRatio(rubbed[i]));
  if (bands.length < 3 || bands.length < ENOUGH * inside.length) return undefined;
  const pick = (value: (i: number) => number) => Float64Array.from(bands, value);
  const ratio = pick((i) => ratioOf(internalOf(unrubbed[i], surface)));
  return {
    wavelengths: bands.map((i) => wavelengths[i]),
    reflectance: pick((i) => unrubbed[i]),
    change: pick((i) => rubbed[i] - unrubbed[i]),
    ratio,
    white: pick((i) => (white ? whiteRatio(white[i], surface) : 0)),
    whiteKnown: white !== undefined,
    slope: slopeOf(ratio, surface),
    surface,
    bands,
  };
}

/** Change of the measured reflectance for a unit of K/S. */
function slopeOf(ratio: Float64Array, surface: SurfaceCorrection): Float64Array {
  return ratio.map((F) => {
    const from = Math.max(F, LEAST);
    const to = from * (1 + NUDGE);
    return (measuredOf(opaqueReflectance(to), surface) - measuredOf(opaqueReflectance(from), surface)) / (to - from);
  });
}

/** A white that reads brighter than any film can be absorbs nothing. */
function whiteRatio(measured: number, surface: SurfaceCorrection): number {
  const internal = internalOf(measured, surface);
  return internal > 0 && internal < 1 ? ratioOf(internal) : 0;
}

/** The change of the measured reflectance from one K/S to another. */
export function changeOfRatio(from: Float64Array, to: (i: number) => number, surface: SurfaceCorrection): Float64Array {
  return from.map((F, i) => {
    const next = Math.max(to(i), 0);
    return measuredOf(opaqueReflectance(next), surface) - measuredOf(opaqueReflectance(F), surface);
  });
}
