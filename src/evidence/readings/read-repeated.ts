import { TintladderError } from '../../core/index.js';
import { assertObject, assertString, refuseNonFinite } from '../../core/internal.js';
import { BLOCKS, type Block, isBlock, isLevel, LEVELS, type Level } from './level.js';
import type { Repeated } from './repeated.js';

/** A reading with the path where it was given, such as `trial.weighing[1].spot[0]`, and the day and session it belongs to. */
export interface PlacedReading<Reading> {
  readonly reading: Reading;
  readonly path: string;
  readonly blocks: Readonly<Partial<Record<Block, string>>>;
}

/** A unit of some level: units of the next level, or at the lowest one reading. */
export type UnitTree<Reading> = PlacedReading<Reading> | { readonly units: readonly UnitTree<Reading>[] };

/** Readings as they were repeated, every reading at the same depth: a level that a branch doesn't name counts as one unit there. */
export interface ReadRepeated<Reading> {
  /** The levels that are named anywhere, outermost first; depth i of the tree holds units of level i. */
  readonly levels: readonly Level[];
  readonly tree: UnitTree<Reading>;
  readonly readings: readonly PlacedReading<Reading>[];
  /** How many units there are of each of `levels`. */
  readonly counts: readonly number[];
  /** Place in `levels` of the outermost one with at least two units; -1 where nothing was repeated. */
  readonly top: number;
}

type Blocks = PlacedReading<unknown>['blocks'];
type RawNode<Reading> = PlacedReading<Reading> | RawNest<Reading>;
interface RawNest<Reading> {
  readonly level: Level;
  readonly units: readonly RawNode<Reading>[];
}

/**
 * Reads the shape of repeated readings; the readings themselves are the caller's to check, by their paths.
 *
 * @param given - one reading, or a nest of {@link Repeated}
 * @param path - name of the argument, for faults
 * @throws TintladderError `wrong-type` or `not-finite` for what is neither an object nor a finite number; `repetition-unstated` for a bare list; `level-misplaced` for a level named twice, out of order or beside another, or a
 * key that is none; `empty` for a level without units; `wrong-length` for labels of days or sessions that are not one a unit
 */
export function readRepeated<Reading>(given: Repeated<Reading>, path: string): ReadRepeated<Reading> {
  assertString(path, 'path');
  const raw = readNode<Reading>(given, path, {}, []);
  const named = new Set<Level>();
  collectLevels(raw, named);
  const levels = LEVELS.filter((level) => named.has(level));
  const tree = atFullDepth(raw, levels, 0);
  const counts = levels.map(() => 0);
  const readings: PlacedReading<Reading>[] = [];
  const visit = (node: UnitTree<Reading>, depth: number): void => {
    if ('units' in node) {
      counts[depth] += node.units.length;
      for (const unit of node.units) visit(unit, depth + 1);
    } else readings.push(node);
  };
  visit(tree, 0);
  return { levels, tree, readings, counts, top: counts.findIndex((count) => count > 1) };
}

/** The same of a nest that was put together and has no type of its own. */
export function readNest<Reading>(given: unknown, path: string): ReadRepeated<Reading> {
  return readRepeated(given as Repeated<Reading>, path);
}

function readNode<Reading>(given: unknown, path: string, blocks: Blocks, above: readonly Level[]): RawNode<Reading> {
  if (Array.isArray(given)) {
    throw new TintladderError('repetition-unstated', {
      path,
      received: given,
      expected: 'one reading, or readings under the name of what was repeated',
      hint: above.includes('spot')
        ? 'Nothing is repeated below a spot.'
        : 'Say what was repeated: { weighing: [...] } for weigh-ups, { drawdown: [...] } or { spot: [...] } for one film.',
    });
  }
  if (typeof given === 'number') {
    refuseNonFinite(given, path);
    return { reading: given as Reading, path, blocks };
  }
  assertObject(given, path, 'a reading, or readings under the name of what was repeated');
  const level = levelOf(given, path, above);
  if (level === undefined) return { reading: given as Reading, path, blocks };
  const nest = given as Readonly<Record<string, unknown>>;
  const units = nest[level];
  if (!Array.isArray(units)) {
    const expected = `a list, one entry for each ${level}`;
    throw new TintladderError('level-misplaced', { path: `${path}.${level}`, received: units, expected });
  }
  if (units.length === 0) {
    const expected = 'a list of at least one unit';
    throw new TintladderError('empty', { path: `${path}.${level}`, received: units, expected });
  }
  const labels = BLOCKS.map((block) => [block, labelsOf(nest[block], units.length, `${path}.${block}`)] as const);
  return {
    level,
    units: units.map((unit, i) => {
      const own = labels.flatMap(([block, values]) => (values ? [[block, values[i]]] : []));
      return readNode<Reading>(unit, `${path}.${level}[${i}]`, { ...blocks, ...Object.fromEntries(own) }, [
        ...above,
        level,
      ]);
    }),
  };
}

/** The level that an object names, or undefined for one that names none and so is a reading. */
function levelOf(given: object, path: string, above: readonly Level[]): Level | undefined {
  const keys = Object.keys(given);
  const [level, ...others] = keys.filter(isLevel);
  if (level === undefined) return undefined;
  const refuse = (received: unknown, expected: string, hint?: string) => {
    throw new TintladderError('level-misplaced', { path, received, expected, ...(hint && { hint }) });
  };
  if (others.length > 0) {
    refuse([level, ...others], 'one level at a time', 'Nest the inner level in the units of the outer one.');
  }
  const strange = keys.find((key) => key !== level && !isBlock(key));
  if (strange !== undefined) refuse(strange, `nothing beside ${level} but labels of day and session`);
  const outer = above.at(-1);
  if (outer !== undefined && LEVELS.indexOf(level) <= LEVELS.indexOf(outer)) {
    const hint = `The order is ${LEVELS.join(' > ')}.`;
    refuse(level, above.includes(level) ? `${level} named once` : `a level below ${outer}`, hint);
  }
  return level;
}

function labelsOf(given: unknown, count: number, path: string): readonly string[] | undefined {
  if (given === undefined) return undefined;
  if (!Array.isArray(given) || given.length !== count || given.some((label) => typeof label !== 'string')) {
    const expected = `a list of ${count} texts, one for each unit`;
    throw new TintladderError('wrong-length', { path, received: given, expected });
  }
  return given;
}

function collectLevels(node: RawNode<unknown>, into: Set<Level>): void {
  if (!('level' in node)) return;
  into.add(node.level);
  for (const unit of node.units) collectLevels(unit, into);
}

function atFullDepth<Reading>(node: RawNode<Reading>, levels: readonly Level[], depth: number): UnitTree<Reading> {
  if (!('level' in node)) {
    return levels.slice(depth).reduce<UnitTree<Reading>>((tree) => ({ units: [tree] }), node);
  }
  const units = node.level === levels[depth] ? node.units : [node];
  return { units: units.map((unit) => atFullDepth(unit, levels, depth + 1)) };
}
