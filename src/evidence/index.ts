export * from '../decision/index.js';
