import type { ColourDifference, Lab } from '../colorimetry/index.js';
import type { Warning } from '../core/index.js';
import type { Interval } from '../decision/index.js';
import { lengthInterval } from '../evidence/internal.js';
import { quadraticForm } from '../numeric/internal.js';
import { evenSpace } from './even-space.js';
import { type RubOutPrecision, varianceOfDifference } from './precision.js';
import { meanLab, scatterOf } from './scatter.js';

/** What the scatter of a difference was found from. */
export const DIFFERENCE_BASES = ['drawdowns', 'spots', 'precision'] as const;

/** One of {@link DIFFERENCE_BASES}. */
export type DifferenceBasis = (typeof DIFFERENCE_BASES)[number];

/** 95 % intervals of a rub-out difference, and what they were made from. */
export interface DifferenceInterval {
  readonly dEab: Interval;
  readonly dE2000: Interval;
  readonly level: 0.95;
  readonly basis: DifferenceBasis;
  /** Of the scatter in one direction; absent where it is stated and so taken as known. */
  readonly degreesOfFreedom?: number;
}

/** What the readings, or a stated precision, show of the scatter of a difference. */
export interface DifferenceScatter {
  readonly interval?: DifferenceInterval;
  /** Standard deviation of one reading (of one pair of areas where drawdowns were repeated) along the difference found, ΔE*ab. */
  readonly readingDeviation?: number;
  /** Covariance of the mean difference in L*, a*, b*, row by row: nine values. */
  readonly covariance?: readonly number[];
  readonly warnings: readonly Warning[];
}

/** The readings of one area, and which of them belong to one drawdown; all of them if left out. */
export interface SpotArea {
  readonly name: string;
  readonly labs: readonly Lab[];
  readonly units?: readonly (readonly number[])[];
}

/** Scatter below this, ΔE*ab, is rounding. */
const ROUNDING = 1e-9;

interface Scatter {
  /** Of the mean difference. */
  readonly covariance: readonly number[];
  readonly degreesOfFreedom: number;
  readonly basis: DifferenceBasis;
  /** How many times the covariance of one reading, or pair of areas, goes into it. */
  readonly share: number;
}

/**
 * The intervals of ΔE*ab and ΔE00: from paired differences where several drawdowns were rubbed out, otherwise from the spots of both areas,
 * pooled. A stated precision takes over where it is larger, or where nothing was repeated.
 *
 * Pooling takes both areas to scatter alike. ΔE00 is treated in coordinates in which it is a length, made around the mean of
 * both areas.
 */
export function differenceScatter(
  areas: readonly [SpotArea, SpotArea],
  difference: ColourDifference,
  precision: RubOutPrecision | undefined,
): DifferenceScatter {
  const found = pairs(areas).length > 1 ? ofPairs(areas) : ofSpots(areas);
  const stated = precision && ofPrecision(areas, precision);
  const scatter = found && stated ? (trace(stated) > trace(found) ? stated : found) : (found ?? stated);
  const warnings = [...identical(areas), ...(scatter === found ? borrowed(areas) : [])];
  if (!scatter) return { warnings };
  const interval = intervals(areas, difference, scatter);
  const { dL, da, db, dEab } = difference;
  const { covariance, share } = scatter;
  const along = dEab > 0 ? quadraticForm(covariance, [dL / dEab, da / dEab, db / dEab]) : trace(scatter) / 3;
  return {
    ...(interval && { interval }),
    readingDeviation: Math.sqrt(along / share),
    covariance,
    warnings,
  };
}

const trace = ({ covariance }: Pick<Scatter, 'covariance'>) => covariance[0] + covariance[4] + covariance[8];
const scaled = (matrix: readonly number[], factor: number) => matrix.map((value) => value * factor);
const IDENTITY = [1, 0, 0, 0, 1, 0, 0, 0, 1];

/** Readings of each pair of areas, by their places. */
function pairs([unrubbed, rubbed]: readonly [SpotArea, SpotArea]): readonly (readonly [
  readonly Lab[],
  readonly Lab[],
])[] {
  const unitsOf = ({ units, labs }: SpotArea) => units?.map((unit) => unit.map((i) => labs[i])) ?? [labs];
  const [before, after] = [unitsOf(unrubbed), unitsOf(rubbed)];
  return before.map((labs, i) => [labs, after[i]] as const);
}

