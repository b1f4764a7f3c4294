export * from './colorimetry/index.js';
export * from './exchange/index.js';
export * from './rubout/index.js';
export * from './strength/index.js';
