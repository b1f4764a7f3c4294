import { findMinimum, findRoot, studentQuantile } from '../../numeric/internal.js';

/** The ends of an interval; an end that the data leave open is absent. */
export interface Bounds {
  readonly low?: number;
  readonly high?: number;
}

/** The least value of a function of one variable and where it is. */
export interface Minimum {
  readonly at: number;
  readonly value: number;
}

/** Width, as a share of the range, to which golden section narrows before parabolas take over, and their half-widths. */
const NARROW = 1e-3;
const PARABOLAS = [1e-3, 1e-5];

/**
 * The least value of `f` on [low, high]: an evenly spaced scan, so that a second, higher minimum misleads nobody; golden-section search
 * between the neighbours of its best step; and parabolas at the end, since sums of squares are smooth.
 */
export function searchMinimum(f: (x: number) => number, low: number, high: number, steps: number): Minimum {
  const at = (step: number) => low + ((high - low) * step) / steps;
  let best: Minimum = { at: low, value: Infinity };
  const consider = (x: number): number => {
    const value = f(x);
    if (value < best.value) best = { at: x, value };
    return value;
  };
  for (let step = 0; step <= steps; step++) consider(at(step));
  const from = best.at;
  const step = (high - low) / steps;
  consider(findMinimum(f, Math.max(low, from - step), Math.min(high, from + step), NARROW * (high - low)));
  for (const share of PARABOLAS) {
    const h = share * (high - low);
    const [x, middle] = [best.at, best.value];
    if (x - h < low || x + h > high) continue;
    const [left, right] = [consider(x - h), consider(x + h)];
    const bend = left - 2 * middle + right;
    if (bend > 0) consider(x + Math.max(-1, Math.min(1, (left - right) / (2 * bend))) * h);
  }
  return best;
}

/**
 * The residual sum of squares up to which a single parameter of a least-squares fit is inside its 95 % interval.
 *
 * @see Bates & Watts (1988), Nonlinear Regression Analysis and Its Applications, 6.1.2: profile t
 */
export function profileLimit(leastSquares: number, degreesOfFreedom: number): number {
  return leastSquares * (1 + studentQuantile(0.975, degreesOfFreedom) ** 2 / degreesOfFreedom);
}

/**
 * The two places around `best` at which a profile - the least sum of squares with one parameter held - crosses `limit`.
 *
 * @param profile - sum of squares as a function of the held parameter
 * @param best - where it is least
 * @param limit - see {@link profileLimit}
 * @param range - where to look; an end without a crossing inside is open
 * @param step - first step away from `best`; it is doubled until the limit is crossed
 */
export function profileBounds(
  profile: (value: number) => number,
  best: number,
  limit: number,
  { low, high }: { readonly low: number; readonly high: number },
  step: number,
): Bounds {
  const excess = (value: number) => profile(value) - limit;
  if (!(excess(best) < 0)) return { low: best, high: best };
  const crossing = (edge: number): number | undefined => {
    const direction = Math.sign(edge - best);
    let inside = best;
    for (let reach = step; inside !== edge; reach *= 2) {
      // the edge itself, since best + (edge - best) may miss it by a rounding and the search would never end
      const next = reach < Math.abs(edge - best) ? best + direction * reach : edge;
      if (excess(next) >= 0) return findRoot(excess, inside, next, Math.abs(next - best) * 1e-6);
      inside = next;
    }
    return undefined;
  };
  const [lower, upper] = [crossing(low), crossing(high)];
  return { ...(lower !== undefined && { low: lower }), ...(upper !== undefined && { high: upper }) };
}
