export * from './colorimetry/index.js';
