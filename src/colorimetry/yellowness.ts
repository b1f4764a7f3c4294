import { TintladderError } from '../core/index.js';
import { assertXyz } from './cielab.js';
import { describeViewing, type Viewing } from './viewing.js';
import type { Xyz } from './xyz-from-spectrum.js';

/** Cx and Cz of ASTM E313 by illuminant and observer. Each pair makes the white of E308 come out at 0. */
const COEFFICIENTS: Readonly<Record<string, readonly [number, number]>> = {
  'C/2°': [1.2769, 1.0592],
  'C/10°': [1.2871, 1.0781],
  'D65/2°': [1.2985, 1.1335],
  'D65/10°': [1.3013, 1.1498],
};

/**
 * Yellowness index `YI = 100 (Cx X - Cz Z) / Y`.
 *
 * For near-whites and colourless samples whose dominant wavelength lies between 570 and 580 nm; of another hue or a chromatic sample it says
 * nothing. 0 for the perfect reflecting diffuser, negative
 * for a bluish white.
 *
 * @param xyz - tristimulus values
 * @param viewing - what they were computed for: C or D65 with either observer, for which coefficients are published
 * @returns yellowness index
 * @throws TintladderError `not-finite`; `out-of-range` if Y is not above 0; `unknown-illuminant` for a condition without
 * coefficients
 * @example yellowness({ X: 80, Y: 85, Z: 80 }, D65_10) // 14.26
 * @see ASTM E313 for the coefficients and the limits of use
 */
export function yellowness(xyz: Xyz, viewing: Viewing): number {
  assertXyz(xyz, 'xyz');
  const { X, Y, Z } = xyz;
  const condition = describeViewing(viewing);
  if (typeof viewing.illuminant !== 'string' || !Object.hasOwn(COEFFICIENTS, condition)) {
    throw new TintladderError('unknown-illuminant', {
      path: 'viewing',
      received: condition,
      expected: `one of ${Object.keys(COEFFICIENTS).join(', ')}`,
    });
  }
  if (!(Y > 0)) throw new TintladderError('out-of-range', { path: 'xyz.Y', received: Y, expected: 'a value above 0' });
  const [Cx, Cz] = COEFFICIENTS[condition];
  return (100 * (Cx * X - Cz * Z)) / Y;
}
