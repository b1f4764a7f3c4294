import { TintladderError } from '../core/index.js';
import type { Interval } from '../decision/index.js';

/** How much one colorant of a tint changed on rubbing, from a resolution of the tint's K/S into those of its colorants. */
export interface ColorantChange {
  readonly name: string;
  /** Absorption it adds to the rubbed area against the unrubbed one, as a share: 0.1 = 10 % more, 0 = no change. */
  readonly relative: number;
  /** 95 % interval of `relative`. */
  readonly interval?: Interval;
}

/** Which way a colorant moved; `unmoved` where its interval holds zero, so that nothing proves a change. */
export type Movement = 'more' | 'less' | 'unmoved';

/** Without an interval, a change below this share is taken as none. The package's own limit. */
const NOTICEABLE = 0.02;

/**
 * Which way a colorant moved.
 *
 * @throws TintladderError `not-finite`, `invalid-interval`
 */
export function movementOf({ name, relative, interval }: ColorantChange): Movement {
  const path = `change of ${name}`;
  if (!Number.isFinite(relative)) {
    throw new TintladderError('not-finite', { path, received: relative, expected: 'a finite number' });
  }
  const { low, high } = interval ?? { low: relative - NOTICEABLE, high: relative + NOTICEABLE };
  if (!(low <= relative && relative <= high && Number.isFinite(high - low))) {
    const expected = `an interval that holds the change, ${relative}`;
    throw new TintladderError('invalid-interval', { path: `interval of the ${path}`, received: [low, high], expected });
  }
  return low > 0 ? 'more' : high < 0 ? 'less' : 'unmoved';
}
