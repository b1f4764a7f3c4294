import { createSpectrum, D65_10 } from '../../../src/colorimetry/index.js';
import { oilPaintExponent } from '../../../src/strength/index.js';
import type { GarbageKind, RoomContract } from './sound-calls.js';

const flat = (value: number) =>
  JSON.parse(
    JSON.stringify(createSpectrum({ start: 400, step: 10, values: Array(31).fill(value), scale: 'fraction' })),
  );
const SURFACE = { external: 0.04, internal: 0.6, specular: 'included' } as const;
const OVER = { overBlack: flat(0.5), overWhite: flat(0.6), black: flat(0.05), white: flat(0.8) };
const PAIR = { overBlack: 0.5, overWhite: 0.6, black: 0.05, white: 0.8, thickness: 20 };
const COEFFICIENTS = { absorption: Array(31).fill(0.01), scattering: Array(31).fill(0.1) };
const EVERY: readonly GarbageKind[] = ['nothing', 'null', 'text', 'number', 'NaN', 'list', 'flag', 'object'];

const tint = (amount: number) =>
  createSpectrum({
    start: 400,
    step: 20,
    values: Array.from({ length: 16 }, (_, i) => 0.8 / (1 + amount * Math.exp(-(((i - 8) / 4) ** 2)))),
    scale: 'fraction',
  });
const COMPARISON = { viewing: D65_10, surface: 'none', margin: 2 };
const LAB = { L: 60, a: -10, b: -35 };

export const STRENGTH: RoomContract = {
  // Give each a sound call in `calls`, make it pass, and take it out here; the list ends empty.
  notYet: [],
  calls: {
    compareStrengthCriteria: () => ({ args: [tint(1), tint(1.2), COMPARISON], options: [2] }),
    relativeTintingStrength: () => ({
      args: [tint(1), tint(1.2), { ...COMPARISON, criterion: 'absorption-maximum' }],
      options: [2],
    }),
    relativeTintingStrengthFromLab: () => ({ args: [LAB, { L: 58, a: -10, b: -36 }, COMPARISON], options: [2] }),
    replicatesNeeded: () => ({ args: [{ standardDeviation: 1, difference: 2 }], options: [0] }),
    fitAmountExponent: () => ({
      args: [
        { white: tint(0), steps: [0.1, 0.2, 0.4, 0.8].map((amount) => ({ amount, spectrum: tint(amount) })) },
        { criterion: 'kubelka-munk-sum', viewing: D65_10, surface: 'none' },
      ],
      options: [0, 1],
    }),
    // Of an exponent only the three figures are read.
    amountTerm: () => ({
      args: [90, { ratio: 2, exponent: oilPaintExponent({ criterion: 'tristimulus-y' }) }],
      options: [1],
      free: ['version', 'level', 'pairs'],
    }),
    bronzingWarnings: () => ({ args: [flat(0.05), flat(0.04)] }),
    contrastRatio: () => ({ args: [flat(0.5), flat(0.6), { viewing: D65_10 }], options: [2] }),
    drawdownFilm: () => ({
      args: [
        { ...OVER, thickness: 40 },
        { viewing: D65_10, surface: SURFACE, noise: 0.002, ratio: 0.95, volumeSolids: 0.5 },
      ],
      options: [1],
    }),
    externalReflection: () => ({ args: [1.5], sound: { 0: ['number'] } }),
    filmCoefficientSpectra: () => ({ args: [{ ...OVER, thickness: 40 }] }),
    filmCoefficientSpectraFromReflectivity: () => ({
      args: [{ reading: flat(0.4), substrate: flat(0.05), opaqueReflectance: flat(0.5), thickness: 40 }],
    }),
    filmCoefficients: () => ({ args: [PAIR] }),
    filmCoefficientsFromReflectivity: () => ({
      args: [{ reading: 0.4, substrate: 0.05, opaqueReflectance: 0.5, thickness: 40 }],
    }),
    // A layer without end is opaque.
    filmReflectance: () => ({
      args: [{ absorption: 0.1, scattering: 0.2, thickness: 10, substrate: 0.8 }],
      infinite: ['thickness'],
    }),
    filmSpectrum: () => ({ args: [{ ...COEFFICIENTS, thickness: 10, substrate: flat(0.8) }], infinite: ['thickness'] }),
    fitSurface: () => ({
      args: [
        {
          masstone: flat(0.06),
          white: flat(0.8),
          reductions: [0.1, 0.4].map((amount, i) => ({ amount, spectrum: flat(0.5 - 0.2 * i) })),
        },
        { geometry: 'd:8°' },
      ],
      optional: [1],
      options: [1],
    }),
    hidingThickness: () => ({
      args: [
        { ...COEFFICIENTS, black: flat(0.01), white: flat(0.8) },
        { viewing: D65_10, surface: SURFACE, ratio: 0.95 },
      ],
      options: [1],
    }),
    internalReflectance: () => ({ args: [flat(0.5), SURFACE], sound: { 0: ['number'], 1: [] } }),
    // A question about anything: it answers false.
    isChartDrawdown: () => ({ args: [null], sound: { 0: EVERY } }),
    kOverS: () => ({ args: [0.5] }),
    kOverSRows: () => ({ args: [Float64Array.of(0.2, 0.5), new Float64Array(2)], optional: [1], results: [1] }),
    measuredReflectance: () => ({ args: [flat(0.5), SURFACE] }),
    oilPaintExponent: () => ({ args: [{ criterion: 'tristimulus-y' }], options: [0] }),
    opaqueReading: () => ({ args: [OVER, { surface: SURFACE, noise: 0.002 }], options: [1] }),
    reflectanceFromKOverS: () => ({ args: [0.25] }),
    spreadingRate: () => ({ args: [50, { volumeSolids: 0.4 }], optional: [1], options: [1] }),
  },
};
