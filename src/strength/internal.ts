export { type Bands, spectralBands, tristimulusBands } from './reduction/bands.js';
export { absorptionOf } from './reduction/colorant-absorption.js';
