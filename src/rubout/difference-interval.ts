import type { ColourDifference, Lab } from '../colorimetry/index.js';
import type { Warning } from '../core/index.js';
import type { Interval } from '../decision/index.js';
import { lengthInterval } from '../evidence/internal.js';
import { quadraticForm } from '../numeric/internal.js';
import { evenSpace } from './even-space.js';
import type { Area } from './readings.js';
import { type AreaScatter, scatterOf } from './scatter.js';

/** 95 % intervals of a rub-out difference, and what they were made from. */
export interface DifferenceInterval {
  readonly dEab: Interval;
  readonly dE2000: Interval;
  readonly level: 0.95;
  readonly basis: 'replicates' | 'repeatability';
  /** Of the scatter in one direction; absent where the repeatability is stated and so taken as known. */
  readonly degreesOfFreedom?: number;
}

/** What the spots, or a stated repeatability, tell of the scatter of the difference. */
export interface DifferenceScatter {
  readonly interval?: DifferenceInterval;
  /** Standard deviation of one reading along the difference found, ΔE*ab. */
  readonly readingDeviation?: number;
  readonly warnings: readonly Warning[];
}

/** Scatter below this, ΔE*ab, is rounding. */
const ROUNDING = 1e-9;

/**
 * The intervals of ΔE*ab and ΔE00 from the spots of both areas, pooled, where both have several; otherwise from the stated
 * repeatability, the same in all directions; otherwise from the area that has several.
 *
 * Pooling takes both areas to scatter alike. ΔE00 is treated in coordinates in which it is a length, made around the mean of
 * both areas.
 *
 * @param repeatability - standard deviation of one reading in any one direction of CIELAB, ΔE*ab
 */
export function differenceScatter(
  areas: readonly [Area, Area],
  difference: ColourDifference,
  repeatability: number | undefined,
): DifferenceScatter {
  const counts = areas.map(({ labs }) => labs.length);
  const scatters = areas.map((area) => scatterOf(area));
  const warnings: Warning[] = areas.flatMap(({ name, labs }, i) =>
    labs.length > 1 && !((scatters[i].deviation ?? 0) > ROUNDING)
      ? [
          {
            code: 'replicates-identical',
            message: `All readings of the ${name} area are the same: a duplicate reading is no replicate and shows no scatter.`,
            path: name,
          },
        ]
      : [],
  );
  const single = counts.some((count) => count === 1);
  const pooled = pool(areas, scatters);
  const fromSpots = pooled.total > ROUNDING ** 2;
  if (!(fromSpots && !single) && repeatability !== undefined) {
    const variance = repeatability * repeatability;
    const stated: Pooled = {
      covariance: scaled(IDENTITY, variance),
      degreesOfFreedom: Number.POSITIVE_INFINITY,
      total: 1,
    };
    return { interval: intervals(areas, difference, stated, variance), readingDeviation: repeatability, warnings };
  }
  if (!fromSpots) return { warnings };
  if (single) {
    const [once, several] = counts[0] === 1 ? areas : [areas[1], areas[0]];
    const message = `The ${once.name} area was read once; its scatter is taken to be that of the ${several.name} area.`;
    warnings.push({ code: 'scatter-borrowed', message, path: once.name });
  }
  const { dL, da, db, dEab } = difference;
  const along = dEab > 0 ? quadraticForm(pooled.covariance, [dL / dEab, da / dEab, db / dEab]) : pooled.total / 3;
  return { interval: intervals(areas, difference, pooled), readingDeviation: Math.sqrt(along), warnings };
}

interface Pooled {
  /** Of one reading. */
  readonly covariance: readonly number[];
  readonly degreesOfFreedom: number;
  readonly total: number;
}

const IDENTITY = [1, 0, 0, 0, 1, 0, 0, 0, 1];

const scaled = (matrix: readonly number[], factor: number) => matrix.map((value) => value * factor);

/** The scatter of both areas together; of one spot per side it is no number. */
function pool(areas: readonly [Area, Area], scatters: readonly AreaScatter[]): Pooled {
  const degreesOfFreedom = areas[0].labs.length + areas[1].labs.length - 2;
  const covariance = scatters[0].products.map((value, i) => (value + scatters[1].products[i]) / degreesOfFreedom);
  return { covariance, degreesOfFreedom, total: covariance[0] + covariance[4] + covariance[8] };
}

/** @param stated - variance of one reading in every direction, where it is stated and not pooled */
function intervals(
  areas: readonly [Area, Area],
  difference: ColourDifference,
  ofReading: Pooled,
  stated?: number,
): DifferenceInterval | undefined {
  const share = areas.reduce((sum, { labs }) => sum + 1 / labs.length, 0);
  const { degreesOfFreedom } = ofReading;
  const { dL, da, db } = difference;
  const covariance = scaled(ofReading.covariance, share);
  const dEab = lengthInterval({ vector: [dL, da, db], covariance, degreesOfFreedom });

  const [from, to] = areas.map((area) => scatterOf(area).mean);
  const map = evenSpace({ L: (from.L + to.L) / 2, a: (from.a + to.a) / 2, b: (from.b + to.b) / 2 });
  const mapped = map({ L: dL, a: da, b: db });
  const evenCovariance =
    stated === undefined
      ? pool(
          areas,
          areas.map((area) => scatterOf(area, map)),
        ).covariance
      : covarianceOfMap(map, stated);
  const length = Math.hypot(mapped.L, mapped.a, mapped.b);
  const even = lengthInterval({
    vector: [mapped.L, mapped.a, mapped.b],
    covariance: scaled(evenCovariance, share),
    degreesOfFreedom,
  });
  if (!dEab || !even) return undefined;
  // The space is even only around its middle; over a long way the formula itself has the last word.
  const stretch = length > 0 ? difference.dE2000 / length : 1;
  return {
    dEab,
    dE2000: { low: even.low * stretch, high: even.high * stretch },
    level: 0.95,
    basis: stated === undefined ? 'replicates' : 'repeatability',
    ...(Number.isFinite(degreesOfFreedom) && { degreesOfFreedom }),
  };
}

/** Covariance of a linear map of coordinates that scatter evenly. */
function covarianceOfMap(map: (lab: Lab) => Lab, variance: number): number[] {
  const columns = [map({ L: 1, a: 0, b: 0 }), map({ L: 0, a: 1, b: 0 }), map({ L: 0, a: 0, b: 1 })];
  const row = (pick: (lab: Lab) => number) => columns.map(pick);
  const rows = [row(({ L }) => L), row(({ a }) => a), row(({ b }) => b)];
  return rows.flatMap((one) =>
    rows.map((other) => variance * one.reduce((sum, value, k) => sum + value * other[k], 0)),
  );
}
