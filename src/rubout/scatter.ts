import type { Lab } from '../colorimetry/index.js';
import { mean } from '../numeric/internal.js';

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

/** How Lab values scatter about their mean. */
export function scatterOf(labs: readonly Lab[]): AreaScatter {
  const centre = meanLab(labs);
  const products = Array.from({ length: 9 }, () => 0);
  for (const { L, a, b } of labs) {
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
