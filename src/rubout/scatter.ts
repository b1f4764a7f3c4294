import type { Lab } from '../colorimetry/index.js';
import { mean } from '../numeric/internal.js';
import type { Area } from './readings.js';

/** How the spots of one area scatter about their mean. */
export interface AreaScatter {
  readonly mean: Lab;
  /** Sums of squares and products of L*, a*, b* about the mean, row by row: nine values. */
  readonly products: readonly number[];
  /** Root-mean-square ΔE*ab of the spots from their mean, with n - 1; absent for one spot. */
  readonly deviation?: number;
}

/** Mean of Lab values. */
export function meanLab(labs: readonly Lab[]): Lab {
  return { L: mean(labs.map(({ L }) => L)), a: mean(labs.map(({ a }) => a)), b: mean(labs.map(({ b }) => b)) };
}

/** The scatter of an area, with coordinates as `map` gives them: CIELAB itself, or a space that is even for another formula. */
export function scatterOf({ labs }: Area, map: (lab: Lab) => Lab = (lab) => lab): AreaScatter {
  const mapped = labs.map(map);
  const centre = meanLab(mapped);
  const products = Array.from({ length: 9 }, () => 0);
  for (const { L, a, b } of mapped) {
    const rest = [L - centre.L, a - centre.a, b - centre.b];
    for (let i = 0; i < 9; i++) products[i] += rest[Math.floor(i / 3)] * rest[i % 3];
  }
  if (labs.length < 2) return { mean: centre, products };
  return {
    mean: centre,
    products,
    deviation: Math.sqrt((products[0] + products[4] + products[8]) / (labs.length - 1)),
  };
}
