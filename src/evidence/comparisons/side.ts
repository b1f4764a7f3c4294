import { refuseNonFinite } from '../../core/internal.js';
import { BLOCKS, type Level } from '../readings/level.js';
import { type ReadRepeated, readRepeated } from '../readings/read-repeated.js';
import type { Repeated } from '../readings/repeated.js';
import { meanOfTree, readingsOf, squaredWeights, unitsAt } from '../variance/unit-means.js';

/** A unit of the outermost repeated level of a side. */
export interface TopUnit {
  readonly side: string;
  /** Path of its first reading. */
  readonly path: string;
  readonly mean: number;
  /** In which share of it lies in which block; empty where a reading of it has no label. */
  readonly blocks: ReadonlyMap<string, number>;
}

/** One side of a comparison, such as a package in a paint, with its mean. */
export interface Side {
  readonly name: string;
  readonly read: ReadRepeated<number>;
  readonly mean: number;
  /** The outermost level of which there are at least two units; absent for one reading. */
  readonly top?: Level;
  /** Units of that level, as many as make the mean; one for one reading. */
  readonly units: readonly TopUnit[];
  readonly squaredWeights: Readonly<Record<Level, number>>;
}

/**
 * Reads the readings of one side.
 *
 * @throws TintladderError for a reading that is no finite number, `not-finite`, or a nest of the wrong shape
 */
export function readSide(name: string, given: Repeated<number>, path = name): Side {
  const read = readRepeated(given, path);
  for (const { reading, path: at } of read.readings) refuseNonFinite(reading, at);
  // Above the outermost repeated level there is one unit of each, so that its units have one parent.
  const trees = read.top < 0 ? [read.tree] : unitsAt(read.tree, read.top).flat();
  const units = trees.map((tree): TopUnit => {
    const readings = readingsOf(tree);
    const blocks = new Map<string, number>();
    for (const { blocks: labels } of readings) {
      const label = BLOCKS.flatMap((block) => labels[block] ?? []).join('\n');
      if (label !== '') blocks.set(label, (blocks.get(label) ?? 0) + 1 / readings.length);
    }
    const labelled = [...blocks.values()].reduce((sum, part) => sum + part, 0) > 1 - 1e-9;
    return { side: name, path: readings[0].path, mean: meanOfTree(tree), blocks: labelled ? blocks : new Map() };
  });
  return {
    name,
    read,
    mean: meanOfTree(read.tree),
    ...(read.top >= 0 && { top: read.levels[read.top] }),
    units,
    squaredWeights: squaredWeights(read),
  };
}
