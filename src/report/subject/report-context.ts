import type { StudyResult } from '../../study/index.js';
import { type ComparisonRow, comparisonRows } from './comparison-row.js';
import { type CriterionGroup, criterionGroups } from './criterion-group.js';
import { type Names, namesOf } from './names.js';
import type { ReportIdentity } from './report-identity.js';

/** What every section of a report is made from, gathered once. */
export interface ReportContext {
  readonly result: StudyResult;
  readonly names: Names;
  readonly rows: readonly ComparisonRow[];
  readonly criteria: readonly CriterionGroup[];
  /** The place of a package among the marks of the charts; the reference has the first. */
  readonly style: (id: string) => number;
  readonly identity: ReportIdentity;
}

/** Gathers what the sections need of a study. */
export function reportContext(result: StudyResult, identity: ReportIdentity = {}): ReportContext {
  const trials = result.packages.filter(({ isReference }) => !isReference);
  const places = new Map(trials.map(({ package: { id } }, i) => [id, i + 1]));
  return {
    result,
    identity,
    names: namesOf(result),
    rows: comparisonRows(result),
    criteria: criterionGroups(result),
    // a package that the study doesn't describe is never left undrawn
    style: (id) => places.get(id) ?? 0,
  };
}

/** Rows by paint, in the order of the tables. */
export function byPaint<T>(
  { result, names }: ReportContext,
  items: readonly T[],
  paintOf: (item: T) => string,
): { readonly id: string; readonly paint: string; readonly own: readonly T[] }[] {
  const ids = new Set([...result.paints.map(({ id }) => id), ...items.map(paintOf)]);
  return [...ids]
    .map((id) => ({ id, paint: names.paint(id), own: items.filter((item) => paintOf(item) === id) }))
    .filter(({ own }) => own.length > 0);
}
