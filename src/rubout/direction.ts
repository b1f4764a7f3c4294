import type { ColourDifference } from '../colorimetry/index.js';
import { isPossible, type WeighedCause } from './rub-out-cause.js';
import type { RubOutDirection } from './rub-out-result.js';
import type { SpectralChange } from './spectral-change.js';
import type { RubOutStrengthChange } from './strength-change.js';
import type { RubOutThresholds } from './thresholds.js';

/** What a direction is read from. */
export interface DirectionFacts {
  readonly spectral: SpectralChange;
  readonly strengthChange?: RubOutStrengthChange | undefined;
  readonly difference: ColourDifference;
  readonly lines: RubOutThresholds;
  readonly causes: readonly WeighedCause[];
  /** Whether the difference is shown, on an even film with absorption enough. */
  readonly certain: boolean;
}

/** Of the change of reflectance, the smaller of what rises and what falls, against the larger, from which on it goes both ways. */
const BOTH_WAYS = 0.25;

/**
 * Which way rubbing moved the colour. A direction is proven where the interval of the strength leaves out zero and a change of the surface,
 * which looks like one of strength, is not in question.
 */
export function directionOf(facts: DirectionFacts): RubOutDirection | undefined {
  const { spectral, strengthChange, difference, lines, causes, certain } = facts;
  let [rises, falls] = [0, 0];
  for (const value of spectral.change) {
    if (value > 0) rises += value;
    else falls -= value;
  }
  const ways = Math.min(rises, falls) / Math.max(rises, falls);
  const share = strengthChange && difference.dEab > 0 ? strengthChange.residualDEab / difference.dEab : 0;
  if (strengthChange && share > lines.shadeShare && ways > BOTH_WAYS) {
    return { towards: 'another-shade', certainty: certain ? 'proven' : 'indicated' };
  }
  const change = strengthChange?.changePercent ?? falls - rises;
  if (!(Math.abs(change) > 0)) return undefined;
  const { low, high } = strengthChange?.interval ?? { low: -1, high: 1 };
  const surface = causes.some((one) => one.cause === 'surface-changed' && isPossible(one));
  const proven = certain && (low > 0 || high < 0) && !surface;
  return { towards: change > 0 ? 'more-colour' : 'more-white', certainty: proven ? 'proven' : 'indicated' };
}
