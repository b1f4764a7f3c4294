import type { Level } from './level.js';
import type { ReadRepeated } from './read-repeated.js';

/**
 * What a figure can speak of, highest first: a package (or any recipe that is ground anew), one mill base, one film.
 *
 * In production the batch is what is judged and not a recipe: there weigh-ups of the batch carry a claim about the `batch`.
 */
export const CLAIMS = ['package', 'batch', 'mill-base', 'film'] as const;

/** One of {@link CLAIMS}. */
export type Claim = (typeof CLAIMS)[number];

/** Whether recipes are judged, which must be ground anew, or batches, which are what they are. */
export const POPULATIONS = ['package', 'batch'] as const;

/** One of {@link POPULATIONS}. */
export type Population = (typeof POPULATIONS)[number];

/** The level at which units must have been made anew, or be known from history, for a claim; a film needs none. */
const LEVEL_OF_CLAIM: Readonly<Record<Claim, Level | undefined>> = {
  package: 'grind',
  batch: 'weighing',
  'mill-base': 'weighing',
  film: undefined,
};

/** The level of units that a claim takes. */
export function levelOfClaim(claim: Claim): Level | undefined {
  return LEVEL_OF_CLAIM[claim];
}

/**
 * The highest claim that repeated readings and the laboratory's history carry.
 *
 * A claim needs at least two units on every side of what it speaks of, or a history that has that component: grinds for a package,
 * weigh-ups for a mill base or a batch. Whatever was not made anew and is not known shrinks the claim to this film.
 *
 * @param sides - what was repeated on each side that is compared
 * @param known - levels whose component the history holds
 * @param population - `batch` where a batch itself is judged; a mill base or package otherwise
 */
export function highestClaim(
  sides: readonly Pick<ReadRepeated<unknown>, 'levels' | 'counts'>[],
  known: readonly Level[] = [],
  population: Population = 'package',
): Claim {
  const carried = (level: Level) => {
    const repeats = ({ levels, counts }: (typeof sides)[number]) => (counts[levels.indexOf(level)] ?? 1) > 1;
    return sides.every((side) => repeats(side) || known.includes(level) || (level === 'weighing' && grinds(side) > 1));
  };
  if (population === 'batch') return carried('weighing') ? 'batch' : 'film';
  return carried('grind') ? 'package' : carried('weighing') ? 'mill-base' : 'film';
}

function grinds({ levels, counts }: Pick<ReadRepeated<unknown>, 'levels' | 'counts'>): number {
  return counts[levels.indexOf('grind')] ?? 1;
}
