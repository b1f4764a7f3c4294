export { lengthInterval } from './length-interval.js';
export { highestClaim, levelOfClaim } from './readings/claim.js';
export { ANYTHING, compileNamePattern, type NameParts, oneOf, placeholdersIn } from './readings/name-pattern.js';
export { nestReadings, type PlacedByName } from './readings/nest-readings.js';
export { type PlacedReading, type ReadRepeated, readRepeated, type UnitTree } from './readings/read-repeated.js';
export { describeRepetition } from './readings/repetition.js';
export { knownVariances } from './variance/precision.js';
export { topUnitMeans } from './variance/top-units.js';
export { meanOfTree, unitsAt } from './variance/unit-means.js';
