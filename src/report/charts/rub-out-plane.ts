import { TintladderError } from '../../core/index.js';
import type { ChartText } from './chart-image.js';
import { assertChart, assertDrawable, assertLabelled } from './check-chart.js';
import { drawRubOutPlane, rubOutReach } from './draw-rub-out-plane.js';
import { standaloneChart } from './standalone-chart.js';

/** A difference of a rubbed from its unrubbed area, such as `difference` of a rub-out's assessment. */
export interface RubOutPoint {
  readonly label: string;
  readonly dL: number;
  readonly da: number;
  readonly db: number;
  /** Which mark and colour, counted from 0; the place in the list if absent. */
  readonly style?: number | undefined;
}

/** Rub-out differences of one paint. */
export interface RubOutPlane extends ChartText {
  readonly points: readonly RubOutPoint[];
  /** Largest ΔE*ab that is accepted; none is drawn if absent. */
  readonly limit?: number | undefined;
  /** Coordinate that is shown at least, for figures to be compared; it grows to hold everything drawn. */
  readonly reach?: number | undefined;
}

/**
 * Rub-out differences as an SVG: Δb* over Δa* with the limit as a circle, and ΔL* beside it on the same scale with the limit as
 * two lines. ΔE*ab takes all three, so a difference within circle and lines may still exceed the limit.
 *
 * The SVG needs nothing around it and follows the reader's light or dark setting, in a page, in a notebook or as a file of its
 * own. Points differ by mark as well as by colour. It reads as one image named by `title` and `description`.
 *
 * @param plane - what is drawn; `id` has no spaces and occurs once in the page
 * @returns one `<svg>` element, which is well-formed XML
 * @throws TintladderError `empty` without points; `not-finite` or `out-of-range` if a number can't be drawn; `invalid-limit` if
 * the limit is not positive; `invalid-option` if `id` or `style` is not usable, or for a part that the plane has
 * not; `wrong-type`
 * @see ISO/CIE 11664-4 for the coordinates and ΔE*ab
 * @example
 * const svg = rubOutPlane({
 *   id: 'rub-out',
 *   title: 'Rub-out of two invented packages',
 *   description: 'A: ΔL* -0.2, Δa* 0.1, Δb* -0.3. B: ΔL* -1.4, Δa* 0.6, Δb* -1.1.',
 *   points: [{ label: 'A', dL: -0.2, da: 0.1, db: -0.3 }, { label: 'B', dL: -1.4, da: 0.6, db: -1.1 }],
 *   limit: 1,
 * });
 * svg.startsWith('<svg ') && svg.includes('<circle class="limit"') // true
 */
export function rubOutPlane(plane: RubOutPlane): string {
  assertChart(plane, 'plane', ['points', 'limit', 'reach']);
  const { points, limit, reach = 0 } = plane;
  assertLabelled('points', points);
  points.forEach(({ dL, da, db }, i) => {
    for (const [name, value] of Object.entries({ dL, da, db })) assertDrawable(`points[${i}].${name}`, value);
  });
  if (limit !== undefined) {
    assertDrawable('limit', limit);
    if (limit <= 0)
      throw new TintladderError('invalid-limit', { path: 'limit', received: limit, expected: 'a positive number' });
  }
  assertDrawable('reach', reach);
  const drawing = drawRubOutPlane({
    kind: 'rub-out-plane',
    limit,
    reach: Math.max(reach, rubOutReach(points, limit)),
    points: points.map((point, i) => ({ ...point, style: point.style ?? i })),
  });
  return standaloneChart(plane, drawing);
}
