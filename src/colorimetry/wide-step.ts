import { assertOneOf, assertOptions } from '../core/internal.js';

/**
 * How readings more than 10 nm apart are interpolated halfway, before the weights of half the step are used.
 *
 * - `spline`: a natural cubic spline through all readings, three times nearer to a 1 nm sum than the local cubic under daylight
 * - `astm-e308`: the local cubic of the standard, for figures that must equal another laboratory's
 *
 * @example WIDE_STEPS.length // 2
 * @see ASTM E308, 7.2
 */
export const WIDE_STEPS = Object.freeze(['spline', 'astm-e308'] as const);

/** One of {@link WIDE_STEPS}. */
export type WideStep = (typeof WIDE_STEPS)[number];

/** What the sum over a spectrum may be told. */
export interface SummationOptions {
  /**
   * Interpolation of readings more than 10 nm apart; it changes nothing on finer grids.
   *
   * @default 'spline'
   */
  readonly wideStep?: WideStep | undefined;
}

/**
 * The interpolation asked for.
 *
 * @throws TintladderError `invalid-option`
 */
export function wideStepOf(options: SummationOptions): WideStep {
  assertOptions(options, ['wideStep']);
  const { wideStep = 'spline' } = options;
  assertOneOf(wideStep, WIDE_STEPS, 'options.wideStep');
  return wideStep;
}
