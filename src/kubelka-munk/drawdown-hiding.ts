import { createSpectrum, type Spectrum, type Viewing } from '../colorimetry/index.js';
import { TintladderError } from '../core/index.js';
import { type BoundedFigure, boundedFigure } from './bounded-figure.js';
import type { ChartDrawdown } from './chart-drawdown.js';
import type { FilmBand } from './film-band.js';
import { hidingThickness, spreadingRate } from './hiding.js';
import { internalOf } from './saunderson.js';
import type { SurfaceCorrection } from './surface.js';

/** Where a paint hides, and how far a litre of it goes then. */
export interface DrawdownHiding {
  /** Contrast ratio that counts as hiding */
  readonly ratio: number;
  /** Film thickness at that ratio: µm where the thickness was stated, otherwise in thicknesses of the film that was read */
  readonly thickness: BoundedFigure;
  /** m² a litre at that thickness; only where the thickness was stated */
  readonly spreadingRate?: BoundedFigure;
}

/** Films this many times as deep as the one read hide; it stands for a coefficient without an upper bound. */
const DEEP = 1e6;
/** A value is given where the hidden bands leave the thickness open by no more than this share (our own rule, no source). */
const OPEN = 0.05;

/**
 * Hiding thickness and spreading rate of a drawdown, with bounds from those of K and S: a film with the lowest coefficients hides latest. Bands
 * that hide leave their coefficients open upwards; a value is given where that hardly matters.
 *
 * @returns nothing where the bare fields were not read, a band is impossible, or no thickness reaches the ratio
 */
export function drawdownHiding(
  film: {
    readonly drawdown: ChartDrawdown;
    readonly bands: readonly FilmBand[];
    readonly surface: SurfaceCorrection;
    readonly contrastRatio: number;
  },
  { viewing, ratio, volumeSolids }: { viewing: Viewing; ratio: number; volumeSolids: number | undefined },
): DrawdownHiding | undefined {
  const { drawdown, bands, surface } = film;
  const { black, white, thickness } = drawdown;
  if (!black || !white || bands.some(({ state }) => state === 'impossible')) return undefined;
  const unit = thickness ?? 1;
  const chart = { black: internalChart(black, surface), white: internalChart(white, surface) };
  const reachedAt = (side: (band: FilmBand) => Coefficients) => {
    const all = bands.map(side);
    const coefficients = { absorption: all.map(({ K }) => K), scattering: all.map(({ S }) => S) };
    return solved(() => hidingThickness({ ...coefficients, ...chart }, { viewing, ratio, surface }).thickness);
  };
  const deep = (band: FilmBand): Coefficients => ({ K: (DEEP * (band.kOverS.value ?? 0)) / unit, S: DEEP / unit });
  const lowest = ({ absorption, scattering }: FilmBand) => ({ K: absorption.low ?? 0, S: scattering.low ?? 0 });
  const highest = (band: FilmBand) =>
    band.absorption.high === undefined || band.scattering.high === undefined
      ? deep(band)
      : { K: band.absorption.high, S: band.scattering.high };
  const told = (hidden: (band: FilmBand) => Coefficients) => (band: FilmBand) =>
    band.absorption.value === undefined || band.scattering.value === undefined
      ? hidden(band)
      : { K: band.absorption.value, S: band.scattering.value };

  const latest = reachedAt(lowest) ?? Infinity;
  const high = film.contrastRatio >= ratio ? Math.min(latest, unit) : latest;
  const low = reachedAt(highest) ?? 0;
  const ends = [reachedAt(told(deep)), reachedAt(told(lowest))];
  const [first = Infinity, last = Infinity] = ends;
  if (high === Infinity && first === Infinity) return undefined;
  const value = last <= first * (1 + OPEN) && last < Infinity ? Math.sqrt(first * last) : undefined;
  const figure = boundedFigure(value, low, Math.max(high, value ?? 0));
  return { ratio, thickness: figure, ...(thickness !== undefined && { spreadingRate: spread(figure, volumeSolids) }) };
}

interface Coefficients {
  readonly K: number;
  readonly S: number;
}

/** A field of the chart as internal reflectance; noise of a black field that reaches below the surface reflection is none. */
function internalChart({ start, step, values }: Spectrum, surface: SurfaceCorrection): Spectrum {
  const inside = values.map((value) => Math.min(Math.max(internalOf(value, surface), 0), 1));
  return createSpectrum({ start, step, values: inside, scale: 'fraction' });
}

/** Nothing where no film has the ratio. */
function solved(find: () => number): number | undefined {
  try {
    return find();
  } catch (error) {
    if (error instanceof TintladderError && error.code === 'no-solution') return undefined;
    throw error;
  }
}

function spread({ value, low, high }: BoundedFigure, volumeSolids: number | undefined): BoundedFigure {
  const rate = (thickness: number) => spreadingRate(thickness, { volumeSolids });
  return boundedFigure(
    value === undefined ? undefined : rate(value),
    high === undefined ? 0 : rate(high),
    low === undefined || low === 0 ? Infinity : rate(low),
  );
}
