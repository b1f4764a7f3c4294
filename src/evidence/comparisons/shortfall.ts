import { type Claim, levelOfClaim } from '../readings/claim.js';
import { LEVELS, type Level, levelPlural, moreOfLevel } from '../readings/level.js';
import type { KnownVariances } from '../variance/precision.js';
import type { Side } from './side.js';

/** What is missing for the claim that was wanted. */
export interface Shortfall {
  readonly wanted: Claim;
  /** What must be made anew. */
  readonly level: Level;
  /** How many more of it each side needs, by name. */
  readonly more: Readonly<Record<string, number>>;
  /** `Prepare at least one more weigh-up of A; more drawdowns or spots will not help.` */
  readonly remedy: string;
}

/** Units that a side needs of the level a claim rests on. */
const NEEDED = 2;

/** What a side lacks for a claim; undefined for a film, which needs nothing. */
export function shortfallOf(sides: readonly Side[], wanted: Claim, known: KnownVariances): Shortfall | undefined {
  const level = levelOfClaim(wanted);
  if (level === undefined || known.has(level)) return undefined;
  const lacking = sides.flatMap(({ name, read: { levels, counts } }): [string, number][] => {
    const count = counts[levels.indexOf(level)] ?? 1;
    return count < NEEDED ? [[name, NEEDED - count]] : [];
  });
  const most = Math.max(...lacking.map(([, count]) => count));
  const names = lacking.map(([name]) => name).join(' and ');
  const below = LEVELS.slice(LEVELS.indexOf(level) + 1).map(levelPlural);
  return {
    wanted,
    level,
    more: Object.fromEntries(lacking),
    remedy: `Prepare at least ${moreOfLevel(level, most)} of ${names}; more ${below.join(' or ')} will not help.`,
  };
}
