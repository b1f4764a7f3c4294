import { D65_10 } from '../../src/colorimetry/index.js';
import {
  opaqueReading,
  relativeTintingStrength,
  type StrengthCriterion,
  type Surface,
} from '../../src/strength/index.js';
import { oilPaint } from './oil-paints.js';

/** Two reductions of one colorant in zinc white, and its mass tone; the names are those of `OIL_PAINT_PAIRS`. */
export const PAIRS = [
  { colorant: 'eosin in wax', weaker: '01B', stronger: '01C', masstone: '01A' },
  { colorant: 'eosin', weaker: '02B', stronger: '02C', masstone: '02A' },
  { colorant: 'eosin, lead, in wax', weaker: '03B', stronger: '03C', masstone: '03A' },
  { colorant: 'cochineal', weaker: '04B', stronger: '04C', masstone: '04A' },
  { colorant: 'minium', weaker: '05B', stronger: '05C', masstone: '05A' },
  { colorant: 'viridian green', weaker: '09B', stronger: '09C', masstone: '09A' },
  { colorant: 'ultramarine blue', weaker: '11B', stronger: '11C', masstone: '11A' },
  { colorant: 'cobalt blue', weaker: '12B', stronger: '12C', masstone: '12A' },
  { colorant: 'prussian blue', weaker: '13B', stronger: '13C', masstone: '13A' },
  { colorant: 'chrome yellow', weaker: '14B', stronger: '14C', masstone: '14A' },
  { colorant: 'cochineal, pale', weaker: '04F', stronger: '04B', masstone: '04A' },
  { colorant: 'prussian blue, pale', weaker: '13G', stronger: '13B', masstone: '13A' },
] as const;

export const WHITE = '07A';

/** Colorant per white, by mass. */
export function amountOf(name: string): number {
  const [colorant, white] = oilPaint(name).parts.values();
  return colorant / white;
}

/** The lowest reading of a paint, over both fields. */
export function lowestReading(name: string): number {
  const { overBlack, overWhite } = oilPaint(name).drawdown;
  return Math.min(...overBlack.values, ...overWhite.values);
}

/** k1 a twentieth below the lowest reading of the colorant, 0.04 at most; k2 0.5. */
export function surfaceOf({ weaker, stronger, masstone }: (typeof PAIRS)[number]): Surface {
  const lowest = Math.min(...[weaker, stronger, masstone].map(lowestReading));
  return { external: Math.min(0.04, 0.95 * lowest), internal: 0.5, specular: 'included' };
}

/** The measured reading of a paint as an opaque layer. */
export function readingOf(name: string, surface: Surface) {
  return opaqueReading(oilPaint(name).drawdown, { surface }).spectrum;
}

/** Strength of the stronger reduction against the weaker one by single-constant theory, amounts counted in: 100 % in truth. */
export function singleConstantPercent(pair: (typeof PAIRS)[number], criterion: StrengthCriterion): number {
  const surface = surfaceOf(pair);
  const [white, reference, trial] = [WHITE, pair.weaker, pair.stronger].map((name) => readingOf(name, surface));
  const amounts = {
    reference: { colorant: amountOf(pair.weaker), white: 1 },
    trial: { colorant: amountOf(pair.stronger), white: 1 },
  };
  return relativeTintingStrength(reference, trial, { viewing: D65_10, criterion, white, surface, amounts }).percent;
}

/** The trial's colorant per white over the reference's. */
export function ratioOf({ weaker, stronger }: (typeof PAIRS)[number]): number {
  return amountOf(stronger) / amountOf(weaker);
}
