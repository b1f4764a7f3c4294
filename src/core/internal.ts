export { assertFinite, assertFiniteArray, assertPositive, refuseNonFinite } from './finite.js';
export { asReadings } from './readings.js';
export { assertRows, rowsOutput } from './rows.js';
