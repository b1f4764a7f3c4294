import { gridOf, type Spectrum, type Viewing } from '../colorimetry/index.js';
import type { Warning } from '../core/index.js';
import { assertObject, assertOptions } from '../core/internal.js';
import { type ChartDrawdown, checkedDrawdown } from './chart-drawdown.js';
import { contrastRatio } from './contrast-ratio.js';
import { type DrawdownHiding, drawdownHiding } from './drawdown-hiding.js';
import { type DrawdownOptions, noiseOf } from './drawdown-options.js';
import { drawdownWarnings } from './drawdown-warnings.js';
import { type FilmBand, filmBand } from './film-band.js';
import { assertSurface, type SurfaceCorrection } from './surface.js';

/** Options of {@link drawdownFilm}. */
export interface DrawdownFilmOptions extends DrawdownOptions {
  /** Illuminant and observer of the contrast ratio */
  readonly viewing: Viewing;
  /**
   * Contrast ratio that counts as hiding, between 0 and 1.
   *
   * @default 0.98
   */
  readonly ratio?: number | undefined;
  /** Share of the paint's volume that stays as dry film, above 0 to 1, if the thickness is a dry one; for the spreading rate */
  readonly volumeSolids?: number | undefined;
}

/** All that a drawdown over a chart tells of a paint, wavelength by wavelength. */
export interface DrawdownFilm {
  readonly kind: 'drawdown-film';
  readonly version: 1;
  readonly start: number;
  readonly step: number;
  readonly bands: readonly FilmBand[];
  /** Y over black / Y over white as measured */
  readonly contrastRatio: number;
  /** Absent where the readings can't tell it; a warning says why */
  readonly hiding?: DrawdownHiding;
  /** Whether the bare fields of the chart were read */
  readonly substrates: 'read' | 'unknown';
  /** µm; absent where K and S are those of the whole film */
  readonly thickness?: number;
  readonly viewing: Viewing;
  readonly surface: SurfaceCorrection;
  readonly noise: number;
  readonly warnings: readonly Warning[];
}

/**
 * The film of any drawdown over black and white, whether it hides, shows its substrate through, or does both at different wavelengths.
 *
 * A band that hides is no fault: R∞ is the mean of its readings and K/S is known; of K and S there is a lower bound only. Where the
 * substrate shows through, K and S follow from the two readings and the bare fields (Kubelka 1948, the same figures as
 * `filmCoefficients`). All bounds are those of 95 % for the stated noise of the readings, taken as independent; an error that is
 * common to all readings, a film of uneven thickness or another surface than the stated one is not in them.
 *
 * For strength, residual and rub-out the same drawdown is a kind of reading: `opaqueReading` gives what a layer through which nothing
 * shows would read.
 *
 * @param given - measured spectra over both fields, the bare fields, thickness in µm
 * @param options - viewing, surface (or `'none'`), noise of one reading, contrast ratio of hiding, volume solids
 * @returns R∞, K/S, K and S at each wavelength with bounds and what they rest on; contrast ratio, hiding thickness, spreading rate;
 * warnings `film-hides`, `substrate-unknown`, `readings-impossible`, `readings-reversed`, `fluorescence`, `negative-absorption`, `negative-scattering`
 * @throws TintladderError `grid-mismatch`; `invalid-option` for a surface, noise, ratio or volume solids that can't be, or for one bare field
 * alone; `out-of-range` for a thickness that is not positive; `zero-reflectance` if the film over white has Y = 0
 * @example
 * const flat = (R) => createSpectrum({ start: 400, step: 10, values: Array(31).fill(R), scale: 'fraction' });
 * const drawdown = { overBlack: flat(0.5), overWhite: flat(6 / 7), black: flat(0), white: flat(5 / 6), thickness: 4 };
 * drawdownFilm(drawdown, { viewing: D65_10, surface: 'none' }).bands[0].scattering.value // 0.25
 * @see Kubelka (1948), J. Opt. Soc. Am. 38, 448-457; ISO 6504-3 and ASTM D2805 for contrast ratio, hiding and spreading rate;
 * JCGM 100:2008, 5.1.3 for the bounds
 */
export function drawdownFilm(given: ChartDrawdown, options: DrawdownFilmOptions): DrawdownFilm {
  const drawdown = checkedDrawdown(given, 'drawdown');
  assertObject(options, 'options', 'viewing and surface');
  assertOptions(options, ['viewing', 'surface', 'noise', 'ratio', 'volumeSolids']);
  const { viewing, surface, ratio = 0.98, volumeSolids } = options;
  assertSurface(surface, 'options.surface');
  const noise = noiseOf(options);
  const { overBlack, overWhite, thickness } = drawdown;
  const { start, step } = gridOf(overBlack);
  const bands = filmBands(drawdown, surface, noise);
  const ratioOfFilm = contrastRatio(overBlack, overWhite, { viewing });
  const film = { drawdown, bands, surface, contrastRatio: ratioOfFilm };
  const hiding = drawdownHiding(film, { viewing, ratio, volumeSolids });
  return {
    kind: 'drawdown-film',
    version: 1,
    start,
    step,
    bands,
    contrastRatio: ratioOfFilm,
    ...(hiding && { hiding }),
    substrates: drawdown.black ? 'read' : 'unknown',
    ...(thickness !== undefined && { thickness }),
    viewing,
    surface,
    noise,
    warnings: drawdownWarnings(drawdown, bands, noise),
  };
}

/** The bands of a drawdown that was checked. */
export function filmBands(drawdown: ChartDrawdown, surface: SurfaceCorrection, noise: number): FilmBand[] {
  const { overBlack, overWhite, black, white, thickness = 1 } = drawdown;
  const { start, step } = gridOf(overBlack);
  const at = (spectrum: Spectrum, i: number) => spectrum.values[i];
  return Array.from(overBlack.values, (value, i) =>
    filmBand(
      start + i * step,
      {
        overBlack: value,
        overWhite: at(overWhite, i),
        ...(black && white && { substrates: { black: at(black, i), white: at(white, i) } }),
      },
      { surface, noise, thickness },
    ),
  );
}
