import type { RoomContract } from './sound-calls.js';

const NEST = { weighing: [1, { spot: [2, 3] }] };
const COVARIANCE = [0.01, 0, 0, 0, 0.01, 0, 0, 0, 0.01];

/** A reading is an object or a number: what it must be, the function that takes it says. */
const ANY_READING = ['number', 'object'] as const;

export const EVIDENCE: RoomContract = {
  notYet: [],
  calls: {
    chartControls: () => ({
      args: [
        [{ value: 1, label: 'a' }, { value: 2 }],
        { centre: 1, standardDeviation: 1, baseline: 2, weight: 0.25, width: 3, start: 1 },
      ],
      optional: [1],
      options: [1],
      free: ['label'],
    }),
    conformanceProbability: () => ({
      args: [
        { value: 1, standardDeviation: 1, degreesOfFreedom: 4 },
        { lower: 0, upper: 2 },
      ],
      infinite: ['degreesOfFreedom'],
    }),
    decide: () => ({
      args: [{ value: 1, standardDeviation: 1 }, { lower: 0 }, { rule: 'conformance-probability', risk: 0.05 }],
    }),
    decideAtOneRisk: () => ({
      args: [
        [{ name: 'A', figures: [{ value: 1, standardDeviation: 1, limit: { lower: 0 } }] }],
        { rule: 'conformance-probability', risk: 0.05 },
      ],
      free: ['name'],
    }),
    varianceComponents: () => ({ args: [[NEST]], results: [0], sound: { 0: ['list'] } }),
    nextMeasurement: () => ({
      args: [
        {
          components: { weighing: 2, spot: 1 },
          cost: { weighing: 30, spot: 1 },
          goal: { difference: 5 },
          sides: 2,
          rate: 0.05,
        },
      ],
      options: [0],
    }),
    compareSides: () => ({
      args: [
        [{ name: 'W', sides: { R: { weighing: [1, 2] }, A: { weighing: [3, 4] } }, reference: 'R' }],
        { rate: 0.05, resolution: 0.1, claim: 'mill-base', best: 'highest', population: 'package' },
      ],
      optional: [1],
      options: [1],
      free: ['name'],
    }),
    findOutliers: () => ({
      args: [
        [{ name: 'W', sides: { R: { weighing: [1, 2] }, A: { weighing: [3, 4] } }, reference: 'R' }],
        { rate: 0.02 },
      ],
      optional: [1],
      options: [1],
      free: ['name', 'reference'],
    }),
    precisionFromControls: () => ({
      args: [[1, 2, 4, 3, 2].map((value) => ({ value, date: '2026-01-01' })), { level: 'weighing', source: 'x' }],
      optional: [1],
      options: [1],
      free: ['source'],
    }),
    propagateParameters: () => ({
      args: [() => 1, { tile: { value: 1, standardDeviation: 1 } }, { sessions: 1, draws: 100, seed: 1 }],
      optional: [2],
      options: [2],
    }),
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
