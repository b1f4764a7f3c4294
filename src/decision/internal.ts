export { type Estimate, formatEstimate, formatInterval, quoteEstimate, shortInterval } from './estimate.js';
export { formatLimit } from './format-limit.js';
export { assertLimit } from './limit.js';
