import { D65_10 } from '../../src/colorimetry/index.js';
import { spectralBands } from '../../src/strength/reduction/bands.js';
import type { Dilution } from '../../src/strength/reduction/dilution.js';
import { GRID } from './simulated-reductions.js';

export const BANDS = spectralBands(D65_10, GRID);

/** The same value in every band. */
export const flatBands = (value: number) => new Float64Array(BANDS.count).fill(value);

/** A grey in a white without absorption: factors from a thousandth to a thousand. */
export const GREY: Dilution = {
  bands: BANDS,
  surface: 'none',
  white: flatBands(0),
  reference: flatBands(0.5),
  trial: flatBands(0.5),
  measuredReference: flatBands(0.381966),
};
