export { type Bands, spectralBands, tristimulusBands } from './reduction/bands.js';
export { absorptionOf } from './reduction/colorant-absorption.js';
export { type StrengthsAgainst, strengthsAgainst } from './strengths-against.js';
