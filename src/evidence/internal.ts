export { lengthInterval } from './length-interval.js';
