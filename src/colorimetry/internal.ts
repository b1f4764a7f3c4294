export { describeGrid } from './grid.js';
export { assertSameGrid } from './spectrum.js';
export { weightingTable } from './weighting.js';
