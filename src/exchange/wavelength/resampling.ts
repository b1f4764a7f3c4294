import type { Grid } from '../../colorimetry/index.js';
import { TintladderError } from '../../core/index.js';
import type { Notes } from '../text/notes.js';

/** One reading of a new grid as a weighted sum of neighbouring readings. */
export interface BandWeights {
  /** Index of the first reading that counts. */
  readonly first: number;
  readonly weights: readonly number[];
}

const SHORTEST = 360;
const LONGEST = 830;

/**
 * Brings ascending wavelengths to whole multiples of a step. Where there are at least two readings per step they are averaged under a triangle
 * of the step's half-width, as an instrument of that band-pass reads; else a cubic through the four nearest readings is taken.
 *
 * @throws TintladderError `grid-invalid` for readings that hold fewer than two steps
 * @see CIE 015:2018, 7.2 on measuring and interpolating; the triangular band-pass is that of ASTM E308
 */
export function resampleTo(
  wavelengths: readonly number[],
  step: number,
  path: string,
  notes: Notes,
): { readonly grid: Grid; readonly resampling: readonly BandWeights[] } {
  const last = wavelengths[wavelengths.length - 1];
  const start = Math.ceil(Math.max(wavelengths[0], SHORTEST) / step - 1e-9) * step;
  const count = Math.floor((Math.min(last, LONGEST) - start) / step + 1e-9) + 1;
  if (!(count >= 2)) {
    throw new TintladderError('grid-invalid', {
      path,
      received: wavelengths[0],
      expected: `readings over at least two steps of ${step} nm`,
    });
  }
  const widest = Math.max(...wavelengths.slice(1).map((wavelength, i) => wavelength - wavelengths[i]));
  if (widest > 2 * Math.max(step, 20)) {
    throw new TintladderError('wavelengths-uneven', {
      path,
      received: widest,
      expected: `readings at most ${2 * Math.max(step, 20)} nm apart, to be interpolated`,
    });
  }
  notes.add('wavelengths-resampled', `The readings were brought to a step of ${step} nm.`, path, {
    readings: wavelengths.length,
    widest,
    step,
  });
  const resampling = Array.from({ length: count }, (_, i) => weightsAt(start + i * step, wavelengths, step));
  return { grid: { start, step, count }, resampling };
}

function weightsAt(at: number, wavelengths: readonly number[], step: number): BandWeights {
  const exact = wavelengths.findIndex((wavelength) => Math.abs(wavelength - at) < 1e-9);
  // symmetrical, so that a slope is not shifted at the ends
  const width = Math.min(step, at - wavelengths[0], wavelengths[wavelengths.length - 1] - at);
  const inside = wavelengths.flatMap((wavelength, i) => (Math.abs(wavelength - at) < width ? [i] : []));
  if (inside.length >= 4) {
    const first = inside[0];
    const triangle = inside.map((i) => spacing(wavelengths, i) * (1 - Math.abs(wavelengths[i] - at) / width));
    const sum = triangle.reduce((total, weight) => total + weight, 0);
    return { first, weights: triangle.map((weight) => weight / sum) };
  }
  if (exact >= 0) return { first: exact, weights: [1] };
  const above = wavelengths.findIndex((wavelength) => wavelength > at);
  const size = Math.min(4, wavelengths.length);
  const first = Math.min(Math.max(0, above - 2), wavelengths.length - size);
  const points = wavelengths.slice(first, first + size);
  const weights = points.map((point, i) =>
    points.reduce((product, other, j) => (i === j ? product : (product * (at - other)) / (point - other)), 1),
  );
  return { first, weights };
}

/** The stretch of wavelengths that a reading stands for. */
function spacing(wavelengths: readonly number[], i: number): number {
  const before = wavelengths[Math.max(0, i - 1)];
  const after = wavelengths[Math.min(wavelengths.length - 1, i + 1)];
  return (after - before) / 2;
}
