import { type Interval, type Outcome, worstOutcome } from '../decision/index.js';
import type { RubOutDiagnosis, RubOutResult } from './rub-out-result.js';
import { assertSameConditions } from './same-conditions.js';

/** A rub-out before and after storage of the paint or colorant. */
export interface StorageComparison {
  /** Stable only if both meet the limit; an undecided one keeps the whole undecided. */
  readonly outcome: Outcome;
  readonly fresh: Outcome;
  readonly stored: Outcome;
  /** ΔE*ab stored minus fresh: positive where storage made the rub-out larger. */
  readonly change: number;
  /** 95 %; absent where one of the two has no interval. */
  readonly interval?: Interval;
  /** What the interval of the change proves. */
  readonly finding: 'larger' | 'smaller' | 'undecided';
  readonly diagnoses: { readonly fresh: RubOutDiagnosis; readonly stored: RubOutDiagnosis };
  readonly statement: string;
}

/**
 * Compares the rub-outs of one paint fresh and after storage.
 *
 * The interval of the change comes from those of both rub-outs, end by end, which keeps their lopsidedness near zero.
 *
 * @param fresh - assessment before storage
 * @param stored - assessment after storage, made under the same conditions
 * @returns outcome of both, and whether storage changed the rub-out
 * @throws TintladderError `conditions-mismatch` if viewing, surface, limit or kind of reading differ
 * @example
 * const rubOut = (L) => assessRubOut({ L: 60, a: 0, b: -20 }, { L, a: 0, b: -20 }, { viewing: D65_10, repeatability: 0.05 });
 * compareStorage(rubOut(59.8), rubOut(58)).finding // 'larger'
 * @see Zou & Donner (2008), Statistics in Medicine 27, for the interval of a difference from two intervals
 */
export function compareStorage(fresh: RubOutResult, stored: RubOutResult): StorageComparison {
  assertSameConditions([fresh, stored], ['the fresh rub-out', 'the stored rub-out']);
  const [before, after] = [fresh.difference.dEab, stored.difference.dEab];
  const change = after - before;
  const interval = changeInterval(fresh, stored);
  const finding = !interval ? 'undecided' : interval.low > 0 ? 'larger' : interval.high < 0 ? 'smaller' : 'undecided';
  const moved = `ΔE*ab ${before.toFixed(2)} fresh and ${after.toFixed(2)} stored`;
  const said = {
    larger: `Storage made the rub-out larger: ${moved}.`,
    smaller: `Storage made the rub-out smaller: ${moved}.`,
    undecided: `No change by storage is proven: ${moved}.`,
  }[finding];
  return {
    outcome: worstOutcome([fresh.outcome, stored.outcome]),
    fresh: fresh.outcome,
    stored: stored.outcome,
    change,
    ...(interval && { interval }),
    finding,
    diagnoses: { fresh: fresh.diagnosis, stored: stored.diagnosis },
    statement: said,
  };
}

function changeInterval(fresh: RubOutResult, stored: RubOutResult): Interval | undefined {
  if (!fresh.interval || !stored.interval) return undefined;
  const [before, after] = [fresh.difference.dEab, stored.difference.dEab];
  const change = after - before;
  return {
    low: change - Math.hypot(after - stored.interval.dEab.low, fresh.interval.dEab.high - before),
    high: change + Math.hypot(stored.interval.dEab.high - after, before - fresh.interval.dEab.low),
  };
}
