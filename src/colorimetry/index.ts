export * from '../core/index.js';
export { correctBandPass } from './band-pass.js';
export { type DeltaE2000Options, deltaE2000, deltaE2000Rows } from './ciede2000.js';
export { type Lab, labFromSpectrum, labFromXyz, xyzFromLab } from './cielab.js';
export { type ColourDifference, colourDifference } from './colour-difference.js';
export { BAND_PASSES, type BandPass, type Conditions, SPECULAR_MODES, type SpecularMode } from './conditions.js';
export { daylightIlluminant } from './daylight.js';
export { type DeltaECmcOptions, deltaECmc } from './delta-e-cmc.js';
export { type DeltaE94Options, deltaE94 } from './delta-e94.js';
export { deltaE99o } from './delta-e99o.js';
export { deltaEab } from './delta-eab.js';
export type { Grid } from './grid.js';
export type { Illuminant } from './illuminant.js';
export { ILLUMINANTS, type IlluminantName, type NamedIlluminant } from './illuminants.js';
export { labRows } from './lab-rows.js';
export { type Lch, labFromLch, lchFromLab } from './lch.js';
export { meanSpectrum } from './mean-spectrum.js';
export { type MetamerismIndex, type MetamerismOptions, metamerismIndex } from './metamerism.js';
export type { MeasuredColour, Reading } from './reading.js';
export { colourDifferenceOfReadings, type ReadingDifference } from './reading-difference.js';
export { resample } from './resample.js';
export { createSpectrum, gridOf, type Spectrum, type SpectrumInput } from './spectrum.js';
export { spectrumWarnings } from './spectrum-warnings.js';
export { type SrgbSwatch, srgbSwatch } from './srgb-swatch.js';
export {
  A_2,
  A_10,
  C_2,
  C_10,
  D50_2,
  D50_10,
  D55_2,
  D55_10,
  D65_2,
  D65_10,
  D75_2,
  D75_10,
  describeViewing,
  FL2_2,
  FL2_10,
  FL7_2,
  FL7_10,
  FL11_2,
  FL11_10,
  type Observer,
  type Viewing,
} from './viewing.js';
export { type Whiteness, whiteness } from './whiteness.js';
export { type SummationOptions, WIDE_STEPS, type WideStep } from './wide-step.js';
export { whitePoint, type Xyz, xyzFromSpectrum } from './xyz-from-spectrum.js';
export { yellowness } from './yellowness.js';
