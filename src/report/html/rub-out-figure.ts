import type { StudyResult } from '../../study/index.js';
import { comparisonRows } from '../comparison-row.js';
import { criterionGroups } from '../criterion-group.js';
import { drawRubOutPlane, rubOutReach } from '../figures/draw-rub-out-plane.js';
import { figure } from '../figures/figure.js';
import { type SeriesStyle, styleOf } from '../figures/series-style.js';
import { formatFixed, formatList, formatSigned } from '../format.js';
import { namesOf } from '../names.js';
import type { Markup } from './element.js';
import { panel, panels } from './section.js';

/** Direction of every rub-out: Δa* and Δb* in the plane, ΔL* beside it, the limit drawn on both. */
export function rubOutFigure(result: StudyResult, styles: ReadonlyMap<string, SeriesStyle>): Markup | undefined {
  const names = namesOf(result);
  const found = comparisonRows(result).flatMap(({ cell, package: name }) =>
    cell.rubOut ? [{ cell, name, difference: cell.rubOut.difference }] : [],
  );
  if (found.length === 0) return undefined;
  const limit = criterionGroups(result).find(({ quantity }) => quantity === 'rub-out')?.limit.upper;
  const reach = rubOutReach(
    found.map(({ difference }) => difference),
    limit,
  );
  const drawings = result.paints.flatMap((paint, i) => {
    const own = found.filter(({ cell }) => cell.paint === paint.id);
    if (own.length === 0) return [];
    const described = own.map(
      ({ name, difference: { dL, da, db } }) =>
        `${name} ΔL* ${formatSigned(dL, 2)}, Δa* ${formatSigned(da, 2)}, Δb* ${formatSigned(db, 2)}`,
    );
    return panel(
      paint.name,
      figure(
        {
          id: `rub-out-${i + 1}`,
          title: `Rub-out differences in ${paint.name}`,
          description: `${formatList(described)}.${limit === undefined ? '' : ` Limit: ΔE*ab ${formatFixed(limit, 2)}.`}`,
        },
        drawRubOutPlane({
          points: own.map(({ cell, difference: { dL, da, db } }) => ({
            label: names.short(cell.package),
            dL,
            da,
            db,
            style: styleOf(styles, cell.package),
          })),
          limit,
          reach,
        }),
      ),
    );
  });
  const bound =
    limit === undefined
      ? ''
      : ' The dashed circle and lines are the limit; a mark inside the circle may still exceed it through ΔL*.';
  return panels(
    `Rub-out differences, rubbed minus unrubbed: Δb* over Δa*, and ΔL* beside them on the same scale.${bound}`,
    drawings,
  );
}
