import { defineConfig } from 'vitest/config';

export default defineConfig({
  test: {
    include: ['tests/**/*.test.ts'],
    // Nothing of ours keeps state but bounded caches, so that test files can share a process: half the time.
    isolate: false,
    // Simulations and cold imports take seconds on a busy machine; nothing here is a test of speed.
    testTimeout: 60_000,
    hookTimeout: 60_000,
  },
});
