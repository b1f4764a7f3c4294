import type { LetDown } from './result.js';
import type { Study, StudyPackage } from './study.js';

/**
 * Let-down of a mill base to the pigment share of the finished colorant.
 *
 * A mill base of loading w1 brought to w2 gives w1 / w2 times its mass of colorant, so a mill base that can carry more pigment
 * needs less grinding for each tonne of colorant.
 *
 * @param study - gives the target loading and the mass of a batch
 * @param item - gives loading, additive share and grinding time
 * @param grindTime - grinding time of a batch, min, where known
 * @returns the let-down, or undefined where the study states no loadings
 */
export function letDownOf(study: Study, item: StudyPackage, grindTime: number | undefined): LetDown | undefined {
  const { targetLoading, batchMass } = study;
  if (targetLoading === undefined || targetLoading === 0 || item.pigmentLoading === undefined) return undefined;
  const letDownFactor = item.pigmentLoading / targetLoading;
  return {
    package: item.id,
    letDownFactor,
    ...(item.additiveShare !== undefined && { additiveShare: item.additiveShare / letDownFactor }),
    ...(grindTime !== undefined &&
      batchMass !== undefined && {
        grindHoursPerTonne: ((grindTime / 60) * (1000 / batchMass)) / letDownFactor,
      }),
  };
}

/** Adds the time saved against the reference, where both are known. */
export function withTimeSaved(letDown: LetDown | undefined, reference: LetDown | undefined): LetDown | undefined {
  const own = letDown?.grindHoursPerTonne;
  const other = reference?.grindHoursPerTonne;
  return letDown && own !== undefined && other !== undefined
    ? { ...letDown, hoursSavedPerTonne: other - own }
    : letDown;
}
