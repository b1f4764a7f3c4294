/** The illuminants that tintladder knows by name. */
export type IlluminantName = 'A' | 'C' | 'D50' | 'D65';

/**
 * A caller's own relative spectral power distribution on an even grid. Treat it as immutable: weights computed from it
 * are kept for as long as the object lives.
 */
export interface Illuminant {
  /** Shown in results and messages. */
  readonly name: string;
  /** First wavelength, nm. */
  readonly start: number;
  /** Step, nm. */
  readonly interval: number;
  /** Relative power, any scale. */
  readonly values: ArrayLike<number>;
  /**
   * `continuous` power is interpolated linearly to 1 nm; a `lines` spectrum, such as a fluorescent lamp's, is summed at its
   * own step, which must then be a whole number of nm.
   *
   * @default 'continuous'
   */
  readonly kind?: 'continuous' | 'lines';
}

/** CIE standard colorimetric observer: `'2'` degrees (CIE 1931) or `'10'` degrees (CIE 1964). */
export type Observer = '2' | '10';

/** Illuminant and observer. Always stated, never defaulted: a colour without them has no meaning. */
export interface Viewing {
  readonly illuminant: IlluminantName | Illuminant;
  readonly observer: Observer;
}

/** Daylight D65, 10 degree observer: the usual pair for paint. */
export const D65_10: Viewing = Object.freeze({ illuminant: 'D65', observer: '10' });
/** Daylight D65, 2 degree observer. */
export const D65_2: Viewing = Object.freeze({ illuminant: 'D65', observer: '2' });
/** Daylight D50, 10 degree observer. */
export const D50_10: Viewing = Object.freeze({ illuminant: 'D50', observer: '10' });
/** Daylight D50, 2 degree observer: the graphic-arts pair. */
export const D50_2: Viewing = Object.freeze({ illuminant: 'D50', observer: '2' });
/** Incandescent light A, 10 degree observer. */
export const A_10: Viewing = Object.freeze({ illuminant: 'A', observer: '10' });
/** Incandescent light A, 2 degree observer. */
export const A_2: Viewing = Object.freeze({ illuminant: 'A', observer: '2' });
/** Illuminant C, 10 degree observer. */
export const C_10: Viewing = Object.freeze({ illuminant: 'C', observer: '10' });
/** Illuminant C, 2 degree observer. */
export const C_2: Viewing = Object.freeze({ illuminant: 'C', observer: '2' });

/**
 * A short text for a viewing condition, as the trade writes it.
 *
 * @example describeViewing(D65_10) // 'D65/10°'
 */
export function describeViewing({ illuminant, observer }: Viewing): string {
  return `${typeof illuminant === 'string' ? illuminant : illuminant.name}/${observer}°`;
}
