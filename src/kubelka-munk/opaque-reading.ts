import { createSpectrum, type Spectrum } from '../colorimetry/index.js';
import { asSpectrum } from '../colorimetry/internal.js';
import { TintladderError, type Warning } from '../core/index.js';
import { assertObject, assertOptions } from '../core/internal.js';
import { checkedDrawdown, isChartDrawdown, type PaintReading } from './chart-drawdown.js';
import { filmBands } from './drawdown-film.js';
import { type DrawdownOptions, noiseOf } from './drawdown-options.js';
import { drawdownWarnings } from './drawdown-warnings.js';
import { measuredOf } from './saunderson.js';
import { assertSurface } from './surface.js';

/** What a layer through which nothing shows would read, and what a reader must know of it. */
export interface OpaqueReading {
  /** Measured reflectance, on the surface that was stated */
  readonly spectrum: Spectrum;
  readonly warnings: readonly Warning[];
}

/**
 * The reading of a paint as a layer through which nothing shows: a spectrum is taken as one, and of a drawdown over a chart R∞ is found and
 * carried back through the surface.
 *
 * This is how a drawdown serves wherever a spectrum of an opaque layer is asked for: strength, residual and rub-out take the result with the
 * same surface. R∞ is known whether a film hides or not, so that neither kind of film is refused.
 *
 * @param reading - a spectrum of a layer that hides, or a drawdown over a chart with its bare fields
 * @param options - surface (or `'none'`) and noise of the drawdown
 * @returns the measured spectrum of an opaque layer, with the warnings of the film (of a spectrum none)
 * @throws TintladderError `no-solution` naming the wavelengths at which R∞ is not known: the chart shows through and was not read, or no
 * film gives the readings; otherwise as `drawdownFilm`
 * @example
 * const flat = (R) => createSpectrum({ start: 400, step: 10, values: [R, R], scale: 'fraction' });
 * const drawdown = { overBlack: flat(0.42), overWhite: flat(0.5), black: flat(0.02), white: flat(0.8) };
 * opaqueReading(drawdown, { surface: 'none' }).spectrum.values[0] // 0.45685
 * @see Kubelka (1948), J. Opt. Soc. Am. 38, 448-457
 */
export function opaqueReading(reading: PaintReading, options: DrawdownOptions): OpaqueReading {
  assertObject(options, 'options', 'surface and noise');
  assertOptions(options, ['surface', 'noise']);
  assertSurface(options.surface, 'options.surface');
  const noise = noiseOf(options);
  if (!isChartDrawdown(reading)) return { spectrum: asSpectrum(reading, 'reading'), warnings: [] };
  const drawdown = checkedDrawdown(reading, 'reading');
  const { start, step } = drawdown.overBlack;
  const bands = filmBands(drawdown, options.surface, noise);
  const warnings = drawdownWarnings(drawdown, bands, noise);
  const values = bands.map(({ opaqueReflectance, wavelength, state }) => {
    if (opaqueReflectance.value !== undefined) return measuredOf(opaqueReflectance.value, options.surface);
    throw new TintladderError('no-solution', {
      path: `reading at ${wavelength} nm`,
      received: state,
      expected: 'a drawdown whose opaque reflectance is known',
      hint: warnings.find(({ code }) => code === 'readings-impossible' || code === 'substrate-unknown')?.message,
    });
  });
  return { spectrum: createSpectrum({ start, step, values, scale: 'fraction' }), warnings };
}
