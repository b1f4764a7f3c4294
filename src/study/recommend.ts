import { formatCount } from '../core/internal.js';
import { formatLimit, quoteEstimate } from '../decision/internal.js';
import { quantityName } from './quantities.js';
import { type Contender, worstFigure } from './rank-packages.js';
import type { Cell, Judgement, Ranking, Recommendation } from './result.js';
import type { Study } from './study.js';

/**
 * The answer in one paragraph: which package, by what figure, how sure, and what stands against the others.
 *
 * Nothing is recommended that does not meet every criterion; where only undecided packages are left, the answer is to measure
 * again.
 */
export function recommend(
  study: Study,
  ranking: Ranking,
  contenders: readonly Contender[],
  cells: readonly Cell[],
): Recommendation {
  const nameOf = (id: string) => study.packages.find((item) => item.id === id)?.name ?? id;
  const figureOf = (id: string) => {
    const contender = contenders.find(({ result }) => result.package.id === id);
    return contender && worstFigure(contender.figures, ranking.by, ranking.best);
  };
  const others = [...ranking.failing, ...ranking.undecided].map((id) =>
    objection(id, nameOf(id), contenders, cells, study),
  );
  const [first, second] = ranking.meeting;
  if (first === undefined) {
    const opening =
      ranking.undecided.length > 0
        ? 'No package can be recommended yet: none is proven to meet every criterion.'
        : 'No package can be recommended: each fails a criterion.';
    return { headline: opening, statement: [opening, ...others].join(' ') };
  }
  const best = figureOf(first);
  const next = second === undefined ? undefined : figureOf(second);
  const leadProven =
    best?.interval && next
      ? ranking.best === 'highest'
        ? best.interval.low > (next.interval?.high ?? next.value)
        : best.interval.high < (next.interval?.low ?? next.value)
      : undefined;
  const what = first === study.reference ? `Stay with ${nameOf(first)}` : `${nameOf(first)} is recommended`;
  const where =
    study.paints.length === 1
      ? `in ${study.paints[0].name}`
      : study.paints.length === 2
        ? 'in both paints'
        : `in all ${study.paints.length} paints`;
  const worst = study.paints.length > 1 ? ', in the paint where it does worst,' : '';
  const figure = best ? ` Its ${quantityName(ranking.by)}${worst} is ${quoteEstimate(best, best.unit)}` : '';
  const lead =
    second === undefined
      ? '.'
      : `, ${leadProven ? 'proven ahead of' : 'not proven different from'} ${nameOf(second)}${next ? ` (${quoteEstimate(next, next.unit)})` : ''}.`;
  const meets = `${what}: it meets every criterion ${where}`;
  return {
    package: first,
    leadProven,
    headline: `${meets}${second === undefined ? '' : leadWords(leadProven, quantityName(ranking.by), nameOf(second))}.`,
    statement: [`${meets}.${figure ? `${figure}${lead}` : ''}`, ...others].join(' '),
  };
}

/** How the lead over the next package goes into the one sentence of the answer; nothing where no interval tells. */
function leadWords(proven: boolean | undefined, quantity: string, next: string): string {
  if (proven === undefined) return '';
  return proven
    ? `, and its lead in ${quantity} over ${next} is proven`
    : `; that it leads in ${quantity} over ${next} is not proven`;
}

/** So many reasons are spelt out in the answer; the report lists all. */
const MOST_REASONS = 2;

/** What stands against a package: everything that fails, or else everything undecided, or what is missing. */
function objection(
  id: string,
  name: string,
  contenders: readonly Contender[],
  cells: readonly Cell[],
  study: Study,
): string {
  const result = contenders.find((contender) => contender.result.package.id === id)?.result;
  const judgements = [
    ...cells.filter((cell) => cell.package === id).flatMap((cell) => cell.judgements),
    ...(result?.judgements ?? []),
  ];
  const reasons = judgements.filter(({ outcome }) => outcome === result?.outcome);
  const missing = result?.outcome === 'fails' ? [] : (result?.missing ?? []);
  const texts = [
    ...reasons.map((judgement) => describe(judgement, study)),
    ...missing.map(({ quantity, paint }) => `${quantityName(quantity)}${inPaint(paint, study)} is missing`),
  ];
  const more = texts.length - MOST_REASONS;
  const listed = texts.slice(0, MOST_REASONS);
  const rest = more > 0 ? [formatCount(more, 'more figure')] : [];
  return `${name} ${result?.outcome === 'fails' ? 'fails' : 'is undecided'}: ${[...listed, ...rest].join('; ')}.`;
}

function inPaint(paint: string | undefined, { paints }: Study): string {
  return paint === undefined ? '' : ` in ${paints.find(({ id }) => id === paint)?.name ?? paint}`;
}

function describe(judgement: Judgement, study: Study): string {
  const { quantity, paint, readingsNeeded, limit, unit } = judgement;
  const more = readingsNeeded === undefined ? '' : ` (about ${readingsNeeded} readings per side would decide it)`;
  return `${quantityName(quantity)}${inPaint(paint, study)} is ${quoteEstimate(judgement, unit, limit.upper ?? limit.lower)}, compared with the limit of ${formatLimit(limit, unit)}${more}`;
}
