/** Seeded numbers from 0 to 1, the same in every run (Numerical Recipes' quick generator). */
export function randomNumbers(seed: number): () => number {
  let state = seed;
  return () => {
    state = (Math.imul(state, 1664525) + 1013904223) >>> 0;
    return state / 2 ** 32;
  };
}
