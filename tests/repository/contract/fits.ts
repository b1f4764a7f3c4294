import { createSpectrum } from '../../../src/colorimetry/index.js';
import { fitColorantCoefficients, fitGrindCurve } from '../../../src/fits/index.js';
import { reflectanceFromKOverS } from '../../../src/kubelka-munk/index.js';
import type { RoomContract } from './sound-calls.js';

const POINTS = [5, 10, 20, 40, 80].map((time) => ({ time, strength: (120 * time) / (time + 10) }));
const LADDER = [2, 4, 6, 8, 10].map((dosage) => ({ dosage, response: 100 - 20 / dosage }));

/** A tint of an invented colorant, as JSON has it. */
const tint = (amount: number) =>
  JSON.parse(
    JSON.stringify(
      createSpectrum({
        start: 400,
        step: 10,
        values: [1, 2, 3].map((k) => reflectanceFromKOverS((0.01 + amount * k) / (1 + 0.5 * amount))),
        scale: 'fraction',
      }),
    ),
  );
const TINTS = {
  white: tint(0),
  reductions: [0.1, 0.4].map((amount) => ({ amount, spectrum: tint(amount) })),
  masstone: tint(1000),
};

export const FITS: RoomContract = {
  // Give each a sound call in `calls`, make it pass, and take it out here; the list ends empty.
  notYet: [],
  calls: {
    addedKOverS: () => ({ args: [tint(0.2), tint(0)] }),
    // The residual tells how well the ladder was fitted, and is not read.
    colorantAmount: () => ({
      args: [tint(0.2), { colorant: fitColorantCoefficients(TINTS) }],
      options: [1],
      free: ['residual'],
    }),
    fitColorantCoefficients: () => ({ args: [TINTS], options: [0] }),
    fitDosageLadder: () => ({ args: [LADDER, { margin: 3 }], optional: [1], options: [1] }),
    fitGrindCurve: () => ({ args: [POINTS, { strength: 80 }], optional: [1], options: [1] }),
    grindingTimeSaved: () => ({
      args: [fitGrindCurve(POINTS), fitGrindCurve(POINTS), { strength: 80 }],
      optional: [2],
      options: [2],
      results: [0, 1],
    }),
    resolveColorants: () => ({
      args: [
        { spot: [tint(0.2), tint(0.21)] },
        { spot: [tint(0.25), tint(0.26)] },
        { colorants: [{ name: 'invented', kOverS: [1, 2, 3] }], white: tint(0) },
      ],
      options: [2],
    }),
    twoConstantStrength: () => ({
      args: [tint(0.2), tint(0.25), { colorant: fitColorantCoefficients(TINTS), notableDifference: 2 }],
      options: [2],
      free: ['residual'],
    }),
  },
};
