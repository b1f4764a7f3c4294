import { type Interval, type Outcome, worstOutcome } from '../decision/index.js';
import { lengthInterval } from '../evidence/internal.js';
import { assertRubOutResult } from './assert-rub-out-result.js';
import type { RubOutDirection, RubOutResult } from './rub-out-result.js';
import { assertSameConditions } from './same-conditions.js';

/**
 * What storage did to a rub-out, as vectors in CIELAB: `larger` or `smaller` in the same direction, `turned` where what was stronger by rubbing
 * is weaker now or the other way round, and `undecided` where the interval of the change holds zero or is not known.
 */
export const STORAGE_FINDINGS = ['larger', 'smaller', 'turned', 'undecided'] as const;

/** One of {@link STORAGE_FINDINGS}. */
export type StorageFinding = (typeof STORAGE_FINDINGS)[number];

/** A rub-out before and after storage of the paint or colorant. */
export interface StorageComparison {
  readonly kind: 'storage-comparison';
  readonly version: 1;
  /** Stable only if both meet the limit; an undecided one keeps the whole undecided. */
  readonly outcome: Outcome;
  readonly fresh: Outcome;
  readonly stored: Outcome;
  /** Stored minus fresh, coordinate by coordinate, and the length of that vector. */
  readonly change: { readonly dL: number; readonly da: number; readonly db: number; readonly dEab: number };
  /** 95 % interval of the length; absent where one of the two rub-outs shows no scatter. */
  readonly interval?: Interval;
  /** Change of strength by rubbing, stored minus fresh, in percentage points; absent where one of the two has none. */
  readonly strengthChange?: { readonly points: number; readonly interval?: Interval };
  readonly finding: StorageFinding;
  readonly directions: { readonly fresh?: RubOutDirection; readonly stored?: RubOutDirection };
  readonly statement: string;
}

/**
 * Compares the rub-outs of one paint fresh and after storage.
 *
 * Two differences of one length may point opposite ways, so their vectors are compared: the interval is that of the length of the change.
 *
 * @param fresh - assessment before storage
 * @param stored - assessment after storage, made under the same conditions
 * @returns outcome of both, and whether storage changed the rub-out
 * @throws TintladderError `wrong-type` for what is no result of `assessRubOut`; `conditions-mismatch` if viewing, surface, limit or kind of reading differ
 * @example
 * const options = { viewing: D65_10, surface: 'none', precision: { spot: 0.05 } };
 * const rubOut = (L) => assessRubOut({ L: 60, a: 0, b: -20 }, { L, a: 0, b: -20 }, options);
 * compareStorage(rubOut(58.5), rubOut(61.5)).finding // 'turned'
 * @see Zou & Donner (2008), Statistics in Medicine 27, for the interval of a difference from two intervals; Satterthwaite (1946), Biometrics
 * Bulletin 2, 110-114, for the degrees of freedom of a sum
 */
export function compareStorage(fresh: RubOutResult, stored: RubOutResult): StorageComparison {
  assertRubOutResult(fresh, 'fresh');
  assertRubOutResult(stored, 'stored');
  assertSameConditions([fresh, stored], ['the fresh rub-out', 'the stored rub-out']);
  const [before, after] = [fresh.difference, stored.difference];
  const vector = [after.dL - before.dL, after.da - before.da, after.db - before.db] as const;
  const interval = intervalOf(fresh, stored, vector);
  const along = before.dL * after.dL + before.da * after.da + before.db * after.db;
  const moved = interval !== undefined && interval.low > 0;
  const finding = !moved ? 'undecided' : along < 0 ? 'turned' : after.dEab > before.dEab ? 'larger' : 'smaller';
  const strengthChange = strengthOf(fresh, stored);
  return {
    kind: 'storage-comparison',
    version: 1,
    outcome: worstOutcome([fresh.outcome, stored.outcome]),
    fresh: fresh.outcome,
    stored: stored.outcome,
    change: { dL: vector[0], da: vector[1], db: vector[2], dEab: Math.hypot(...vector) },
    ...(interval && { interval }),
    ...(strengthChange && { strengthChange }),
    finding,
    directions: {
      ...(fresh.direction && { fresh: fresh.direction }),
      ...(stored.direction && { stored: stored.direction }),
    },
    statement: `${SENTENCES[finding]} ΔE*ab ${before.dEab.toFixed(2)} fresh and ${after.dEab.toFixed(2)} stored.`,
  };
}

const SENTENCES: Readonly<Record<StorageFinding, string>> = {
  larger: 'Storage made the rub-out larger:',
  smaller: 'Storage made the rub-out smaller:',
  turned: 'Storage turned the rub-out round:',
  undecided: 'No change by storage is shown:',
};

function intervalOf(
  fresh: RubOutResult,
  stored: RubOutResult,
  vector: readonly [number, number, number],
): Interval | undefined {
  const [one, other] = [fresh.covariance, stored.covariance];
  if (!one || !other) return undefined;
  const variances = [one, other].map((covariance) => covariance[0] + covariance[4] + covariance[8]);
  const degrees = [fresh, stored].map(({ interval }) => interval?.degreesOfFreedom ?? Number.POSITIVE_INFINITY);
  const parts = variances.reduce((sum, variance, i) => sum + variance ** 2 / degrees[i], 0);
  const total = variances[0] + variances[1];
  const degreesOfFreedom = parts > 0 ? (total * total) / parts : Number.POSITIVE_INFINITY;
  return lengthInterval({ vector, covariance: one.map((value, i) => value + other[i]), degreesOfFreedom });
}

function strengthOf(fresh: RubOutResult, stored: RubOutResult): StorageComparison['strengthChange'] {
  const [before, after] = [fresh.strengthChange, stored.strengthChange];
  if (!before || !after) return undefined;
  const points = after.changePercent - before.changePercent;
  if (!before.interval || !after.interval) return { points };
  const low = Math.hypot(after.changePercent - after.interval.low, before.interval.high - before.changePercent);
  const high = Math.hypot(after.interval.high - after.changePercent, before.changePercent - before.interval.low);
  return { points, interval: { low: points - low, high: points + high } };
}
