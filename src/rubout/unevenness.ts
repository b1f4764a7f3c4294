import type { Warning } from '../core/index.js';
import { fisherProbability } from '../numeric/internal.js';
import type { Area } from './area.js';
import { scatterOf } from './scatter.js';

/** How the spots of one area scatter, and whether that is more than an even film's may be. */
export interface Evenness {
  /** Root-mean-square ΔE*ab of the spots from the mean of their film; absent where no film has several. */
  readonly deviation?: number;
  readonly spots: number;
  /** Probability of such a scatter where the true one is at the threshold. */
  readonly probability?: number;
  readonly uneven: boolean;
  /** Where the spot was given that alone makes the film look uneven. */
  readonly fault?: string;
}

const RULED_OUT_BELOW = 0.01;
/** Degrees of freedom at which F is chi-squared over its own for every purpose here. */
const MANY = 1e6;

/**
 * Tests the scatter of the spots of an area against the largest that an even film may have, by chi-squared; all of it may lie in one direction of
 * CIELAB. A film is uneven only if it stays so without its furthest spot; otherwise that spot is named.
 *
 * @param threshold - root mean square, ΔE*ab
 */
export function evennessOf({ units, labs, paths }: Area, threshold: number): Evenness {
  const films = units.map((unit) => unit.map((i) => labs[i]));
  const squaresOf = (list: typeof films) => list.reduce((sum, film) => sum + squares(film), 0);
  const degrees = labs.length - units.length;
  if (degrees === 0) return { spots: labs.length, uneven: false };
  const total = squaresOf(films);
  const found = { deviation: Math.sqrt(total / degrees), spots: labs.length };
  const probability = tail(total, degrees, threshold);
  if (probability >= RULED_OUT_BELOW) return { ...found, probability, uneven: false };
  if (degrees < 2) return { ...found, probability, uneven: true };
  const without = labs.map((_, i) => squaresOf(units.map((unit) => unit.filter((k) => k !== i).map((k) => labs[k]))));
  const worst = without.indexOf(Math.min(...without));
  if (tail(without[worst], degrees - 1, threshold) < RULED_OUT_BELOW) return { ...found, probability, uneven: true };
  return { ...found, probability, uneven: false, fault: paths[worst] };
}

function squares(labs: Parameters<typeof scatterOf>[0]): number {
  const { products } = scatterOf(labs);
  return labs.length > 1 ? products[0] + products[4] + products[8] : 0;
}

/** Probability of at least such squares where the mean square is that of the threshold. */
function tail(total: number, degrees: number, threshold: number): number {
  return 1 - fisherProbability(total / (degrees * threshold * threshold), degrees, MANY);
}

/** Notes of one area: a spot that stands out, and a rubbed area that was rubbed unevenly. */
export function noteEvenness(name: string, { fault, uneven, deviation = 0 }: Evenness): Warning[] {
  if (fault !== undefined) {
    const message = `One spot of the ${name} area lies far from the others: read it again, or leave it out and say why.`;
    return [{ code: 'spot-stands-out', message, path: fault }];
  }
  if (!uneven || name !== 'rubbed') return [];
  const message = `The spots of the rubbed area lie ΔE*ab ${deviation.toFixed(2)} from their mean: it was rubbed unevenly.`;
  return [{ code: 'rubbed-uneven', message, path: name }];
}
