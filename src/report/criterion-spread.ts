import { STRENGTH_CRITERIA } from '../strength/index.js';
import type { Cell, StudyResult } from '../study/index.js';
import { comparisonRows } from './comparison-row.js';
import { valueWords } from './estimate-words.js';
import { CRITERION_WORDS } from './words.js';

/** Headings of the strengths in a {@link CriterionSpread}. */
export const SPREAD_HEADINGS: readonly string[] = STRENGTH_CRITERIA.map((criterion) => CRITERION_WORDS[criterion]);

/** Strength of one package in one paint by each criterion, as texts in the order of {@link SPREAD_HEADINGS}. */
export interface CriterionSpread {
  readonly cell: Cell;
  readonly package: string;
  readonly paint: string;
  readonly strengths: readonly string[];
}

/** Strength by each criterion: where they disagree, the trial differs in shade and no single figure should be quoted. */
export function criterionSpreads(result: StudyResult): CriterionSpread[] {
  return comparisonRows(result).flatMap(({ cell, package: name, paint }) => {
    const { strengthByCriterion: found } = cell;
    if (!found) return [];
    const strengths = STRENGTH_CRITERIA.map((criterion) => valueWords(found[criterion], '%'));
    return [{ cell, package: name, paint, strengths }];
  });
}
