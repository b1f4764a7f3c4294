import { type Claim, highestClaim } from './claim.js';
import { type Level, levelNoun, wholeNoun } from './level.js';
import { type ReadRepeated, readRepeated } from './read-repeated.js';
import type { Repeated } from './repeated.js';

/** What was repeated, in figures and in words. */
export interface Repetition {
  /** Units of every level that was named, outermost first. */
  readonly units: readonly { readonly level: Level; readonly count: number }[];
  /** The outermost level of which there are at least two units: the interval of a figure comes from these. Absent for one reading. */
  readonly top?: Level;
  /** Units of that level; 1 for one reading. */
  readonly count: number;
  /** `3 weigh-ups`, `5 spots of one film`, `one reading`. */
  readonly noun: string;
  /** The highest claim that these readings carry by themselves, without a history. */
  readonly claim: Claim;
}

/**
 * What was repeated in a nest of readings, with its noun and the claim it carries.
 *
 * @param given - one reading, or a nest of {@link Repeated}
 * @param path - name of the argument, for faults
 * @throws TintladderError as every function that takes repeated readings: `repetition-unstated`, `level-misplaced`, `empty`, `wrong-length`
 * @example repetitionOf({ weighing: [1.1, 1.2, 1.3] }).noun // '3 weigh-ups'
 * @example repetitionOf({ spot: [1, 2] }).noun // '2 spots of one film'
 * @example repetitionOf({ weighing: [{ spot: [1, 2] }, { spot: [3] }] }).claim // 'mill-base'
 * @example repetitionOf([1, 2]) // throws repetition-unstated
 */
export function repetitionOf<Reading>(given: Repeated<Reading>, path = 'readings'): Repetition {
  return describeRepetition(readRepeated(given, path));
}

/** The same of readings that were read already. */
export function describeRepetition(read: ReadRepeated<unknown>): Repetition {
  const { levels, counts, top } = read;
  const level = top < 0 ? undefined : levels[top];
  return {
    units: levels.map((named, i) => ({ level: named, count: counts[i] })),
    ...(level && { top: level }),
    count: level ? counts[top] : 1,
    noun: level ? nounOf(level, counts[top], levels) : 'one reading',
    claim: highestClaim([read]),
  };
}

/** Weigh-ups are `of one grind` only where grinds were counted: few laboratories number what they make once. */
function nounOf(level: Level, count: number, levels: readonly Level[]): string {
  const whole = level === 'weighing' && !levels.includes('grind') ? undefined : wholeNoun(level);
  return whole ? `${levelNoun(level, count)} of one ${whole}` : levelNoun(level, count);
}
