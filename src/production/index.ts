export * from '../core/index.js';
export { type AdjustBatchOptions, adjustBatch, type BatchAdjustment } from './adjust-batch.js';
export { BATCH_CORRECTIONS, BATCH_KINDS, type BatchCorrection, type BatchKind } from './correction.js';
export type { KnownStrength } from './known-strength.js';
