export { asMeasurement } from './measurement/as-measurement.js';
