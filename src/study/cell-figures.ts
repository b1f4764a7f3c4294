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
 */
export function cellFigures({ strength, rubOut, storage }: CellFindings, isReference: boolean): Figure[] {
  const figures: Figure[] = [];
  if (isReference) {
    figures.push(computedFigure('strength', { value: 100, exact: true, method: 'the reference, by definition' }));
    figures.push(computedFigure('residual', { value: 0, exact: true, method: 'the reference, by definition' }));
  }
  if (strength) {
    figures.push(strengthFigure('strength', strength));
    figures.push(
      computedFigure('residual', {
        value: strength.residual.dE2000,
        interval: strength.residualInterval,
        method: `CIEDE2000 at equal strength (${strength.criterion})`,
      }),
    );
  }
  if (rubOut) figures.push(rubOutFigure('rub-out', rubOut));
  if (storage?.strength) figures.push(strengthFigure('strength-after-storage', storage.strength));
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
      return { quantity, value, unit, interval: { low: value - reach, high: value + reach }, exact: false, method };
    });
}

function strengthFigure(
  quantity: 'strength' | 'strength-after-storage',
  { percent, interval, criterion, repetition }: StrengthSummary,
): Figure {
  return computedFigure(quantity, {
    value: percent,
    interval,
    standardDeviation:
      interval && interval.standardDeviation / Math.sqrt(1 / repetition.reference.count + 1 / repetition.trial.count),
    method: `${criterion}, ${interval ? `interval from ${interval.basis}` : 'no interval: one reading a side'}`,
  });
}

function rubOutFigure(quantity: 'rub-out' | 'rub-out-after-storage', rubOut: RubOutResult): Figure {
  return computedFigure(quantity, {
    value: rubOut.difference.dEab,
    interval: rubOut.interval?.dEab,
    standardDeviation: rubOut.readingDeviation,
    method: 'ΔE*ab of the rubbed against the unrubbed area',
  });
}
