import type { Warning } from '../../core/index.js';
import type { Level } from '../readings/level.js';
import type { PooledScatter } from './pooled-scatter.js';
import type { SharedScatter } from './shared-scatter.js';
import type { Side } from './side.js';

/** What a reader of the comparisons of a group must know. */
export function groupWarnings(
  sides: readonly Side[],
  reference: Side,
  pools: ReadonlyMap<Level, PooledScatter>,
  shared: SharedScatter,
): Warning[] {
  const warnings: Warning[] = [];
  if (shared.units === 1) {
    const message = 'The white was read once and is taken as exact; its error would be common to all packages.';
    warnings.push({ code: 'white-exact', message });
  }
  const own = blocksOf(reference);
  for (const side of sides) {
    if (side === reference || own.size === 0) continue;
    const theirs = blocksOf(side);
    if (theirs.size === 0 || [...theirs].some((block) => own.has(block))) continue;
    const message =
      `${side.name} and ${reference.name} were never read in one session or on one day: what the instrument did between them ` +
      'is in their difference and not in its interval. Read both in one session.';
    warnings.push({ code: 'never-in-one-session', message, path: side.name });
  }
  for (const pool of pools.values()) {
    const named = sides.filter(({ name }) => pool.sides.includes(name)).flatMap(({ units }) => units);
    const labels = new Set(named.flatMap(({ blocks }) => [...blocks.keys()]));
    if (labels.size < 2 || pool.fit.blocks > 0) continue;
    const message =
      'Days or sessions are named but can not be taken out: they do not connect all packages, or leave nothing to estimate scatter from.';
    warnings.push({ code: 'blocks-not-separable', message });
  }
  return warnings;
}

function blocksOf({ units }: Side): Set<string> {
  return new Set(units.flatMap(({ blocks }) => [...blocks.keys()]));
}
