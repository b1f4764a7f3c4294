import { defineConfig } from 'vitest/config';

export default defineConfig({
  test: {
    include: ['tests/**/*.test.ts'],
    // Simulations and cold imports take seconds on a busy machine; nothing here is a test of speed.
    testTimeout: 60_000,
    hookTimeout: 60_000,
  },
});