function ofPairs(areas: readonly [SpotArea, SpotArea]): Scatter | undefined {
  const differences = pairs(areas).map(([before, after]) => {
    const [from, to] = [meanLab(before), meanLab(after)];
    return { L: to.L - from.L, a: to.a - from.a, b: to.b - from.b };
  });
  const n = differences.length;
  const covariance = scaled(scatterOf(differences).products, 1 / ((n - 1) * n));
  const scatter: Scatter = { covariance, degreesOfFreedom: n - 1, basis: 'drawdowns', share: 1 / n };
  return trace(scatter) > ROUNDING ** 2 ? scatter : undefined;
}

function ofSpots(areas: readonly [SpotArea, SpotArea]): Scatter | undefined {
  const [one, other] = areas.map(({ labs }) => scatterOf(labs).products);
  const counts = areas.map(({ labs }) => labs.length);
  const degreesOfFreedom = counts[0] + counts[1] - 2;
  if (degreesOfFreedom === 0) return undefined;
  const share = 1 / counts[0] + 1 / counts[1];
  const covariance = one.map((value, i) => (share * (value + other[i])) / degreesOfFreedom);
  const scatter: Scatter = { covariance, degreesOfFreedom, basis: 'spots', share };
  return trace(scatter) > share * ROUNDING ** 2 ? scatter : undefined;
}

function ofPrecision(areas: readonly [SpotArea, SpotArea], precision: RubOutPrecision): Scatter {
  const counts = pairs(areas).map(([before, after]) => [before.length, after.length] as const);
  const { variance, share } = varianceOfDifference(counts, precision);
  const degreesOfFreedom = precision.degreesOfFreedom ?? Number.POSITIVE_INFINITY;
  return { covariance: scaled(IDENTITY, variance), degreesOfFreedom, basis: 'precision', share };
}

function identical(areas: readonly SpotArea[]): Warning[] {
  return areas.flatMap(({ name, labs }) =>
    labs.length > 1 && !((scatterOf(labs).deviation ?? 0) > ROUNDING)
      ? [
          {
            code: 'replicates-identical',
            message: `All readings of the ${name} area are the same: a duplicate reading is no replicate and shows no scatter.`,
            path: name,
          },
        ]
      : [],
  );
}

function borrowed(areas: readonly [SpotArea, SpotArea]): Warning[] {
  const once = areas.filter(({ labs }) => labs.length === 1);
  if (once.length !== 1) return [];
  const [{ name }] = once;
  const message = `The ${name} area was read once; its scatter is taken to be that of the other area.`;
  return [{ code: 'scatter-borrowed', message, path: name }];
}

function intervals(
  areas: readonly [SpotArea, SpotArea],
  difference: ColourDifference,
  { covariance, degreesOfFreedom, basis }: Scatter,
): DifferenceInterval | undefined {
  const { dL, da, db } = difference;
  const dEab = lengthInterval({ vector: [dL, da, db], covariance, degreesOfFreedom });
  const [from, to] = areas.map(({ labs }) => meanLab(labs));
  const map = evenSpace({ L: (from.L + to.L) / 2, a: (from.a + to.a) / 2, b: (from.b + to.b) / 2 });
  const mapped = map({ L: dL, a: da, b: db });
  const length = Math.hypot(mapped.L, mapped.a, mapped.b);
  const even = lengthInterval({
    vector: [mapped.L, mapped.a, mapped.b],
    covariance: covarianceOfMap(map, covariance),
    degreesOfFreedom,
  });
  if (!dEab || !even) return undefined;
  // The space is even only around its middle; over a long way the formula itself has the last word.
  const stretch = length > 0 ? difference.dE2000 / length : 1;
  return {
    dEab,
    dE2000: { low: even.low * stretch, high: even.high * stretch },
    level: 0.95,
    basis,
    ...(Number.isFinite(degreesOfFreedom) && { degreesOfFreedom }),
  };
}

/** Covariance of a linear map of coordinates. */
function covarianceOfMap(map: (lab: Lab) => Lab, covariance: readonly number[]): number[] {
  const columns = [map({ L: 1, a: 0, b: 0 }), map({ L: 0, a: 1, b: 0 }), map({ L: 0, a: 0, b: 1 })];
  const row = (pick: (lab: Lab) => number) => columns.map(pick);
  const rows = [row(({ L }) => L), row(({ a }) => a), row(({ b }) => b)];
  return rows.flatMap((one) =>
    rows.map((other) =>
      one.reduce((sum, x, i) => sum + other.reduce((part, y, j) => part + x * covariance[3 * i + j] * y, 0), 0),
    ),
  );
}
