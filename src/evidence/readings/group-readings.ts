import { TintladderError } from '../../core/index.js';
import { assertArray, assertObject, assertOneOf, assertOptions, assertString } from '../../core/internal.js';
import { BLOCKS, isBlock, isLevel, LEVELS, type Level } from './level.js';
import { compileNamePattern, type NameParts, oneOf, placeholdersIn } from './name-pattern.js';
import { addTo, nestReadings, type PlacedByName } from './nest-readings.js';
import type { Repeated } from './repeated.js';

/** What {@link groupReadings} may be told beside the pattern. */
export interface GroupReadingsOptions {
  /** Texts that a placeholder takes, such as `{ package: ['A', 'A1'] }`; any text where none are given. */
  readonly words?: Readonly<Record<string, readonly string[]>> | undefined;
  /** What readings of one and the same name are: instruments often write the same name for every spot. Refused where left out. */
  readonly sameName?: Level | undefined;
}

/** Readings that differ in nothing but what was repeated. */
export interface ReadingGroup<Measurement> {
  /** The texts of all placeholders that are no level, day or session, such as `{ paint: 'W', package: 'A' }`. */
  readonly key: NameParts;
  readonly readings: Repeated<Measurement>;
}

/** What {@link groupReadings} makes of a list of measurements. */
export interface GroupedReadings<Measurement> {
  /** In the order of their first readings. */
  readonly groups: readonly ReadingGroup<Measurement>[];
  /** Names that the pattern doesn't fit, as they came. */
  readonly unmatched: readonly string[];
}

/**
 * Repeated readings from a list of measurements, by a pattern of their names.
 *
 * Placeholders called after a level (`{grind} {weighing} {drawdown} {spot}`) tell the units, whatever their order in the name; `{day}` and
 * `{session}` become labels; all others tell the groups; `{any}` takes text that doesn't matter. A level takes letters and digits, other
 * placeholders any text, the shortest that fits: state `words` where that is ambiguous.
 *
 * @param measurements - objects with a `name`, as `readMeasurements` gives them
 * @param pattern - literal text with placeholders in braces
 * @throws TintladderError `wrong-type`; `invalid-option`; `pattern-invalid`; `repetition-unstated` for several readings of one name without `sameName`;
 * `level-misplaced` where `sameName` is not below all levels of the pattern, or a unit lies in two days or sessions at a time
 * @example
 * const list = ['W A 1-1', 'W A 1-2', 'W A 2-1', 'W R 1-1'].map((name) => ({ name }));
 * groupReadings(list, '{paint} {package} {weighing}-{spot}').groups.map(({ key, readings }) => `${key.package}: ${repetitionOf(readings).noun}`) // ['A: 2 weigh-ups', 'R: one reading']
 */
export function groupReadings<Measurement extends { readonly name: string }>(
  measurements: readonly Measurement[],
  pattern: string,
  options: GroupReadingsOptions = {},
): GroupedReadings<Measurement> {
  assertArray(measurements, 'measurements');
  measurements.forEach((measurement, i) => {
    assertObject(measurement, `measurements[${i}]`, 'a measurement with its name');
    assertString(measurement.name, `measurements[${i}].name`);
  });
  assertString(pattern, 'pattern');
  assertOptions(options, ['words', 'sameName']);
  const { words = {}, sameName } = options;
  assertObject(words, 'options.words', 'lists of texts by the names of placeholders');
  for (const [name, list] of Object.entries(words)) assertArray(list, `options.words.${name}`);
  if (sameName !== undefined) assertOneOf(sameName, LEVELS, 'options.sameName');
  const placeholders = placeholdersIn(pattern, 'pattern');
  const levels = LEVELS.filter((level) => placeholders.includes(level));
  const blocks = BLOCKS.filter((block) => placeholders.includes(block));
  const lowest = levels.at(-1);
  if (sameName !== undefined && lowest !== undefined && LEVELS.indexOf(sameName) <= LEVELS.indexOf(lowest)) {
    const expected = `a level below ${lowest}, the lowest of the pattern`;
    throw new TintladderError('level-misplaced', { path: 'options.sameName', received: sameName, expected });
  }
  const read = compileNamePattern(pattern, (name) =>
    words[name] ? oneOf(words[name]) : isLevel(name) ? '[\\p{L}\\p{N}]+' : '.+?',
  );
  const unmatched: string[] = [];
  const groups = new Map<string, PlacedByName<Measurement>[]>();
  measurements.forEach((measurement, i) => {
    assertObject(measurement, `measurements[${i}]`, 'a measurement with a name');
    assertString(measurement.name, `measurements[${i}].name`);
    const parts = read(measurement.name);
    if (parts === undefined) unmatched.push(measurement.name);
    else addTo(groups, JSON.stringify(keyOf(parts)), { measurement, path: `measurements[${i}]`, parts });
  });
  return {
    groups: [...groups.values()].map((members) => ({
      key: keyOf(members[0].parts),
      readings: nestReadings(members, { levels, blocks, sameName }),
    })),
    unmatched,
  };
}

function keyOf(parts: NameParts): NameParts {
  return Object.fromEntries(Object.entries(parts).filter(([name]) => !isLevel(name) && !isBlock(name)));
}
