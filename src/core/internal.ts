export {
  assertArray,
  assertFloat64Array,
  assertFunction,
  assertNonEmptyArray,
  assertNumberList,
  assertObject,
  assertString,
} from './argument.js';
export { assertFinite, assertFiniteArray, assertPositive, refuseNonFinite } from './finite.js';
export { decimalsFor, formatCount, formatFixed, formatList, formatSigned, withUnit } from './format.js';
export { nearestName } from './nearest-name.js';
export { assertBetween, assertFlag, assertOneOf, assertOptions } from './options.js';
export { asReadings } from './readings.js';
export { assertRows, rowsOutput } from './rows.js';
