export { assertFinite, assertFiniteArray, assertPositive, refuseNonFinite } from './finite.js';
export { decimalsFor, formatCount, formatFixed, formatList, formatSigned, withUnit } from './format.js';
export { asReadings } from './readings.js';
export { assertRows, rowsOutput } from './rows.js';
