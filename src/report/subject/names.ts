import type { StudyResult } from '../../study/index.js';

/** How packages and paints are called in a report. */
export interface Names {
  readonly package: (id: string) => string;
  readonly paint: (id: string) => string;
  /** Short enough to stand in a chart: the name, or the id where the name is long. */
  readonly short: (id: string) => string;
}

const SHORT = 14;

/** The names of a study; an id that it doesn't describe stands for itself. */
export function namesOf({ packages, paints }: Pick<StudyResult, 'packages' | 'paints'>): Names {
  const packageNames = new Map(packages.map(({ package: { id, name } }) => [id, name]));
  const paintNames = new Map(paints.map(({ id, name }) => [id, name]));
  const packageName = (id: string) => packageNames.get(id) ?? id;
  return {
    package: packageName,
    paint: (id) => paintNames.get(id) ?? id,
    short: (id) => ([...packageName(id)].length <= SHORT ? packageName(id) : id),
  };
}
