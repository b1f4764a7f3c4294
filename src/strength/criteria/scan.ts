import { type Dilution, factorRange } from '../dilution.js';

/** Ratio of neighbouring factors looked at: fine enough to tell two solutions apart, coarse enough to stay quick. */
const STEP = 1.25;

/** Factors over the whole range in which no K/S is negative, evenly spaced in the logarithm, both ends included. */
export function scannedFactors(dilution: Dilution): number[] {
  const { low, high } = factorRange(dilution);
  const steps = Math.max(1, Math.ceil(Math.log(high / low) / Math.log(STEP)));
  return Array.from({ length: steps + 1 }, (_, i) => (i === steps ? high : low * (high / low) ** (i / steps)));
}

/** Pairs of neighbouring factors between which `f` changes sign. */
export function bracketRoots(dilution: Dilution, f: (factor: number) => number): [number, number][] {
  const factors = scannedFactors(dilution);
  const values = factors.map(f);
  const brackets: [number, number][] = [];
  for (let i = 1; i < factors.length; i++) {
    if (values[i - 1] > 0 !== values[i] > 0) brackets.push([factors[i - 1], factors[i]]);
  }
  return brackets;
}
