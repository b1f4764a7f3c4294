import { defineConfig, mergeConfig } from 'vitest/config';
import all from './vitest.config.js';

// The tests that take least, for while one works: everything but simulations, whole commands, long series of random cases and what
// compiles or bundles the package.
export default mergeConfig(
  all,
  defineConfig({
    test: {
      exclude: [
        'node_modules/**',
        'tests/**/*simulation*',
        'tests/cli/**',
        'tests/examples/**',
        'tests/study/declared-outcomes.test.ts',
        'tests/colorimetry/differences.test.ts',
        'tests/colorimetry/rotation-term.test.ts',
        'tests/exchange/mutated-files.test.ts',
        'tests/fits/grind/grinding-time-saved.test.ts',
        'tests/repository/doc-types.test.ts',
        'tests/repository/optional-properties.test.ts',
        'tests/repository/size.test.ts',
      ],
    },
  }),
);
