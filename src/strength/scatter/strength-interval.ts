import { studentQuantile, variance } from '../../numeric/internal.js';

/** 95 % interval of a strength, in % like the strength itself. */
export interface StrengthInterval {
  readonly low: number;
  readonly high: number;
  /** Standard deviation of the strength itself, not of one reading: what the interval is made of. */
  readonly standardDeviation: number;
  /** By Welch and Satterthwaite, so mostly a fraction; absent where the repeatability is stated and so taken as known. */
  readonly degreesOfFreedom?: number;
  readonly level: 0.95;
  readonly basis: 'replicates' | 'repeatability';
}

/** Natural logarithms of the strength, one for each replicate of one side against the means of the other sides. */
export type ReplicateLogs = readonly number[];

/** The logarithms of each side; of the white where it was read several times. */
export interface SideLogs {
  readonly reference: ReplicateLogs;
  readonly trial: ReplicateLogs;
  readonly white: ReplicateLogs;
}

/** A standard deviation of the logarithm below this is rounding. */
const ROUNDING = 1e-12;

/**
 * The interval of a strength from the scatter of the replicates of each side.
 *
 * Strength is a ratio, so its logarithm is what scatters evenly. Each side's share of the variance is `s² / n` of its
 * logarithms; the shares add up, as the sides are measured independently, and Welch and Satterthwaite give the degrees of
 * freedom. A reference or trial read once is taken to scatter as the other side does; a white read once counts as exact.
 *
 * @param percent - the strength of the means
 * @returns the interval, or `undefined` where the readings show no scatter at all
 * @see Welch (1947), Biometrika 34; Satterthwaite (1946), Biometrics Bulletin 2; JCGM 100:2008, G.4
 */
export function intervalFromReplicates(
  percent: number,
  { reference, trial, white }: SideLogs,
): StrengthInterval | undefined {
  const shares: { variance: number; degreesOfFreedom: number }[] = [];
  const add = (logs: ReplicateLogs, alone: boolean) => {
    if (logs.length < 2) return;
    const share = variance(logs) * (1 / logs.length + (alone ? 1 : 0));
    shares.push({ variance: share, degreesOfFreedom: logs.length - 1 });
  };
  add(reference, trial.length === 1);
  add(trial, reference.length === 1);
  add(white, false);
  const total = shares.reduce((sum, share) => sum + share.variance, 0);
  if (!(Math.sqrt(total) > ROUNDING)) return undefined;
  const degreesOfFreedom =
    1 / shares.reduce((sum, share) => sum + (share.variance / total) ** 2 / share.degreesOfFreedom, 0);
  return { ...intervalOf(percent, Math.sqrt(total), degreesOfFreedom, 'replicates'), degreesOfFreedom };
}

/**
 * The interval of a strength from a stated standard deviation of one reading.
 *
 * @param percent - the strength
 * @param repeatability - standard deviation, %, of the strength that one reading of one film gives
 * @param counts - number of readings of each side
 * @see JCGM 100:2008, 4.3 and 5.1.2
 */
export function intervalFromRepeatability(
  percent: number,
  repeatability: number,
  counts: readonly number[],
): StrengthInterval {
  const variance = counts.reduce((sum, count) => sum + (repeatability / 100) ** 2 / count, 0);
  return intervalOf(percent, Math.sqrt(variance), Number.POSITIVE_INFINITY, 'repeatability');
}

function intervalOf(
  percent: number,
  logDeviation: number,
  degreesOfFreedom: number,
  basis: StrengthInterval['basis'],
): StrengthInterval {
  const reach = studentQuantile(0.975, degreesOfFreedom) * logDeviation;
  return {
    low: percent * Math.exp(-reach),
    high: percent * Math.exp(reach),
    standardDeviation: percent * logDeviation,
    level: 0.95,
    basis,
  };
}
