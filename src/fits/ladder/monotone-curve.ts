import { findRoot } from '../../numeric/internal.js';

/** A step as a rising curve goes through it. */
export interface CurveStep {
  readonly at: number;
  readonly value: number;
  /** Standard error of the value. */
  readonly error: number;
}

/** A curve that never falls, with the standard error of its value where it is interpolated. */
export interface MonotoneCurve {
  readonly first: number;
  readonly last: number;
  readonly valueAt: (at: number) => number;
  readonly errorAt: (at: number) => number;
}

/**
 * The rising curve through the steps of a ladder without any law behind it: steps that fall are averaged with their neighbours, and between
 * steps a cubic that doesn't overshoot runs over the logarithm of the axis.
 *
 * @see Barlow, Bartholomew, Bremner & Brunk (1972), Statistical Inference under Order Restrictions, for pooling; Fritsch & Carlson (1980),
 * SIAM J. Numer. Anal. 17, and Fritsch & Butland (1984), SIAM J. Sci. Stat. Comput. 5, for the cubic
 */
export function monotoneCurve(steps: readonly CurveStep[]): MonotoneCurve {
  const positive = steps.map(({ at }) => at).filter((at) => at > 0);
  // A ladder that starts at 0 has no logarithm there.
  const shift = steps[0].at > 0 ? 0 : Math.min(...positive) / 2;
  const x = steps.map(({ at }) => Math.log(at + shift));
  const values = pooled(steps);
  const slopes = cubicSlopes(x, values);
  const place = (at: number) => {
    const position = Math.log(at + shift);
    let i = 0;
    while (i < x.length - 2 && position > x[i + 1]) i++;
    const width = x[i + 1] - x[i];
    const t = (position - x[i]) / width;
    return { i, t, width, left: (1 + 2 * t) * (1 - t) ** 2, right: t * t * (3 - 2 * t) };
  };
  return {
    first: steps[0].at,
    last: steps[steps.length - 1].at,
    valueAt: (at) => {
      const { i, t, width, left, right } = place(at);
      const bend = width * (t * (1 - t) ** 2 * slopes[i] + t * t * (t - 1) * slopes[i + 1]);
      return left * values[i] + right * values[i + 1] + bend;
    },
    errorAt: (at) => {
      const { i, left, right } = place(at);
      // Not their root of squares: between steps the shape is known no better than at them.
      return left * steps[i].error + right * steps[i + 1].error;
    },
  };
}

/** Places looked at for a crossing. */
const PLACES = 400;

/** Where `f` rises through zero first, seen from the start, or last, seen from the end; undefined where it never does. */
export function crossing(
  { first, last }: MonotoneCurve,
  f: (at: number) => number,
  from: 'start' | 'end',
): number | undefined {
  const at = (i: number) => first + (last - first) * (i / PLACES) ** 2;
  if (from === 'start') {
    if (f(first) >= 0) return first;
    for (let i = 1; i <= PLACES; i++) if (f(at(i)) >= 0) return findRoot(f, at(i - 1), at(i), 1e-9 * last);
    return undefined;
  }
  if (f(last) < 0) return undefined;
  for (let i = PLACES - 1; i >= 0; i--) if (f(at(i)) < 0) return findRoot(f, at(i), at(i + 1), 1e-9 * last);
  return first;
}

/** Values that never fall, each block of falling ones averaged by the inverse of its variance. */
function pooled(steps: readonly CurveStep[]): number[] {
  const blocks: { value: number; weight: number; count: number }[] = [];
  for (const { value, error } of steps) {
    blocks.push({ value, weight: error > 0 ? error ** -2 : 1, count: 1 });
    for (let end = blocks.length - 1; end > 0 && blocks[end - 1].value >= blocks[end].value; end--) {
      const [a, b] = blocks.splice(end - 1, 2);
      const weight = a.weight + b.weight;
      const joined = { value: (a.value * a.weight + b.value * b.weight) / weight, weight, count: a.count + b.count };
      blocks.push(joined);
    }
  }
  return blocks.flatMap(({ value, count }) => Array<number>(count).fill(value));
}

function cubicSlopes(x: readonly number[], values: readonly number[]): number[] {
  const widths = x.slice(1).map((position, i) => position - x[i]);
  const rises = widths.map((width, i) => (values[i + 1] - values[i]) / width);
  const n = x.length;
  return x.map((_, i) => {
    if (i === 0) return endSlope(widths[0], widths[1] ?? widths[0], rises[0], rises[1] ?? rises[0]);
    if (i === n - 1)
      return endSlope(widths[i - 1], widths[i - 2] ?? widths[i - 1], rises[i - 1], rises[i - 2] ?? rises[i - 1]);
    const [before, after] = [rises[i - 1], rises[i]];
    if (before * after <= 0) return 0;
    const [wide, narrow] = [2 * widths[i] + widths[i - 1], widths[i] + 2 * widths[i - 1]];
    return (wide + narrow) / (wide / before + narrow / after);
  });
}

/** A slope at an end by the three nearest values, kept from overshooting. */
function endSlope(width: number, next: number, rise: number, nextRise: number): number {
  const slope = ((2 * width + next) * rise - width * nextRise) / (width + next);
  if (slope * rise <= 0) return 0;
  return rise * nextRise < 0 && Math.abs(slope) > 3 * Math.abs(rise) ? 3 * rise : slope;
}
