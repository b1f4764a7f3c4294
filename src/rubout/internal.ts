export { differenceScatter } from './difference-interval.js';
export { spotsOf } from './spots.js';
