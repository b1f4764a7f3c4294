import type { Contender } from './rank-packages.js';
import { worstFigure } from './rank-packages.js';
import type { StudyEvidence } from './strength-evidence.js';
import type { Study } from './study.js';

/**
 * Those packages that are the best by the quantity that ranks, or not proven worse than the best.
 *
 * A package is proven worse by strength if some other is proven better than it in every paint, by the joint intervals of the study; then its worst
 * paint is worse too. In one paint that is the set of Hsu. By any other quantity it takes intervals that don't overlap.
 *
 * @param ids - packages that meet every criterion, best first
 */
export function bestPackages(
  study: Study,
  ids: readonly string[],
  contenders: readonly Contender[],
  evidence: StudyEvidence,
): string[] {
  const { quantity, best } = study.rankBy;
  if (quantity !== 'strength') return ids.filter((id) => !ids.some((other) => isAhead(other, id, contenders, study)));
  const better = best === 'highest' ? 'stronger' : 'weaker';
  const worse = best === 'highest' ? 'weaker' : 'stronger';
  const [only] = evidence.paints;
  const outside = (id: string) =>
    evidence.paints.length === 1 && id !== study.reference && !only.notProvenWorse.includes(id);
  const provenBetter = (first: string, second: string) =>
    evidence.paints.every(({ againstReference, pairs }) =>
      [...againstReference, ...pairs].some(
        ({ trial, reference, finding }) =>
          (trial === first && reference === second && finding === better) ||
          (trial === second && reference === first && finding === worse),
      ),
    );
  return ids.filter((id) => !outside(id) && !ids.some((other) => provenBetter(other, id)));
}

function isAhead(first: string, second: string, contenders: readonly Contender[], { rankBy }: Study): boolean {
  const figureOf = (id: string) => {
    const contender = contenders.find(({ result }) => result.package.id === id);
    return contender && worstFigure(contender.figures, rankBy.quantity, rankBy.best);
  };
  const [one, other] = [figureOf(first), figureOf(second)];
  if (!one || !other) return false;
  const ends = ({ value, interval, exact }: typeof one) =>
    interval ?? (exact ? { low: value, high: value } : undefined);
  const [own, its] = [ends(one), ends(other)];
  if (!own || !its) return false;
  return rankBy.best === 'highest' ? own.low > its.high : own.high < its.low;
}
