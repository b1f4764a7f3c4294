import type { Interval } from '../../evidence/index.js';
import { mean, squaresAroundMean, studentQuantile } from '../../numeric/internal.js';

/** A relative change: 0.08 is 8 % more in the rubbed area. */
export interface RelativeChange {
  readonly relative: number;
  /** 95 % interval; absent where nothing was repeated, and where repeats are duplicates of one reading */
  readonly interval?: Interval;
}

/** Figures of the units of both areas. */
export interface AreaFigures {
  readonly unrubbed: readonly number[];
  readonly rubbed: readonly number[];
  /** Whether they belong together by position, as the two areas of one drawdown do. */
  readonly paired: boolean;
}

/** A standard error below this share is rounding. */
const ROUNDING = 1e-12;

/**
 * The change of a mean relative to `unit`: from the differences of pairs where drawdowns were rubbed out anew, otherwise from the pooled
 * scatter of the spots of both areas.
 */
export function relativeChange(figures: AreaFigures, unit: number): RelativeChange {
  const { unrubbed, rubbed } = figures;
  const relative = (mean(rubbed) - mean(unrubbed)) / unit;
  const { error, degreesOfFreedom } = scatterOf(figures);
  if (!(error / unit > ROUNDING)) return { relative };
  const reach = (studentQuantile(0.975, degreesOfFreedom) * error) / unit;
  return { relative, interval: { low: relative - reach, high: relative + reach } };
}

/** Standard error of the difference of the means. */
function scatterOf({ unrubbed, rubbed, paired }: AreaFigures) {
  const count = rubbed.length;
  const degreesOfFreedom = paired ? count - 1 : unrubbed.length + count - 2;
  if (degreesOfFreedom < 1) return { error: 0, degreesOfFreedom };
  const squares = paired
    ? squaresAroundMean(rubbed.map((figure, i) => figure - unrubbed[i]))
    : squaresAroundMean(unrubbed) + squaresAroundMean(rubbed);
  const share = paired ? 1 / count : 1 / unrubbed.length + 1 / count;
  return { error: Math.sqrt((squares / degreesOfFreedom) * share), degreesOfFreedom };
}
