export * from '../core/index.js';
export { type AdjustBatchOptions, adjustBatch, type BatchAdjustment, type KnownStrength } from './adjust-batch.js';
export { BATCH_CORRECTIONS, BATCH_KINDS, type BatchCorrection, type BatchKind } from './correction.js';
