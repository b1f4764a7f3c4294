import { searchMinimum } from '../ladder/profile-interval.js';
import { type FittedForm, squaresOf, timeConstantRange, type WeightedPoint } from './grind-form.js';

/** Steps of the search over the logarithm of the time constant: for the fit, and for a profile. */
const SEARCH = 60;
const PROFILE = 20;

/**
 * Fits `F(t) = F∞ t / (t + t½)`, which is linear in F∞: only ln t½ is searched.
 *
 * @returns the fit, or `undefined` if the best half-time lies at the end of what the times can tell
 * @see Golub & Pereyra (1973), SIAM J. Numer. Anal. 10, for the elimination of linear parameters
 */
export function fitHalfTimeForm(points: readonly WeightedPoint[]): FittedForm | undefined {
  const { low, high } = timeConstantRange(points);
  const finalAt = (half: number) => {
    let cross = 0;
    let square = 0;
    for (const { time, strength, weight } of points) {
      const share = time / (time + half);
      cross += weight * share * strength;
      square += weight * share * share;
    }
    return cross / square;
  };
  const squares = (half: number, final: number) => squaresOf(points, (time) => (final * time) / (time + half));
  const profileOfHalfTime = (half: number) => squares(half, finalAt(half));

  const best = searchMinimum((x) => profileOfHalfTime(Math.exp(x)), low, high, SEARCH);
  if (best.at <= low + 1 || best.at >= high - 1) return undefined;
  const half = Math.exp(best.at);
  const finalStrength = finalAt(half);
  if (!(finalStrength > 0)) return undefined;
  return {
    name: 'half-time',
    parameters: 2,
    squares: best.value,
    finalStrength,
    strengthAt: (time) => (finalStrength * time) / (time + half),
    timeToShare: (share) => (half * share) / (1 - share),
    timeToStrength: (strength) => (half * strength) / (finalStrength - strength),
    profileOfFinalStrength: (final) => searchMinimum((x) => squares(Math.exp(x), final), low, high, PROFILE).value,
    profileOfTimeToShare: (share, time) => profileOfHalfTime((time * (1 - share)) / share),
    profileOfTimeToStrength: (strength, time) =>
      searchMinimum((x) => squares(Math.exp(x), (strength * (time + Math.exp(x))) / time), low, high, PROFILE).value,
  };
}
