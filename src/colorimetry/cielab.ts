import { assertFinite, assertObject } from '../core/internal.js';
import { cubeRoot } from './cube-root.js';
import { assertLab } from './finite-lab.js';
import type { Spectrum } from './spectrum.js';
import type { Viewing } from './viewing.js';
import type { SummationOptions } from './wide-step.js';
import { whitePoint, type Xyz, xyzFromSpectrum } from './xyz-from-spectrum.js';

/** CIELAB coordinates L*, a*, b*. They belong to the white they were computed with. */
export interface Lab {
  readonly L: number;
  readonly a: number;
  readonly b: number;
}

// The exact rationals of ISO/CIE 11664-4; the rounded 0.008856 and 7.787 leave a step at the join.
const JOIN = (6 / 29) ** 3;
const SLOPE = 841 / 108;
const OFFSET = 4 / 29;

/** The compressive function f of ISO/CIE 11664-4, from a ratio to the white. */
function compress(ratio: number): number {
  return ratio > JOIN ? cubeRoot(ratio) : SLOPE * ratio + OFFSET;
}

function isFinite3(x: number, y: number, z: number): boolean {
  return Number.isFinite(x) && Number.isFinite(y) && Number.isFinite(z);
}

/** Refuses what is no object, and a tristimulus value that is no finite number. */
export function assertXyz(xyz: Xyz, path: string): void {
  if (typeof xyz === 'object' && xyz !== null && isFinite3(xyz.X, xyz.Y, xyz.Z)) return;
  assertObject(xyz, path, 'tristimulus values X, Y and Z');
  assertFinite({ X: xyz.X, Y: xyz.Y, Z: xyz.Z }, path);
}

function expand(f: number): number {
  return f > 6 / 29 ? f * f * f : (f - OFFSET) / SLOPE;
}

/**
 * CIELAB from tristimulus values.
 *
 * @param xyz - tristimulus values of the colour
 * @param white - tristimulus values of the white, on the same scale
 * @returns L*, a*, b*
 * @throws TintladderError `not-finite` if a value is no finite number or the white has a zero
 * @example labFromXyz({ X: 19.41, Y: 28.41, Z: 11.5766 }, { X: 94.811, Y: 100, Z: 107.304 }).L // 60.2574
 * @see ISO/CIE 11664-4
 */
export function labFromXyz(xyz: Xyz, white: Xyz): Lab {
  assertXyz(xyz, 'xyz');
  assertXyz(white, 'white');
  const lab = labUnchecked(xyz, white);
  assertLab(lab, 'lab');
  return lab;
}

/** The arithmetic of {@link labFromXyz} without its checks: the one kernel of the single and the batch form. */
export function labUnchecked(xyz: Xyz, white: Xyz): Lab {
  const fx = compress(xyz.X / white.X);
  const fy = compress(xyz.Y / white.Y);
  const fz = compress(xyz.Z / white.Z);
  return { L: 116 * fy - 16, a: 500 * (fx - fy), b: 200 * (fy - fz) };
}

/**
 * Tristimulus values from CIELAB: the inverse of {@link labFromXyz}.
 *
 * @param lab - L*, a*, b*
 * @param white - tristimulus values of the white that the Lab values belong to
 * @returns X, Y, Z on the scale of the white
 * @throws TintladderError `not-finite`
 * @example xyzFromLab({ L: 100, a: 0, b: 0 }, { X: 94.811, Y: 100, Z: 107.304 }).X // 94.811
 * @see ISO/CIE 11664-4, reverse transformation
 */
export function xyzFromLab(lab: Lab, white: Xyz): Xyz {
  assertLab(lab, 'lab');
  assertXyz(white, 'white');
  const fy = (lab.L + 16) / 116;
  const xyz = {
    X: white.X * expand(fy + lab.a / 500),
    Y: white.Y * expand(fy),
    Z: white.Z * expand(fy - lab.b / 200),
  };
  assertXyz(xyz, 'xyz');
  return xyz;
}

/**
 * CIELAB of a reflectance spectrum.
 *
 * @param spectrum - reflectance factor
 * @param viewing - illuminant and observer
 * @param options - how readings more than 10 nm apart are interpolated
 * @returns L*, a*, b* under the white of `viewing`
 * @throws TintladderError `unknown-illuminant`, `unknown-observer`, `illuminant-range`; `invalid-option`
 * @example labFromSpectrum(createSpectrum({ start: 400, step: 10, values: Array(31).fill(1), scale: 'fraction' }), D65_10).L // 100
 * @see CIE 015:2018, 7.1; ISO/CIE 11664-4
 */
export function labFromSpectrum(spectrum: Spectrum, viewing: Viewing, options: SummationOptions = {}): Lab {
  return labFromXyz(xyzFromSpectrum(spectrum, viewing, options), whitePoint(viewing));
}
