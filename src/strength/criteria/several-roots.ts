import { deltaE2000 } from '../../colorimetry/index.js';
import type { Warning } from '../../core/index.js';
import { type Dilution, dilutedLab, labOf } from '../reduction/dilution.js';

/**
 * The one of several factors that is meant: the nearest to `near`, or without it the one that leaves the smallest colour
 * difference. All of them are named.
 */
export function nearestOrClosestInColour(
  dilution: Dilution,
  roots: readonly number[],
  near: number | undefined,
): { factor: number; roots?: readonly number[]; warnings: readonly Warning[] } {
  if (roots.length === 1) return { factor: roots[0], warnings: [] };
  const target = labOf(dilution.bands, dilution.measuredReference);
  const cost = (factor: number) =>
    near === undefined ? deltaE2000(target, dilutedLab(dilution, factor)) : Math.abs(Math.log(factor / near));
  const factor = roots.reduce((best, root) => (cost(root) < cost(best) ? root : best));
  const message =
    `The criterion has ${roots.length} solutions, at ${roots.map((root) => root.toPrecision(4)).join(', ')} times the ` +
    `trial's amount; the one with the smallest colour difference is reported.`;
  return { factor, roots, warnings: [{ code: 'several-solutions', message, figures: { factors: roots } }] };
}
