import { TintladderError } from '../core/index.js';

/** Where the rules of a rub-out draw their lines. */
export interface RubOutThresholds {
  /** ΔE*ab below which nobody sees a difference. Common practice, no source. @default 0.5 */
  readonly visible: number;
  /**
   * Root-mean-square distance, ΔE*ab, of the spots of one area from their mean, above which a film is uneven. The package's
   * own limit: well above the scatter of readings on an even film. @default 0.4
   */
  readonly unevenness: number;
  /** A difference more than this many times the scatter of the spots is not the chance of an uneven film. The package's own. @default 3 */
  readonly overScatter: number;
  /**
   * Share of the difference that may be left at equal strength where the change is called one of strength alone. The
   * package's own. @default 0.5
   */
  readonly shadeShare: number;
  /**
   * Of the change of K/S over the spectrum, the smaller of what rises and what falls, against the larger: from here on the
   * change has both signs. The package's own. @default 0.25
   */
  readonly bothSigns: number;
}

/**
 * The thresholds that a rub-out is assessed with where none are stated.
 *
 * @example RUB_OUT_THRESHOLDS.visible // 0.5
 */
export const RUB_OUT_THRESHOLDS: RubOutThresholds = Object.freeze({
  visible: 0.5,
  unevenness: 0.4,
  overScatter: 3,
  shadeShare: 0.5,
  bothSigns: 0.25,
});

/**
 * The stated thresholds over the default ones.
 *
 * @throws TintladderError `invalid-option` for one that is not a positive number
 */
export function thresholdsFrom(stated: Partial<RubOutThresholds> = {}): RubOutThresholds {
  const thresholds = { ...RUB_OUT_THRESHOLDS, ...stated };
  for (const [name, value] of Object.entries(thresholds)) {
    if (!(value > 0 && value < Number.POSITIVE_INFINITY)) {
      const expected = 'a positive number';
      throw new TintladderError('invalid-option', { path: `options.thresholds.${name}`, received: value, expected });
    }
  }
  return thresholds;
}
