import { assertOneOf, refuseNonFinite } from '../../core/internal.js';

/**
 * What can be made anew, outermost first: a grind of a mill base, a weigh-up (weighing and mixing of a reduction), a drawdown, a spot of a film.
 *
 * A unit of one level holds units of the next: whatever is made anew at one level is made anew at all levels below.
 */
export const LEVELS = ['grind', 'weighing', 'drawdown', 'spot'] as const;

/** One of {@link LEVELS}. */
export type Level = (typeof LEVELS)[number];

/** What lies across the levels: readings of one day or of one session of the instrument share what that day or session did to all. */
export const BLOCKS = ['day', 'session'] as const;

/** One of {@link BLOCKS}. */
export type Block = (typeof BLOCKS)[number];

/** Whether a text names a level. */
export function isLevel(name: string): name is Level {
  return (LEVELS as readonly string[]).includes(name);
}

/** Whether a text names a block. */
export function isBlock(name: string): name is Block {
  return (BLOCKS as readonly string[]).includes(name);
}

const UNIT_NOUNS: Readonly<Record<Level, string>> = {
  grind: 'grind',
  weighing: 'weigh-up',
  drawdown: 'drawdown',
  spot: 'spot',
};

/** What spots lie on is spoken of as a film. */
const WHOLE_NOUNS: Readonly<Record<Level, string>> = { ...UNIT_NOUNS, drawdown: 'film' };

/**
 * A number of units of a level in words.
 *
 * @param level - one of {@link LEVELS}
 * @param count - how many
 * @throws TintladderError `invalid-option` for what is no level; `not-finite`
 * @example levelNoun('weighing', 3) // '3 weigh-ups'
 * @example levelNoun('drawdown', 1) // 'one drawdown'
 */
export function levelNoun(level: Level, count: number): string {
  assertOneOf(level, LEVELS, 'level');
  refuseNonFinite(count, 'count');
  return count === 1 ? `one ${UNIT_NOUNS[level]}` : `${count} ${levelPlural(level)}`;
}

/** Units of a level that are still to be made: `2 more weigh-ups`. */
export function moreOfLevel(level: Level, count: number): string {
  return count === 1 ? `one more ${UNIT_NOUNS[level]}` : `${count} more ${levelPlural(level)}`;
}

/** Units of a level in general: `weigh-ups`. */
export function levelPlural(level: Level): string {
  return `${UNIT_NOUNS[level]}s`;
}

/** The thing that units of a level are parts of: spots are parts of a film; grinds are parts of nothing smaller than a package. */
export function wholeNoun(level: Level): string | undefined {
  const parent = LEVELS[LEVELS.indexOf(level) - 1];
  return parent === undefined ? undefined : WHOLE_NOUNS[parent];
}
