export { type ErrorCode, type Fault, TintladderError } from '../errors.js';
export type { Warning } from '../warning.js';
export { type DeltaE2000Options, deltaE2000 } from './ciede2000.js';
export { type Lab, labFromSpectrum, labFromXyz, xyzFromLab } from './cielab.js';
export { type ColourDifference, colourDifference } from './colour-difference.js';
export { deltaEab } from './delta-eab.js';
export type { Grid } from './grid.js';
export { type Lch, labFromLch, lchFromLab } from './lch.js';
export type { Conditions, Reading } from './reading.js';
export { createSpectrum, gridOf, type Spectrum, type SpectrumInput } from './spectrum.js';
export { tristimulus, whitePoint, type Xyz } from './tristimulus.js';
export {
  A_2,
  A_10,
  C_2,
  C_10,
  D50_2,
  D50_10,
  D65_2,
  D65_10,
  describeViewing,
  type Illuminant,
  type IlluminantName,
  type Observer,
  type Viewing,
} from './viewing.js';
