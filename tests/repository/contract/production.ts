import type { RoomContract } from './sound-calls.js';

export const PRODUCTION: RoomContract = {
  notYet: [],
  calls: {
    adjustBatch: () => ({
      args: [
        { percent: 95, interval: { low: 94, high: 96 } },
        {
          kind: 'paint',
          mass: 400,
          correction: 'colorant',
          added: { percent: 110, interval: { low: 108, high: 112 } },
          colorantShare: 5,
          largest: 50,
          scaleStep: 0.1,
          residual: { value: 0.2, limit: 0.5 },
        },
      ],
      options: [1],
    }),
  },
};
