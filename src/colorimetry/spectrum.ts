import { TintladderError } from '../core/index.js';
import { assertNumberList, assertObject } from '../core/internal.js';
import { assertGrid, describeGrid, type Grid } from './grid.js';

const CHECKED: unique symbol = Symbol('checked spectrum');

/**
 * Reflectance factor on an evenly spaced wavelength grid: fractions, 1 = perfect reflecting diffuser; `start` and `step` in nm.
 *
 * {@link createSpectrum} makes one, and a function that takes it need not check it again. `JSON.stringify` writes the values as a plain list; what
 * comes back from JSON or a structured clone is taken as a spectrum by every function, which then checks it. Treat the values as immutable.
 */
export interface Spectrum {
  readonly start: number;
  readonly step: number;
  readonly values: Float64Array;
  readonly scale: 'fraction';
  readonly [CHECKED]: true;
}

/** Below every checked spectrum, so that no own property stands beside its data. */
const PROTOTYPE = /* @__PURE__ */ Object.freeze({
  [CHECKED]: true,
  toJSON(this: Spectrum): SpectrumInput {
    const { start, step, values, scale } = this;
    return { start, step, values: Array.from(values), scale };
  },
});

/** What {@link createSpectrum} takes. */
export interface SpectrumInput {
  /** First wavelength, nm, 360 or more. */
  readonly start: number;
  /** Distance between readings, nm, 1 to 20. */
  readonly step: number;
  /** Reflectance factors in the order of wavelength. */
  readonly values: ArrayLike<number>;
  /** What the values mean: 1 or 100 for the perfect reflecting diffuser. */
  readonly scale: 'fraction' | 'percent';
}

/** Reflectance factors up to this pass: fluorescent whites read above 1, but twice the perfect diffuser is a fault of scale. */
const HIGHEST_REFLECTANCE = 2;
/** Dark current and the zero of the calibration leave readings of black a little below zero; what is lower is no reflectance. */
const LOWEST_REFLECTANCE = -0.005;

/**
 * Makes a checked, frozen spectrum from readings; the values are copied.
 *
 * A reflectance factor a little above 1 (a fluorescent white) is legal and passes.
 *
 * @param input - grid in nm, values, and their scale
 * @returns the spectrum, in fractions
 * @throws TintladderError `grid-invalid` for fewer than two values, a step outside 1-20 nm, or readings outside
 * 360-830 nm; `wrong-type` for values that are no list; `not-finite` for a value that is no finite number; `reflectance-out-of-range` for a value below
 * -0.005, which is the noise of a reading of black, or above 2 (as a fraction); `invalid-option` for an unknown scale
 * @example createSpectrum({ start: 400, step: 100, values: [10, 20], scale: 'percent' }) // throws grid-invalid
 * @example createSpectrum({ start: 400, step: 10, values: [10, 20], scale: 'percent' }).values[1] // 0.2
 * @see ISO 18314-1 for the reflectance factor
 */
export function createSpectrum(input: SpectrumInput): Spectrum {
  assertObject(input, 'input', 'an object with start, step, values and scale');
  const { start, step, values, scale } = input;
  if (scale !== 'fraction' && scale !== 'percent') {
    throw new TintladderError('invalid-option', {
      path: 'scale',
      received: scale,
      expected: "'fraction' or 'percent'",
    });
  }
  assertNumberList(values, 'values');
  assertGrid({ start, step, count: values.length });
  const divisor = scale === 'percent' ? 100 : 1;
  const fractions = new Float64Array(values.length);
  for (let i = 0; i < values.length; i++) {
    const value = values[i];
    const path = () => `reflectance at ${start + i * step} nm (index ${i})`;
    if (!Number.isFinite(value)) {
      throw new TintladderError('not-finite', { path: path(), received: value, expected: 'a finite number' });
    }
    const fraction = value / divisor;
    if (fraction < LOWEST_REFLECTANCE || fraction > HIGHEST_REFLECTANCE) {
      throw new TintladderError('reflectance-out-of-range', {
        path: path(),
        received: value,
        expected: scale === 'percent' ? 'a percentage from -0.5 to 200' : 'a fraction from -0.005 to 2',
        hint: scale === 'fraction' && value > HIGHEST_REFLECTANCE ? "Pass scale: 'percent'?" : undefined,
      });
    }
    fractions[i] = fraction;
  }
  const data = { start, step, values: fractions, scale: 'fraction' };
  const spectrum: Spectrum = Object.freeze(Object.assign(Object.create(PROTOTYPE), data));
  return spectrum;
}

/**
 * What was passed as a spectrum: itself, if {@link createSpectrum} made it; what JSON or a structured clone made of it, checked anew.
 *
 * @throws TintladderError `wrong-type` if it is nothing of a spectrum; what `createSpectrum` throws
 */
export function asSpectrum(given: Spectrum, path: string): Spectrum {
  assertObject(given, path, 'a spectrum, as createSpectrum makes it');
  return CHECKED in given ? given : createSpectrum(given);
}

/**
 * The wavelength grid of a spectrum.
 *
 * @param spectrum - any spectrum
 * @returns first wavelength and step in nm, and the number of readings
 * @throws TintladderError `wrong-type`; what {@link createSpectrum} throws for one that is not checked yet
 * @example gridOf(createSpectrum({ start: 400, step: 10, values: [0.1, 0.2], scale: 'fraction' })).count // 2
 */
export function gridOf(spectrum: Spectrum): Grid {
  const { start, step, values } = asSpectrum(spectrum, 'spectrum');
  return { start, step, count: values.length };
}

/**
 * Refuses two spectra that are not on one grid: nothing is ever resampled or cut silently.
 *
 * @throws TintladderError `grid-mismatch`
 */
export function assertSameGrid(reference: Spectrum, sample: Spectrum, path: string): void {
  const same =
    reference.start === sample.start &&
    reference.step === sample.step &&
    reference.values.length === sample.values.length;
  if (same) return;
  throw new TintladderError('grid-mismatch', {
    path,
    received: gridOf(sample),
    expected: `the grid of the reference, ${describeGrid(gridOf(reference))}`,
    hint: 'Bring both to one grid first.',
  });
}
