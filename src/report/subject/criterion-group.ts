import type { Limit } from '../../decision/index.js';
import type { Judgement, StudyResult } from '../../study/index.js';
import { quantityWords } from '../words/words.js';

/** One criterion with every judgement by it, over packages and paints. */
export interface CriterionGroup {
  readonly heading: string;
  readonly quantity: string;
  readonly limit: Limit;
  readonly unit: string;
  readonly reason: string;
  /** A bound of the limit, whose decimals the figures share. */
  readonly bound: number;
  readonly entries: readonly { readonly package: string; readonly judgement: Judgement }[];
}

/** The judgements of a study gathered by criterion, in the order in which they first appear. */
export function criterionGroups({ packages, cells }: Pick<StudyResult, 'packages' | 'cells'>): CriterionGroup[] {
  const groups = new Map<string, CriterionGroup & { entries: { package: string; judgement: Judgement }[] }>();
  const add = (id: string, judgement: Judgement) => {
    const { quantity, limit, unit, reason } = judgement;
    const key = JSON.stringify([quantity, limit.lower, limit.upper, unit, reason]);
    const group = groups.get(key) ?? {
      heading: quantityWords(quantity),
      quantity,
      limit,
      unit,
      reason,
      bound: limit.upper ?? limit.lower ?? 0,
      entries: [],
    };
    group.entries.push({ package: id, judgement });
    groups.set(key, group);
  };
  for (const cell of cells) for (const judgement of cell.judgements) add(cell.package, judgement);
  for (const { package: item, judgements } of packages) for (const judgement of judgements) add(item.id, judgement);
  return [...groups.values()];
}
