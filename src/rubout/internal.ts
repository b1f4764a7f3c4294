export { differenceScatter } from './difference-interval.js';
