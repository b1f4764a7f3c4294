import type { Repeated } from '../../../src/evidence/index.js';
import {
  assessRubOut,
  type ChartRubOutArea,
  createSpectrum,
  D65_10,
  filmReflectance,
  type Lab,
  type RubOutReading,
} from '../../../src/index.js';
import type { RoomContract } from './sound-calls.js';

const OPTIONS = { viewing: D65_10, surface: 'none', limit: 1, precision: { spot: 0.05 } } as const;
const area = (L: number): Repeated<RubOutReading> => ({
  spot: [-0.1, 0.1].map((z): Lab => ({ L: L + z, a: 0, b: -20 + z })),
});
const rubOut = (L: number) => assessRubOut(area(60), area(L), OPTIONS);
const flat = (R: number) => createSpectrum({ start: 400, step: 10, values: Array(31).fill(R), scale: 'fraction' });
const over = (substrate: number) => flat(filmReflectance({ absorption: 0.1, scattering: 1, thickness: 3, substrate }));
const chartArea = (): ChartRubOutArea => ({ overBlack: over(0.05), overWhite: over(0.8), thickness: 60 });

export const RUBOUT: RoomContract = {
  notYet: [],
  calls: {
    assessRubOut: () => ({ args: [area(60), area(59), OPTIONS], options: [2] }),
    assessChartRubOut: () => ({
      args: [
        chartArea(),
        chartArea(),
        { viewing: D65_10, surface: 'none', black: flat(0.05), white: flat(0.8), margin: 0.05 },
      ],
      options: [2],
      // Only createSpectrum makes a spectrum, so what takes one need not look into it again.
      free: [...Array(31).keys(), 'start', 'step'].map(String),
      sound: { 0: [] },
    }),
    compareAreas: () => ({ args: [{ drawn: area(60), rubbed: area(59) }, OPTIONS], options: [1] }),
    compareStorage: () => ({ args: [rubOut(59), rubOut(58)], results: [0, 1] }),
    compatibilityMatrix: () => ({
      args: [[{ colorant: 'blue', paint: 'lime', rubOut: rubOut(59) }], { strength: { lower: 95 } }],
      optional: [1],
      options: [1],
      results: [0],
    }),
  },
};
