import type { Warning } from '../../core/index.js';
import { mean, studentQuantile } from '../../numeric/internal.js';
import type { CurveStep } from './monotone-curve.js';

/** Numbers of steps at the end that may have fallen off together. */
const TAILS = [1, 2, 3];
/** Chance of calling a curve that rises or stays level falling. */
const RISK = 0.05;

/**
 * Too much can harm, grinding as well as additive: says so where the last one to three steps lie below as many before them by more than
 * the points scatter. On a curve that rises or stays level the difference is negative only by chance.
 *
 * @param question - what to ask then: `Was it ground too long?`
 */
export function fallingOff(steps: readonly CurveStep[], degreesOfFreedom: number, question: string): Warning[] {
  const quantile = studentQuantile(1 - RISK / TAILS.length, degreesOfFreedom);
  const drops = TAILS.flatMap((count) => {
    if (steps.length < 2 * count + 1) return [];
    const [before, tail] = [steps.slice(-2 * count, -count), steps.slice(-count)];
    const drop = mean(before.map(({ value }) => value)) - mean(tail.map(({ value }) => value));
    const error = Math.hypot(...[...before, ...tail].map((step) => step.error)) / count;
    return error > 0 && drop > quantile * error ? [{ count, inErrors: drop / error }] : [];
  });
  if (drops.length === 0) return [];
  const clearest = drops.reduce((most, drop) => (drop.inErrors > most.inErrors ? drop : most));
  const from = steps[steps.length - clearest.count].at;
  const message = `From ${from} on the figures fall off by more than they scatter. ${question}`;
  return [{ code: 'falls-off', path: String(from), message, figures: { from } }];
}
