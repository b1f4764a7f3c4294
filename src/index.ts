export * from './colorimetry/index.js';
export * from './strength/index.js';
export * from './rubout/index.js';
