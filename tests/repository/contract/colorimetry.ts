import { createSpectrum, D65_10, type Reading } from '../../../src/colorimetry/index.js';
import type { RoomContract, SoundCall } from './sound-calls.js';

const INPUT = {
  start: 400,
  step: 10,
  values: Array.from({ length: 31 }, (_, i) => 0.1 + 0.02 * i),
  scale: 'fraction',
} as const;
const SPECTRUM = createSpectrum(INPUT);
/** What JSON makes of a spectrum: taken as one, and checked. */
const PLAIN = JSON.parse(JSON.stringify(SPECTRUM));
const GRID = { start: 400, step: 10, count: 31 };
const LAB = { L: 50, a: 10, b: -20 };
const OTHER = { L: 52, a: 12, b: -18 };
const XYZ = { X: 80, Y: 85, Z: 80 };
const WHITE = { X: 94.811, Y: 100, Z: 107.304 };
const LAMP = { illuminant: { name: 'booth', start: 380, step: 5, values: Array(81).fill(1) }, observer: '10' };
const READING: Reading = { name: 'a', spectrum: PLAIN, conditions: { viewing: D65_10, specular: 'included' } };
const LAB_READING: Reading = { name: 'b', lab: LAB, conditions: { viewing: D65_10, specular: 'included' } };
const ROWS = Float64Array.of(50, 10, -20, 52, 12, -18);

const pair = (options?: object): SoundCall =>
  options ? { args: [LAB, OTHER, options], optional: [2], options: [2] } : { args: [LAB, OTHER] };

export const COLORIMETRY: RoomContract = {
  notYet: [],
  calls: {
    colourDifference: () => pair(),
    colourDifferenceOfReadings: () => ({ args: [READING, LAB_READING, { viewing: D65_10 }], options: [2] }),
    correctBandPass: () => ({ args: [PLAIN] }),
    createSpectrum: () => ({ args: [INPUT] }),
    daylightIlluminant: () => ({ args: [6504] }),
    deltaE2000: () => pair({ kL: 2, kC: 1, kH: 1 }),
    deltaE2000Rows: () => ({
      args: [ROWS, ROWS, new Float64Array(2), { kL: 1 }],
      optional: [2, 3],
      options: [3],
      results: [2],
    }),
    deltaE94: () => pair({ application: 'textiles' }),
    deltaE99o: () => pair(),
    deltaECmc: () => pair({ l: 2, c: 1 }),
    deltaEab: () => pair(),
    describeViewing: () => ({ args: [D65_10] }),
    gridOf: () => ({ args: [PLAIN] }),
    labFromLch: () => ({ args: [{ L: 50, C: 10, h: 180 }] }),
    labFromSpectrum: () => ({ args: [PLAIN, LAMP, { wideStep: 'spline' }], optional: [2], options: [2] }),
    labFromXyz: () => ({ args: [XYZ, WHITE] }),
    labRows: () => ({
      args: [Float64Array.from(INPUT.values), GRID, D65_10, new Float64Array(3)],
      optional: [3],
      results: [3],
    }),
    lchFromLab: () => ({ args: [LAB] }),
    meanSpectrum: () => ({ args: [[PLAIN, PLAIN]] }),
    metamerismIndex: () => ({
      args: [PLAIN, PLAIN, { match: D65_10, test: { illuminant: 'A', observer: '10' }, correction: 'additive' }],
      options: [2],
    }),
    resample: () => ({ args: [PLAIN, { start: 405, step: 5, count: 10 }] }),
    spectrumWarnings: () => ({ args: [PLAIN] }),
    srgbSwatch: () => ({ args: [LAB, LAMP] }),
    whitePoint: () => ({ args: [LAMP] }),
    whiteness: () => ({ args: [WHITE, D65_10] }),
    xyzFromLab: () => ({ args: [LAB, WHITE] }),
    xyzFromSpectrum: () => ({ args: [PLAIN, D65_10, { wideStep: 'astm-e308' }], optional: [2], options: [2] }),
    yellowness: () => ({ args: [XYZ, D65_10] }),
  },
};
