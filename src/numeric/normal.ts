/** From here on the continued fraction is the better one. */
const FAR = 7.07106781186547;

/** The polynomials are written out, since integrals over several packages ask for millions of values. */
function near(x: number): number {
  const numerator =
    (((((3.52624965998911e-2 * x + 0.700383064443688) * x + 6.37396220353165) * x + 33.912866078383) * x +
      112.079291497871) *
      x +
      221.213596169931) *
      x +
    220.206867912376;
  const denominator =
    ((((((8.83883476483184e-2 * x + 1.75566716318264) * x + 16.064177579207) * x + 86.7807322029461) * x +
      296.564248779674) *
      x +
      637.333633378831) *
      x +
      793.826512519948) *
      x +
    440.413735824752;
  return numerator / denominator;
}

/**
 * Probability that a standard normal variable stays below `x`, good to 1e-14.
 *
 * @see Hart et al. (1968), Computer Approximations, algorithm 5666, in the form of West (2005), Wilmott Magazine, May, 70
 */
export function normalProbability(x: number): number {
  const distance = Math.abs(x);
  if (distance > 37) return x > 0 ? 1 : 0;
  const bell = Math.exp((-distance * distance) / 2);
  const tail = distance < FAR ? bell * near(distance) : bell / (far(distance) * Math.sqrt(2 * Math.PI));
  return x > 0 ? 1 - tail : tail;
}

function far(x: number): number {
  return x + 1 / (x + 2 / (x + 3 / (x + 4 / (x + 0.65))));
}

/** Density of the standard normal distribution. */
export function normalDensity(x: number): number {
  return Math.exp((-x * x) / 2) / Math.sqrt(2 * Math.PI);
}
