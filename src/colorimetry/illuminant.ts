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
  readonly step: number;
  /** Relative power, any scale. */
  readonly values: ArrayLike<number>;
  /**
   * `continuous` power is interpolated linearly to 1 nm; a `lines` spectrum, such as a fluorescent lamp's, is summed at its
   * own step, which must then be a whole number of nm.
   *
   * @default 'continuous'
   */
  readonly kind?: 'continuous' | 'lines' | undefined;
  /** Where the figures come from. */
  readonly source?: string | undefined;
}
