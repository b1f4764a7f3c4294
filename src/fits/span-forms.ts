import type { FittedQuantity } from './fitted-quantity.js';
import type { GrindFormFit } from './grind-curve-fit.js';

/**
 * A form that leaves less than this many times the sum of squares of the preferred one is not ruled out. With it the
 * intervals cover the truth as often as they say, though the form is chosen from the same few points.
 */
const NOT_RULED_OUT = 2;

/** The preferred form, with intervals that span those of its rival if the points don't tell the two apart. */
export function spanForms(preferred: GrindFormFit, rival: GrindFormFit): GrindFormFit & { formsUndecided: boolean } {
  if (squares(rival) >= NOT_RULED_OUT * squares(preferred)) return { ...preferred, formsUndecided: false };
  const message =
    'The points fit both forms of the curve about as well; the figures are those of the preferred one, the intervals span both.';
  return {
    ...preferred,
    finalStrength: span(preferred.finalStrength, rival.finalStrength),
    halfTime: span(preferred.halfTime, rival.halfTime),
    timeTo90: span(preferred.timeTo90, rival.timeTo90),
    timeTo95: span(preferred.timeTo95, rival.timeTo95),
    warnings: [...preferred.warnings, { code: 'forms-undecided', message }],
    formsUndecided: true,
  };
}

function squares({ residualDeviation, degreesOfFreedom }: GrindFormFit): number {
  return residualDeviation ** 2 * degreesOfFreedom;
}

function span(
  { value, interval: own, extrapolated }: FittedQuantity,
  { interval: other }: FittedQuantity,
): FittedQuantity {
  if (!own || !other) return { value, extrapolated };
  return { value, interval: { low: Math.min(own.low, other.low), high: Math.max(own.high, other.high) }, extrapolated };
}
