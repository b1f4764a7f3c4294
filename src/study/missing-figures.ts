import type { Figure } from './figure.js';
import type { Cell, MissingFigure } from './result.js';
import type { AcceptanceCriterion, Study } from './study.js';

/**
 * What a package lacks: each quantity that a criterion judges, or that ranks the packages, has to be found for every package
 * and in every paint, unless the criterion names its `paints` or `packages`.
 *
 * A quantity that no package has by paint belongs to the package as a whole, and so does a figure supplied without a paint.
 *
 * @param own - figures of the package as a whole
 * @param cells - every cell of the study
 */
export function missingFigures(
  study: Study,
  id: string,
  own: readonly Figure[],
  cells: readonly Cell[],
): MissingFigure[] {
  const { criteria, rankBy, paints } = study;
  const asked: Pick<AcceptanceCriterion, 'quantity' | 'paints' | 'packages'>[] = [...criteria, rankBy];
  const found = asked.flatMap(({ quantity, paints: named, packages }): MissingFigure[] => {
    const has = (figures: readonly Figure[]) => figures.some((figure) => figure.quantity === quantity);
    if ((packages && !packages.includes(id)) || has(own)) return [];
    if (!named && !cells.some(({ figures }) => has(figures))) return [{ quantity }];
    return paints
      .filter((paint) => !named || named.includes(paint.id))
      .filter((paint) => !cells.some((cell) => cell.package === id && cell.paint === paint.id && has(cell.figures)))
      .map((paint) => ({ quantity, paint: paint.id }));
  });
  return found.filter(
    ({ quantity, paint }, i) => found.findIndex((other) => other.quantity === quantity && other.paint === paint) === i,
  );
}
