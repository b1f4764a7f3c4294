export { type Bands, spectralBands, tristimulusBands } from './bands.js';
export { absorptionOf } from './colorant-absorption.js';
