import { worstOutcome } from '../decision/index.js';
import { computedFigure, suppliedFigures } from './cell-figures.js';
import type { Figure } from './figure.js';
import { judgeFigures, outcomeOf } from './judge-figures.js';
import { letDownOf, withTimeSaved } from './let-down.js';
import { missingFigures } from './missing-figures.js';
import { type Contender, worstFigure } from './rank-packages.js';
import type { Cell, LetDown, MissingFigure, PackageResult } from './result.js';
import type { Study, StudyPackage } from './study.js';

/**
 * Every package over all its paints: figures, the worst outcome, let-down, readings needed.
 *
 * A colorant must work in every paint, so an undecided or missing cell keeps the whole package undecided, and a failing one
 * fails it.
 *
 * @param grindTime - the grinding time at which a package is judged, min, where it has one
 */
export function summarisePackages(
  study: Study,
  cells: readonly Cell[],
  grindTime: (item: StudyPackage) => number | undefined,
): Contender[] {
  const letDowns = study.packages.map((item) => letDownOf(study, item, grindTime(item)));
  const referenceLetDown = letDowns.find((letDown) => letDown?.package === study.reference);
  const places = study.packages.map((item, i) => ({
    item,
    letDown: withTimeSaved(letDowns[i], referenceLetDown),
    own: packageFigures(study, item, letDowns[i]),
    cells: cells.filter((cell) => cell.package === item.id),
  }));
  return places.map((place) => summarise(study, place, missingFigures(study, place.item.id, place.own, cells)));
}

interface Place {
  readonly item: StudyPackage;
  readonly letDown: LetDown | undefined;
  readonly own: readonly Figure[];
  readonly cells: readonly Cell[];
}

function packageFigures(study: Study, item: StudyPackage, letDown: LetDown | undefined): Figure[] {
  const figures = suppliedFigures(study, item);
  if (letDown?.additiveShare === undefined) return figures;
  const method = 'share in the mill base over the let-down factor';
  return [...figures, computedFigure('additive-share', { value: letDown.additiveShare, exact: true, method })];
}

function summarise(study: Study, { item, letDown, own, cells }: Place, missing: readonly MissingFigure[]): Contender {
  const figures = [...own, ...cells.flatMap((cell) => cell.figures)];
  const judgements = judgeFigures(own, study, item.id);
  const outcomes = [outcomeOf(judgements), ...cells.map(({ outcome }) => outcome)];
  const needed = [...judgements, ...cells.flatMap((cell) => cell.judgements)].flatMap(
    ({ readingsNeeded }) => readingsNeeded ?? [],
  );
  const ranked = worstFigure(figures, study.rankBy.quantity, study.rankBy.best);
  const result: PackageResult = {
    package: item,
    isReference: item.id === study.reference,
    outcome: worstOutcome(missing.length === 0 ? outcomes : [...outcomes, 'undecided']),
    figures: own,
    judgements,
    missing,
    ...(ranked && { rankValue: ranked.value }),
    ...(needed.length > 0 && { readingsNeeded: Math.max(...needed) }),
    ...(letDown && { letDown }),
  };
  return { result, figures, read: cells.map(({ paint }) => paint) };
}
