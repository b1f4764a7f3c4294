import { defineConfig } from 'vitest/config';

// Companion of stryker.config.json.
//
// The tests that mutants are run against: those of the rooms in MUTATION_ROOMS, and the published values. Left out are the tests that
// simulate thousands of films: they take longer than all others together, and what they claim (coverage of intervals, recognition of
// causes) is about a method and not about one line of it.
//
// Texts are not mutated: messages are for reading, and codes, places and diagnoses are compared by the tests as values. Lines that
// run only while a module loads are left out too (`ignoreStatic`): each would need all tests in a process of its own.
//
// One room at a time is quickest: MUTATION_ROOMS=rubout npx stryker run --mutate 'src/rubout/**/*.ts,!src/rubout/index.ts'
const rooms = process.env.MUTATION_ROOMS ?? 'colorimetry,strength,rubout,published';

export default defineConfig({
  test: {
    include: rooms.split(',').map((room) => `tests/${room}/**/*.test.ts`),
    exclude: ['tests/strength/interval-coverage.test.ts', 'tests/rubout/simulation.test.ts'],
  },
});
