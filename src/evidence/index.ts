export * from '../decision/index.js';
export { lengthInterval } from './length-interval.js';
export { CLAIMS, type Claim } from './readings/claim.js';
export {
  type GroupedReadings,
  type GroupReadingsOptions,
  groupReadings,
  type ReadingGroup,
} from './readings/group-readings.js';
export { BLOCKS, type Block, LEVELS, type Level, levelNoun } from './readings/level.js';
export { mapRepeated } from './readings/map-repeated.js';
export type { NameParts } from './readings/name-pattern.js';
export type {
  BlockLabels,
  Repeated,
  RepeatedDrawdowns,
  RepeatedSpots,
  RepeatedWeighings,
} from './readings/repeated.js';
export { type Repetition, repetitionOf } from './readings/repetition.js';
