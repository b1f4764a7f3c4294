import { searchMinimum } from '../ladder/profile-interval.js';
import { type FittedForm, squaresOf, timeConstantRange, type WeightedPoint } from './grind-form.js';

/** Steps of the search over the logarithm of the time constant: for the fit, and for a profile. */
const SEARCH = 60;
const PROFILE = 20;

/**
 * Fits `F(t) = F∞ - D exp(-t / τ)` with D = F∞ - F0, which is linear in F∞ and D: only ln τ is searched.
 *
 * @returns the fit, or `undefined` if the best τ lies at the end of what the times can tell or the strength falls
 * @see Golub & Pereyra (1973), SIAM J. Numer. Anal. 10, for the elimination of linear parameters
 */
export function fitExponentialForm(points: readonly WeightedPoint[]): FittedForm | undefined {
  const { low, high } = timeConstantRange(points);
  const rest = (time: number, tau: number) => Math.exp(-time / tau);

  const total = points.reduce((sum, { weight }) => sum + weight, 0);
  /** F∞ and D at a given τ: a straight line of strength against exp(-t / τ). */
  const line = (tau: number) => {
    let [meanX, meanY, xx, xy] = [0, 0, 0, 0];
    for (const { time, strength, weight } of points) {
      meanX += (weight * rest(time, tau)) / total;
      meanY += (weight * strength) / total;
    }
    for (const { time, strength, weight } of points) {
      const x = rest(time, tau) - meanX;
      xx += weight * x * x;
      xy += weight * x * (strength - meanY);
    }
    const drop = xx > 0 ? -xy / xx : 0;
    return { final: meanY + drop * meanX, drop };
  };
  const squares = (tau: number, final: number, drop: number) =>
    squaresOf(points, (time) => final - drop * rest(time, tau));
  /** The least sum of squares over one factor a in strength = offset + a · slope, at the best τ. */
  const profile = (offset: number, slope: (time: number, tau: number) => number) => {
    const atTau = (tau: number) => {
      let [cross, square] = [0, 0];
      for (const { time, strength, weight } of points) {
        const s = slope(time, tau);
        cross += weight * s * (strength - offset);
        square += weight * s * s;
      }
      // exp(t / τ) of a long time over a short τ exceeds a double; such a curve is far from any point.
      if (!(square < Infinity)) return Infinity;
      const factor = square > 0 ? cross / square : 0;
      return squaresOf(points, (time) => offset + factor * slope(time, tau));
    };
    return searchMinimum((x) => atTau(Math.exp(x)), low, high, PROFILE).value;
  };

  const best = searchMinimum(
    (x) => {
      const { final, drop } = line(Math.exp(x));
      return squares(Math.exp(x), final, drop);
    },
    low,
    high,
    SEARCH,
  );
  const tau = Math.exp(best.at);
  const { final, drop } = line(tau);
  if (best.at <= low + 1 || best.at >= high - 1 || !(drop > 0 && final > 0)) return undefined;
  return {
    name: 'exponential',
    parameters: 3,
    squares: best.value,
    finalStrength: final,
    strengthAt: (time) => final - drop * rest(time, tau),
    timeToShare: (share) => tau * Math.log(drop / (final * (1 - share))),
    timeToStrength: (strength) => tau * Math.log(drop / (final - strength)),
    profileOfFinalStrength: (held) => profile(held, rest),
    profileOfTimeToShare: (share, held) => profile(0, (time, t) => 1 - (1 - share) * Math.exp((held - time) / t)),
    profileOfTimeToStrength: (strength, held) => profile(strength, (time, t) => rest(held, t) - rest(time, t)),
  };
}
