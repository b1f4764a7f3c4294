export * from './colorimetry/index.js';
export * from './evidence/index.js';
export * from './exchange/index.js';
export * from './production/index.js';
export * from './report/index.js';
export * from './rubout/index.js';
export * from './strength/index.js';
export * from './study/index.js';
