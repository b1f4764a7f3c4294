import { TintladderError } from '../../core/index.js';
import type { Block, Level } from './level.js';
import type { NameParts } from './name-pattern.js';
import type { Repeated } from './repeated.js';

/** A measurement with what its name says of it. */
export interface PlacedByName<Measurement> {
  readonly measurement: Measurement;
  /** For faults. */
  readonly path: string;
  /** Its unit at each level, its day and session. */
  readonly parts: NameParts;
}

/** Adds a value to the list under a key. */
export function addTo<Value>(lists: Map<string, Value[]>, key: string, value: Value): void {
  const list = lists.get(key);
  if (list) list.push(value);
  else lists.set(key, [value]);
}

/** The levels and blocks that names tell, and what readings of one name are. */
export interface Structure {
  readonly levels: readonly Level[];
  readonly blocks: readonly Block[];
  readonly sameName: Level | undefined;
}

/**
 * Nests measurements by their units.
 *
 * @throws TintladderError `repetition-unstated` for several readings of one name; `level-misplaced` where a unit of the lowest level lies in two
 * days or sessions
 */
export function nestReadings<M extends { readonly name: string }>(
  members: readonly PlacedByName<M>[],
  structure: Structure,
): Repeated<M> {
  return nest(members, structure) as Repeated<M>;
}

function nest<M extends { readonly name: string }>(members: readonly PlacedByName<M>[], structure: Structure): unknown {
  const { levels, blocks, sameName } = structure;
  const [level, ...below] = levels;
  if (level === undefined) return oneName(members, sameName);
  const units = new Map<string, PlacedByName<M>[]>();
  for (const member of members) addTo(units, member.parts[level], member);
  const lists = [...units.values()];
  // Labels stand at the outermost level whose units each lie in one block; where a unit spans several, its parts bear them.
  const labelled = blocks.filter((block) => lists.every((list) => blocksOf(list, block).length === 1));
  const left = blocks.filter((block) => !labelled.includes(block));
  if (below.length === 0 && left.length > 0) refuseSpanning(lists, left[0]);
  return {
    [level]: lists.map((list) => nest(list, { levels: below, blocks: left, sameName })),
    ...Object.fromEntries(labelled.map((block) => [block, lists.map(([first]) => first.parts[block])])),
  };
}

function blocksOf(unit: readonly PlacedByName<unknown>[], block: Block): string[] {
  return [...new Set(unit.map(({ parts }) => parts[block]))];
}

function refuseSpanning(units: readonly (readonly PlacedByName<unknown>[])[], block: Block): never {
  const spanning = units.find((unit) => blocksOf(unit, block).length > 1) ?? units[0];
  throw new TintladderError('level-misplaced', {
    path: spanning[0].path,
    received: blocksOf(spanning, block),
    expected: `one ${block} for each unit of the lowest level`,
    hint: `Readings of one unit in several ${block}s are units themselves: number them, for example as spots.`,
  });
}

function oneName<M extends { readonly name: string }>(
  members: readonly PlacedByName<M>[],
  sameName: Level | undefined,
): unknown {
  const readings = members.map(({ measurement }) => measurement);
  if (readings.length === 1) return readings[0];
  if (sameName !== undefined) return { [sameName]: readings };
  throw new TintladderError('repetition-unstated', {
    path: members[1].path,
    received: members[1].measurement.name,
    expected: 'a name of its own for each reading, as far as the pattern reads it',
    hint: "Name what was repeated in the pattern, or say what readings of one name are: { sameName: 'spot' }.",
  });
}
