import { TintladderError } from '../core/index.js';
import { assertOptions } from '../core/internal.js';

/** Where a rub-out draws its lines. */
export interface RubOutThresholds {
  /** ΔE00 below which nobody sees a difference. Common practice, no source. @default 0.5 */
  readonly visible: number;
  /**
   * Root-mean-square distance, ΔE*ab, of the spots of one area from their mean, that an even film may have. The package's
   * own limit: well above the scatter of readings on an even film. @default 0.4
   */
  readonly unevenness: number;
  /**
   * Share of the difference that may be left at equal strength where the change is called one of strength. The
   * package's own. @default 0.5
   */
  readonly shadeShare: number;
}

/**
 * The thresholds that a rub-out is assessed with where none are stated.
 *
 * @example RUB_OUT_THRESHOLDS.visible // 0.5
 */
export const RUB_OUT_THRESHOLDS: RubOutThresholds = Object.freeze({ visible: 0.5, unevenness: 0.4, shadeShare: 0.5 });

/**
 * The stated thresholds over the default ones.
 *
 * @throws TintladderError `invalid-option` for one that is unknown or not a positive number
 */
export function thresholdsFrom(stated: Partial<RubOutThresholds> = {}): RubOutThresholds {
  assertOptions(stated, Object.keys(RUB_OUT_THRESHOLDS), 'options.thresholds');
  const thresholds = { ...RUB_OUT_THRESHOLDS, ...stated };
  for (const [name, value] of Object.entries(thresholds)) {
    if (!(value > 0 && value < Number.POSITIVE_INFINITY)) {
      const expected = 'a positive number';
      throw new TintladderError('invalid-option', { path: `options.thresholds.${name}`, received: value, expected });
    }
  }
  return thresholds;
}
