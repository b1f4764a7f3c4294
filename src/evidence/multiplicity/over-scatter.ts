import { gaussLegendre, logGamma, quadratureOver } from '../../numeric/internal.js';

/** Beyond this many degrees of freedom a scatter counts as known. */
const KNOWN = 1e5;
const RULE = gaussLegendre(20);
/** Reach of the integral in standard deviations of the scatter: what lies beyond moves no critical value by 1e-4. */
const REACH = 5.5;

/**
 * Mean of a probability over the estimated standard deviation, as a ratio to the true one: it is `χ / √ν`.
 *
 * @param probability - what holds where the standard deviation was estimated `s` times its true value
 * @param degreesOfFreedom - of the estimate; Infinity where it is known
 */
export function overScatter(probability: (s: number) => number, degreesOfFreedom: number): number {
  const n = degreesOfFreedom;
  if (n > KNOWN) return probability(1);
  const deviation = REACH / Math.sqrt(2 * n);
  // Over the root of the ratio, so that nodes crowd where a scatter is seen much too small: there few degrees of freedom err.
  const from = Math.sqrt(Math.max(0, 1 - deviation));
  const { nodes, weights } = quadratureOver(RULE, from, Math.sqrt(1 + deviation));
  const constant = Math.log(4) + (n / 2) * Math.log(n / 2) - logGamma(n / 2);
  return nodes.reduce((sum, root, i) => {
    const s = root * root;
    const density = Math.exp(constant + (2 * n - 1) * Math.log(root) - (n * s * s) / 2);
    return sum + weights[i] * density * probability(s);
  }, 0);
}
