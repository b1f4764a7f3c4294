export type { BoundedFigure } from './bounded-figure.js';
export { bronzingWarnings } from './bronzing.js';
export { type ChartDrawdown, isChartDrawdown, type PaintReading } from './chart-drawdown.js';
export { contrastRatio } from './contrast-ratio.js';
export { type DrawdownFilm, type DrawdownFilmOptions, drawdownFilm } from './drawdown-film.js';
export type { DrawdownHiding } from './drawdown-hiding.js';
export type { DrawdownOptions } from './drawdown-options.js';
export { type Film, type FilmSpectra, filmReflectance, filmSpectrum } from './film.js';
export { FILM_BAND_STATES, type FilmBand, type FilmBandState } from './film-band.js';
export {
  type FilmCoefficientSpectra,
  type FilmCoefficients,
  type FilmPair,
  type FilmPairSpectra,
  filmCoefficientSpectra,
  filmCoefficients,
} from './film-coefficients.js';
export {
  type FilmAndReflectivity,
  type FilmAndReflectivitySpectra,
  filmCoefficientSpectraFromReflectivity,
  filmCoefficientsFromReflectivity,
} from './film-from-reflectivity.js';
export { fitSurface, type SurfaceFit, type SurfaceFitReadings } from './fit-surface.js';
export { type HidingFilm, type HidingOptions, type HidingThickness, hidingThickness, spreadingRate } from './hiding.js';
export { kOverS, kOverSRows, reflectanceFromKOverS } from './kubelka-munk.js';
export { type OpaqueReading, opaqueReading } from './opaque-reading.js';
export { externalReflection, internalReflectance, measuredReflectance } from './saunderson.js';
export { SURFACE_GEOMETRIES, type Surface, type SurfaceCorrection, type SurfaceGeometry } from './surface.js';
