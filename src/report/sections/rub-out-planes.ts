import { formatFixed, formatList, formatSigned } from '../../core/internal.js';
import { rubOutReach } from '../charts/draw-rub-out-plane.js';
import type { ChartGroup } from '../document/report-document.js';
import { byPaint, type ReportContext } from '../subject/report-context.js';

/** Direction of every rub-out: Δa* and Δb* in the plane, ΔL* beside it, the limit drawn on both. */
export function rubOutPlanes(context: ReportContext): ChartGroup | undefined {
  const { rows, criteria, names, style } = context;
  const found = rows.flatMap(({ cell, package: name }) =>
    cell.rubOut ? [{ cell, name, difference: cell.rubOut.difference }] : [],
  );
  if (found.length === 0) return undefined;
  const limit = criteria.find(({ quantity }) => quantity === 'rub-out')?.limit.upper;
  const reach = rubOutReach(
    found.map(({ difference }) => difference),
    limit,
  );
  const bound =
    limit === undefined
      ? ''
      : ' The dashed circle and lines are the limit; a mark inside the circle may still exceed it through ΔL*.';
  return {
    kind: 'charts',
    layout: 'panels',
    caption: `Rub-out differences, rubbed minus unrubbed: Δb* over Δa*, and ΔL* beside them on the same scale.${bound}`,
    panels: byPaint(context, found, ({ cell }) => cell.paint).map(({ paint, own }, i) => {
      const described = own.map(
        ({ name, difference: { dL, da, db } }) =>
          `${name} ΔL* ${formatSigned(dL, 2)}, Δa* ${formatSigned(da, 2)}, Δb* ${formatSigned(db, 2)}`,
      );
      return {
        heading: paint,
        chart: {
          id: `rub-out-${i + 1}`,
          title: `Rub-out differences in ${paint}`,
          description: `${formatList(described)}.${limit === undefined ? '' : ` Limit: ΔE*ab ${formatFixed(limit, 2)}.`}`,
          plot: {
            kind: 'rub-out-plane',
            limit,
            reach,
            points: own.map(({ cell, difference: { dL, da, db } }) => ({
              label: names.short(cell.package),
              dL,
              da,
              db,
              style: style(cell.package),
            })),
          },
        },
      };
    }),
  };
}
