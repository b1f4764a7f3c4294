import type { RoomContract } from './sound-calls.js';

const NEST = { weighing: [1, { spot: [2, 3] }] };
const COVARIANCE = [0.01, 0, 0, 0, 0.01, 0, 0, 0, 0.01];

/** A reading is an object or a number: what it must be, the function that takes it says. */
const ANY_READING = ['number', 'object'] as const;

export const EVIDENCE: RoomContract = {
  notYet: [
    'chartControls',
    'compareSides',
    'conformanceProbability',
    'decide',
    'decideAtOneRisk',
    'findOutliers',
    'nextMeasurement',
    'precisionFromControls',
    'propagateParameters',
    'varianceComponents',
  ],
  calls: {
    groupReadings: () => ({
      args: [[{ name: 'W A 1' }, { name: 'W A 2' }], '{paint} {package} {weighing}', { words: { package: ['A'] } }],
      optional: [2],
      options: [2],
      sound: { 0: ['list'] },
    }),
    judge: () => ({ args: [0.8, { low: 0.6, high: 0.95 }, { upper: 1 }], sound: { 1: ['nothing'] } }),
    lengthInterval: () => ({
      args: [{ vector: [1, 0, 0], covariance: COVARIANCE, degreesOfFreedom: 4 }],
      infinite: ['degreesOfFreedom'],
    }),
    levelNoun: () => ({ args: ['weighing', 3] }),
    mapRepeated: () => ({
      args: [NEST, (value: unknown) => value, 'trial'],
      optional: [2],
      results: [0],
      sound: { 0: ANY_READING },
    }),
    repetitionOf: () => ({ args: [NEST, 'trial'], optional: [1], results: [0], sound: { 0: ANY_READING } }),
    worstOutcome: () => ({ args: [['meets', 'undecided']] }),
  },
};
