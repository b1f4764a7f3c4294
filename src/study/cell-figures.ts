import type { Interval } from '../decision/index.js';
import type { LevelScatter } from '../evidence/index.js';
import type { RubOutResult } from '../rubout/index.js';
import { unitOfSupplied } from './check-study.js';
import { conversionFactor } from './convert-unit.js';
import type { Figure } from './figure.js';
import { CELL_QUANTITIES } from './quantities.js';
import type { StorageResult, StrengthSummary } from './result.js';
import type { Study, StudyPackage } from './study.js';

/** What a cell found, as far as it goes into figures. */
export interface CellFindings {
  readonly strength?: StrengthSummary;
  readonly rubOut?: RubOutResult;
  readonly storage?: StorageResult;
}

/** A figure of a computed quantity, with the unit that belongs to it. */
export function computedFigure(
  quantity: keyof typeof CELL_QUANTITIES,
  rest: Omit<Figure, 'quantity' | 'unit'>,
): Figure {
  return { quantity, unit: CELL_QUANTITIES[quantity].unit, ...rest };
}

/**
 * The figures of one package in one paint that criteria may judge: each with its interval and the scatter of one reading.
 *
 * The reference's own strength is 100 % by definition, so it is exact.
 *
 * @param scatter - of the units that were made anew, % of strength
 */
export function cellFigures(
  { strength, rubOut, storage }: CellFindings,
  isReference: boolean,
  scatter: LevelScatter | undefined,
): Figure[] {
  const figures: Figure[] = [];
  if (isReference) {
    figures.push(computedFigure('strength', { value: 100, exact: true, method: 'the reference, by definition' }));
    figures.push(computedFigure('residual', { value: 0, exact: true, method: 'the reference, by definition' }));
  }
  if (strength) {
    figures.push(strengthFigure('strength', strength, scatter));
    figures.push(
      computedFigure('residual', {
        value: strength.residual.dE2000,
        ...(strength.residualInterval && {
          interval: strength.residualInterval,
          uncertainty: uncertaintyOf(strength.residualInterval),
        }),
        method: `CIEDE2000 at equal strength (${strength.criterion})`,
      }),
    );
  }
  if (rubOut) figures.push(rubOutFigure('rub-out', rubOut));
  if (storage?.strength) figures.push(strengthFigure('strength-after-storage', storage.strength, scatter));
  if (storage?.rubOut) figures.push(rubOutFigure('rub-out-after-storage', storage.rubOut));
  return figures;
}

/** Supplied figures of a package that belong to a paint, or to the package as a whole where `paint` is absent. */
export function suppliedFigures(study: Study, { supplied = [] }: StudyPackage, paint?: string): Figure[] {
  return supplied
    .filter((figure) => figure.paint === paint)
    .map(({ quantity, value: given, unit: stated, uncertainty }): Figure => {
      const unit = unitOfSupplied(quantity, study) ?? stated;
      const factor = conversionFactor(stated, unit) ?? 1;
      const value = given * factor;
      const method = unit === stated ? 'supplied' : `supplied as ${given} ${stated}`;
      if (uncertainty === undefined) return { quantity, value, unit, exact: true, method };
      const reach = uncertainty * factor;
      const interval = { low: value - reach, high: value + reach };
      return { quantity, value, unit, interval, uncertainty: uncertaintyOf(interval), exact: false, method };
    });
}

/**
 * A film's strength is shown with its interval, but says nothing of the package until what it lacks is made anew; a study that claims no more
 * than films judges it.
 */
function strengthFigure(
  quantity: 'strength' | 'strength-after-storage',
  strength: StrengthSummary,
  scatter: LevelScatter | undefined,
): Figure {
  const { percent, interval, joint, standardDeviation, degreesOfFreedom, criterion, claim, shortfall, basis } =
    strength;
  return computedFigure(quantity, {
    value: percent,
    ...(interval && { interval }),
    ...(joint && { joint }),
    ...(standardDeviation !== undefined && {
      uncertainty: { standardDeviation, ...(degreesOfFreedom !== undefined && { degreesOfFreedom }) },
    }),
    ratio: true,
    claim,
    ...(shortfall && { remedy: shortfall.remedy }),
    ...(scatter && {
      scatter: { standardDeviation: (percent * scatter.standardDeviation) / 100, of: scatter.level },
    }),
    method: `${criterion}, ${interval ? `scatter ${basis}` : 'no interval: nothing was made anew'}`,
  });
}

function rubOutFigure(quantity: 'rub-out' | 'rub-out-after-storage', rubOut: RubOutResult): Figure {
  return computedFigure(quantity, {
    value: rubOut.difference.dEab,
    ...(rubOut.interval && { interval: rubOut.interval.dEab, uncertainty: uncertaintyOf(rubOut.interval.dEab) }),
    ...(rubOut.readingDeviation !== undefined && { scatter: { standardDeviation: rubOut.readingDeviation } }),
    method: 'ΔE*ab of the rubbed against the unrubbed area',
  });
}

/** Half-widths of 95 % intervals in standard deviations: for what is no mean of its own, such as a length. */
const HALF_WIDTH = 1.96;

function uncertaintyOf({ low, high }: Interval): { readonly standardDeviation: number } {
  return { standardDeviation: (high - low) / (2 * HALF_WIDTH) };
}
