import { fitGrindCurve } from '../../../src/fits/index.js';
import type { RoomContract } from './sound-calls.js';

const POINTS = [5, 10, 20, 40, 80].map((time) => ({ time, strength: (120 * time) / (time + 10) }));
const LADDER = [2, 4, 6, 8, 10].map((dosage) => ({ dosage, response: 100 - 20 / dosage }));

export const FITS: RoomContract = {
  // Give each a sound call in `calls`, make it pass, and take it out here; the list ends empty.
  notYet: ['addedKOverS', 'colorantAmount', 'fitColorantCoefficients', 'resolveColorants', 'twoConstantStrength'],
  calls: {
    fitDosageLadder: () => ({ args: [LADDER, { margin: 3 }], optional: [1], options: [1] }),
    fitGrindCurve: () => ({ args: [POINTS, { strength: 80 }], optional: [1], options: [1] }),
    grindingTimeSaved: () => ({
      args: [fitGrindCurve(POINTS), fitGrindCurve(POINTS), { strength: 80 }],
      optional: [2],
      options: [2],
      results: [0, 1],
    }),
  },
};
