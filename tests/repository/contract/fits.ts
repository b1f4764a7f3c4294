import type { RoomContract } from './sound-calls.js';

export const FITS: RoomContract = {
  // Give each a sound call in `calls`, make it pass, and take it out here; the list ends empty.
  notYet: [
    'addedKOverS',
    'colorantAmount',
    'fitColorantCoefficients',
    'fitDosageLadder',
    'fitGrindCurve',
    'grindingTimeSaved',
    'resolveColorants',
    'twoConstantStrength',
  ],
  calls: {},
};
