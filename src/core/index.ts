export { type ErrorCode, type Fault, TintladderError } from './tintladder-error.js';
export type { Warning } from './warning.js';
