export { ERROR_CODES, type ErrorCode, FAULT_KINDS, type FaultKind } from './error-codes.js';
export { type Fault, type PlainError, TintladderError } from './tintladder-error.js';
export { WARNING_CODES, type Warning, type WarningCode } from './warning.js';
