import { formatCount, formatFixed, formatList } from '../core/internal.js';
import { formatLimit, quoteEstimate } from '../decision/internal.js';
import { type Claim, levelNoun } from '../evidence/index.js';
import { quantityName } from './quantities.js';
import { type Contender, worstFigure } from './rank-packages.js';
import type { Cell, Judgement, Ranking, Recommendation } from './result.js';
import type { StudyEvidence } from './strength-evidence.js';
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
  evidence: StudyEvidence,
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
  const set = ranking.notProvenWorse;
  const leadProven = second === undefined ? undefined : set.length === 1 && set[0] === first;
  const what = first === study.reference ? `Stay with ${nameOf(first)}` : `${nameOf(first)} is recommended`;
  const where =
    study.paints.length === 1
      ? `in ${study.paints[0].name}`
      : study.paints.length === 2
        ? 'in both paints'
        : `in all ${study.paints.length} paints`;
  const worst = study.paints.length > 1 ? ', in the paint where it does worst,' : '';
  const population = best?.claim && best.claim !== 'package' ? CLAIM_NOUNS[best.claim] : undefined;
  const subject = population ? `The ${quantityName(ranking.by)} of ${population}` : `Its ${quantityName(ranking.by)}`;
  const figure = best ? ` ${subject}${worst} is ${quoteEstimate(best, best.unit)}` : '';
  const lead =
    second === undefined
      ? '.'
      : `, ${leadProven ? 'proven ahead of' : 'not proven different from'} ${nameOf(second)}${next ? ` (${quoteEstimate(next, next.unit)})` : ''}.`;
  const meets = `${what}: it meets every criterion ${where}`;
  return {
    package: first,
    ...(leadProven !== undefined && { leadProven }),
    headline: `${meets}${second === undefined ? '' : leadWords(leadProven, quantityName(ranking.by), nameOf(second), population)}.`,
    statement: [
      `${meets}.${figure ? `${figure}${lead}` : ''}`,
      ...setWords(set, ranking, nameOf),
      ...leaderWords(first, study, evidence, nameOf),
      ...others,
    ].join(' '),
  };
}

const CLAIM_NOUNS: Readonly<Record<Claim, string>> = {
  package: 'the package',
  batch: 'this batch',
  'mill-base': 'this mill base',
  film: 'these films',
};

/** The set that holds the best, where it holds more than one. */
function setWords(set: readonly string[], { by }: Ranking, nameOf: (id: string) => string): string[] {
  if (set.length < 2) return [];
  return [`Best by ${quantityName(by)}, or not proven worse than the best: ${formatList(set.map(nameOf))}.`];
}

/** The winner of several is likely too far ahead. */
function leaderWords(
  first: string,
  { paints, rankBy }: Study,
  evidence: StudyEvidence,
  nameOf: (id: string) => string,
): string[] {
  if (rankBy.quantity !== 'strength' || paints.length > 1) return [];
  const [{ leader, againstReference }] = evidence.paints;
  if (leader?.package !== first || againstReference.length < 2) return [];
  const [found, expected] = [leader.percent, leader.expected].map((percent) => formatFixed(percent, 1));
  if (found === expected) return [];
  return [
    `${nameOf(first)}'s ${found} % is the ${rankBy.best} of ${againstReference.length} and so likely too far out; expect about ${expected} %.`,
  ];
}

/** How the lead over the next package goes into the one sentence of the answer; nothing where no interval tells. */
function leadWords(
  proven: boolean | undefined,
  quantity: string,
  next: string,
  population: string | undefined,
): string {
  if (proven === undefined) return '';
  return proven
    ? `, and its lead in ${quantity} over ${next} is proven${population ? ` for ${population}` : ''}`
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
  const { quantity, paint, readingsNeeded, readingsOf, limit, unit, remedy } = judgement;
  const units =
    readingsNeeded === undefined
      ? ''
      : readingsOf
        ? levelNoun(readingsOf, readingsNeeded)
        : `${readingsNeeded} readings`;
  const more =
    remedy !== undefined
      ? `, on these films only: ${remedy.replace(/\.$/, '')}`
      : units
        ? ` (about ${units} per side would decide it)`
        : '';
  return `${quantityName(quantity)}${inPaint(paint, study)} is ${quoteEstimate(judgement, unit, limit.upper ?? limit.lower)}, compared with the limit of ${formatLimit(limit, unit)}${more}`;
}
