import { TintladderError } from '../core/index.js';
import { assertObject, assertOptions } from '../core/internal.js';
import type { Repeated } from '../evidence/index.js';
import type { RubOutReading } from './area.js';
import { assessRubOut } from './assess-rub-out.js';
import type { RubOutOptions } from './rub-out-options.js';
import type { RubOutResult } from './rub-out-result.js';

/** How the areas of one film were made, from the least shear to the most. */
export const AREA_TREATMENTS = ['poured', 'drawn', 'brushed', 'rubbed'] as const;

/** One of {@link AREA_TREATMENTS}. */
export type AreaTreatment = (typeof AREA_TREATMENTS)[number];

/** What the difference of two areas speaks of. */
export const AREA_PAIR_MEANINGS = ['separation', 'development', 'development-by-brush', 'shear-sensitivity'] as const;

/** One of {@link AREA_PAIR_MEANINGS}. */
export type AreaPairMeaning = (typeof AREA_PAIR_MEANINGS)[number];

/** Two areas of one film, and what their difference shows. */
export interface AreaPair {
  readonly from: AreaTreatment;
  readonly to: AreaTreatment;
  readonly meaning: AreaPairMeaning;
  /** The same in a sentence. */
  readonly statement: string;
  /** Assessed with `from` as the unrubbed and `to` as the rubbed area. */
  readonly rubOut: RubOutResult;
}

/** All pairs of the areas that were read. */
export interface AreaComparison {
  readonly kind: 'area-comparison';
  readonly version: 1;
  readonly pairs: readonly AreaPair[];
}

const PAIRS: readonly Omit<AreaPair, 'rubOut'>[] = [
  {
    from: 'poured',
    to: 'drawn',
    meaning: 'separation',
    statement: 'A poured film is thicker and dries longer, so pigments have more time to separate than in a drawdown.',
  },
  {
    from: 'drawn',
    to: 'rubbed',
    meaning: 'development',
    statement: 'Rubbing by finger takes clusters apart and mixes what had separated: the rub-out proper.',
  },
  {
    from: 'drawn',
    to: 'brushed',
    meaning: 'development-by-brush',
    statement: 'A brush shears as the paint will be sheared in use, and repeats better than a finger.',
  },
  {
    from: 'brushed',
    to: 'rubbed',
    meaning: 'shear-sensitivity',
    statement: 'What rubbing adds to brushing is colour that depends on how the paint is worked.',
  },
];

/**
 * Compares differently treated areas of one film: poured, drawn, brushed and rubbed, each pair by what it shows.
 *
 * Rubbed against brushed shows how sensitive the colour is to shear, poured against drawn shows separation, brushed or rubbed against drawn how far
 * the colour was developed.
 *
 * @param areas - at least two, each one reading, `{ spot: [...] }` or `{ drawdown: [...] }`
 * @param options - as for `assessRubOut`, for all pairs alike
 * @returns every pair that both areas were read of, each assessed by itself
 * @throws TintladderError `wrong-type`; `invalid-option` for an area of another name; `too-few-points` where no pair is there; what
 * `assessRubOut` throws
 * @example
 * const area = (L) => ({ spot: [{ L, a: 0, b: -20 }, { L: L + 0.1, a: 0, b: -20.1 }] });
 * const areas = { drawn: area(60), brushed: area(59), rubbed: area(58.9) };
 * compareAreas(areas, { viewing: D65_10, surface: 'none' }).pairs.map(({ meaning }) => meaning).join(', ')
 * // 'development, development-by-brush, shear-sensitivity'
 * @see ASTM D5326 for brushed and rubbed areas; poured against drawn is common practice, no source
 */
export function compareAreas(
  areas: Readonly<Partial<Record<AreaTreatment, Repeated<RubOutReading>>>>,
  options: RubOutOptions,
): AreaComparison {
  assertObject(areas, 'areas', 'areas { poured, drawn, brushed, rubbed }');
  assertOptions(areas, AREA_TREATMENTS, 'areas');
  const pairs = PAIRS.flatMap((pair): AreaPair[] => {
    const [from, to] = [areas[pair.from], areas[pair.to]];
    return from === undefined || to === undefined ? [] : [{ ...pair, rubOut: assessRubOut(from, to, options) }];
  });
  if (pairs.length === 0) {
    throw new TintladderError('too-few-points', {
      path: 'areas',
      received: Object.keys(areas),
      expected: 'two areas that are compared, such as drawn and rubbed',
    });
  }
  return { kind: 'area-comparison', version: 1, pairs };
}
