export { type CommonConditions, commonConditions, type NamedConditions } from './conditions.js';
export { geometriesAgree } from './geometry.js';
export { describeGrid } from './grid.js';
export { type LabOfReading, labOfReading } from './lab-of-reading.js';
export { isReading } from './reading.js';
export { sameViewing } from './same-viewing.js';
export { assertSameGrid } from './spectrum.js';
export { weightingTable } from './weighting.js';
