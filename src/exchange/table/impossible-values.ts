import { TintladderError } from '../../core/index.js';
import type { ReflectanceScale } from '../quantity/reflectance-scale.js';
import type { Notes } from '../text/notes.js';
import type { ReadingPlaces } from './raw-reading.js';

/** Twice the perfect diffuser is no reflectance, as a fraction. */
const HIGHEST = 2;
/** Dark current and the zero of the calibration leave readings of black a little below zero; more is no reflectance. As a fraction. */
export const LOWEST_NOISE = -0.005;

/**
 * Refuses readings that no reflectance can be: beyond twice the perfect diffuser, below zero by more than noise, and leaps between neighbours that
 * only a change of scale explains. Small negative readings are kept and noted.
 */
export function refuseImpossible(
  values: Float64Array,
  scale: ReflectanceScale,
  stated: boolean,
  places: ReadingPlaces,
  notes: Notes,
): void {
  const unit = scale === 'percent' ? 100 : 1;
  let lowest = 0;
  for (let i = 0; i < values.length; i++) {
    const value = values[i];
    if (value > HIGHEST * unit || value < LOWEST_NOISE * unit) throw impossible(value, unit, places.value(i), stated);
    if (value < lowest) lowest = value;
  }
  if (lowest < 0) {
    notes.count(
      'negative-noise',
      places.value(values.indexOf(lowest)),
      (count) =>
        `${count === 1 ? 'One spectrum reads' : `${count} spectra read`} a little below zero (down to ${LOWEST_NOISE * 100} % is taken for noise); the values were kept.`,
    );
  }
  if (unit === 100 && !stated) refuseLeaps(values, places);
}

function impossible(value: number, unit: number, path: string, stated: boolean): TintladderError {
  return new TintladderError('reflectance-out-of-range', {
    path,
    received: value,
    expected:
      unit === 100
        ? `a percentage from ${LOWEST_NOISE * 100} to ${HIGHEST * 100}`
        : `a fraction from ${LOWEST_NOISE} to ${HIGHEST}`,
    ...(unit === 1 && stated && value > HIGHEST
      ? { hint: "If the values are percentages, pass scale: 'percent'." }
      : {}),
  });
}

function refuseLeaps(values: Float64Array, places: ReadingPlaces): void {
  for (let i = 1; i < values.length; i++) {
    const low = Math.min(values[i - 1], values[i]);
    const high = Math.max(values[i - 1], values[i]);
    // no pigment's reflectance rises fortyfold from one reading to the next
    if (low < 1 && high > 10 && high > 40 * low && low > 0) {
      throw new TintladderError('scale-mixed', {
        path: places.value(values[i] === low ? i : i - 1),
        received: low,
        expected: `one scale throughout a spectrum (${high} stands beside it)`,
        hint: "If the values are right, pass scale: 'percent'.",
      });
    }
  }
}
