import type { CompatibilityCell } from './compatibility-cell.js';

/** What a side at fault is. */
export const FAULTY_SIDES = ['colorant', 'base'] as const;

/** A colorant that gains by rubbing in every paint, or a base in which every colorant loses. */
export interface SideAtFault {
  readonly side: (typeof FAULTY_SIDES)[number];
  readonly name: string;
  /** The paints of the colorant, or the colorants of the base. */
  readonly shownIn: readonly string[];
  /** The next step. */
  readonly check: string;
}

/** One test alone can be the fault of either side. */
const ENOUGH = 2;

/**
 * Which side is at fault, by the direction of all tests of a colorant and of a base.
 *
 * @see ASTM D5326, 5.1 and 5.3: the direction tells which side is poorly developed, and both may be
 */
export function sidesAtFault(cells: readonly CompatibilityCell[]): SideAtFault[] {
  const found = (
    side: SideAtFault['side'],
    nameOf: (cell: CompatibilityCell) => string,
    otherOf: (cell: CompatibilityCell) => string,
    towards: 'more-colour' | 'more-white',
    check: string,
  ): SideAtFault[] =>
    [...new Set(cells.map(nameOf))].flatMap((name) => {
      const own = cells.filter((cell) => nameOf(cell) === name);
      const all = own.length >= ENOUGH && own.every(({ direction }) => direction?.towards === towards);
      return all ? [{ side, name, shownIn: own.map(otherOf), check }] : [];
    });
  return [
    ...found(
      'colorant',
      ({ colorant }) => colorant,
      ({ paint }) => paint,
      'more-colour',
      COLORANT,
    ),
    ...found(
      'base',
      ({ paint }) => paint,
      ({ colorant }) => colorant,
      'more-white',
      BASE,
    ),
  ];
}

const COLORANT = 'Cross-test the colorant in a base that is known to be sound.';
const BASE = 'Cross-test the base with a colorant that is known to be stable.';
