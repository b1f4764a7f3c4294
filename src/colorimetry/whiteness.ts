import { TintladderError, type Warning } from '../core/index.js';
import { assertXyz } from './cielab.js';
import { assertViewing, type Viewing } from './viewing.js';
import { whitePoint, type Xyz } from './xyz-from-spectrum.js';

/** CIE whiteness and tint of a near-white. */
export interface Whiteness {
  readonly kind: 'whiteness';
  readonly version: 1;
  /** 100 for the perfect reflecting diffuser; higher is whiter. */
  readonly whiteness: number;
  /** Positive greenish, negative reddish, 0 for the hue of the perfect diffuser. */
  readonly tint: number;
  /** Whether both lie where the formulas mean something. */
  readonly withinLimits: boolean;
  readonly warnings: readonly Warning[];
}

/**
 * CIE whiteness `W = Y + 800 (xn - x) + 1700 (yn - y)` and tint `T = k (xn - x) - 650 (yn - y)` with k = 1000 for the 2 degree and 900
 * for the 10 degree observer.
 *
 * CIE defines both for D65; ASTM E313 uses the same coefficients with C and D50. They mean something only for whites that differ little
 * in colour, measured on one instrument: 40 < W < 5Y - 280 and -4 < T < 2 (CIE); ASTM E313 adds Y above 65 and a small chroma.
 * Outside the limits of CIE the figures are given with a warning.
 *
 * @param xyz - tristimulus values, Y of the white = 100
 * @param viewing - what they were computed for: C, D50 or D65 with either observer
 * @returns whiteness, tint, whether they are within the limits, and a warning if not
 * @throws TintladderError `not-finite`; `out-of-range` if X + Y + Z is not above 0; `unknown-illuminant` for an illuminant without
 * whiteness coefficients; `unknown-observer`
 * @example whiteness(whitePoint(D65_10), D65_10).whiteness // 100
 * @see CIE 015:2018, evaluation of whiteness; ISO 11475; ASTM E313
 */
export function whiteness(xyz: Xyz, viewing: Viewing): Whiteness {
  assertXyz(xyz, 'xyz');
  assertViewing(viewing, 'viewing');
  const { illuminant, observer } = viewing;
  if (illuminant !== 'C' && illuminant !== 'D50' && illuminant !== 'D65') {
    throw new TintladderError('unknown-illuminant', {
      path: 'viewing.illuminant',
      received: typeof illuminant === 'string' ? illuminant : illuminant.name,
      expected: 'C, D50 or D65, for which whiteness is defined',
    });
  }
  const { x, y } = chromaticity(xyz, 'xyz');
  const n = chromaticity(whitePoint(viewing), 'white');
  const W = xyz.Y + 800 * (n.x - x) + 1700 * (n.y - y);
  const T = (observer === '2' ? 1000 : 900) * (n.x - x) - 650 * (n.y - y);
  const upper = 5 * xyz.Y - 280;
  const withinLimits = W > 40 && W < upper && T > -4 && T < 2;
  const warnings: Warning[] = withinLimits
    ? []
    : [
        {
          code: 'whiteness-out-of-limits',
          message: `Whiteness ${W.toFixed(1)} and tint ${T.toFixed(1)} lie outside the limits of the formulas (40 to ${upper.toFixed(1)}, and -4 to 2): the sample is no commercial white.`,
        },
      ];
  return { kind: 'whiteness', version: 1, whiteness: W, tint: T, withinLimits, warnings };
}

function chromaticity({ X, Y, Z }: Xyz, path: string): { x: number; y: number } {
  const sum = X + Y + Z;
  if (!(sum > 0)) {
    throw new TintladderError('out-of-range', { path: `${path}.X + Y + Z`, received: sum, expected: 'a sum above 0' });
  }
  return { x: X / sum, y: Y / sum };
}
