import { createSpectrum, type Grid, type Spectrum } from '../../src/colorimetry/index.js';
import {
  measuredReflectance,
  reflectanceFromKOverS,
  type Surface,
  type SurfaceCorrection,
} from '../../src/strength/index.js';

// Invented colorants: K/S that one amount adds to the white base, as a bell over wavelength (nm) on a flat ground.

export const GRID: Grid = { start: 380, step: 10, count: 36 };
export const PAINT_SURFACE: Surface = { external: 0.04, internal: 0.6, specular: 'included' };

export type Curve = (wavelength: number) => number;

export const bell =
  (peak: number, width: number, height: number, ground = 0): Curve =>
  (wavelength) =>
    ground + height * Math.exp(-(((wavelength - peak) / width) ** 2));

/** A rutile white: hardly any K/S but for its band edge below 400 nm. */
export const RUTILE: Curve = (wavelength) => 0.003 + 3 / (1 + Math.exp((wavelength - 392) / 5));

export const COLORANTS: Readonly<Record<string, Curve>> = {
  yellow: bell(430, 45, 1.2, 0.004),
  red: bell(520, 50, 0.9, 0.01),
  blue: bell(610, 70, 0.8, 0.03),
  green: (wavelength) => bell(430, 40, 0.5)(wavelength) + bell(650, 50, 0.9, 0.02)(wavelength),
  black: (wavelength) => 0.6 * (550 / wavelength),
};

/** A reduction with this much colorant in the white base, as an instrument reads it. */
export function reduction(
  colorant: Curve,
  amount: number,
  {
    surface = 'none',
    white = RUTILE,
    grid = GRID,
    shift = () => 0,
  }: {
    surface?: SurfaceCorrection;
    white?: Curve;
    grid?: Grid;
    /** Added to the measured reflectance: noise, or a reading in the other specular mode. */
    shift?: Curve;
  } = {},
): Spectrum {
  const { start, step, count } = grid;
  const values = Array.from({ length: count }, (_, i) => {
    const wavelength = start + i * step;
    const internal = reflectanceFromKOverS(white(wavelength) + amount * colorant(wavelength));
    return measuredReflectance(internal, surface) + shift(wavelength);
  });
  return createSpectrum({ start, step, values, scale: 'fraction' });
}

/** Uniform random numbers from 0 to 1 (mulberry32). */
export function randomFrom(seed: number): () => number {
  let state = seed >>> 0;
  return () => {
    state = (state + 0x6d2b79f5) >>> 0;
    let t = Math.imul(state ^ (state >>> 15), 1 | state);
    t = (t + Math.imul(t ^ (t >>> 7), 61 | t)) ^ t;
    return ((t ^ (t >>> 14)) >>> 0) / 4294967296;
  };
}

/** Standard normal numbers by Box and Muller. */
export function normalFrom(seed: number): () => number {
  const random = randomFrom(seed);
  return () => Math.sqrt(-2 * Math.log(1 - random())) * Math.cos(2 * Math.PI * random());
}
