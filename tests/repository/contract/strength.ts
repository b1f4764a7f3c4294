import type { RoomContract } from './sound-calls.js';

export const STRENGTH: RoomContract = {
  // Give each a sound call in `calls`, make it pass, and take it out here; the list ends empty.
  notYet: [
    'amountTerm',
    'compareStrengthCriteria',
    'contrastRatio',
    'drawdownFilm',
    'externalReflection',
    'filmCoefficientSpectra',
    'filmCoefficientSpectraFromReflectivity',
    'filmCoefficients',
    'filmCoefficientsFromReflectivity',
    'filmReflectance',
    'filmSpectrum',
    'fitAmountExponent',
    'hidingThickness',
    'internalReflectance',
    'isChartDrawdown',
    'kOverS',
    'kOverSRows',
    'measuredReflectance',
    'oilPaintExponent',
    'opaqueReading',
    'reflectanceFromKOverS',
    'relativeTintingStrength',
    'relativeTintingStrengthFromLab',
    'replicatesNeeded',
    'spreadingRate',
  ],
  calls: {},
};
