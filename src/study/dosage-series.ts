import type { DosageLadderFit } from '../fits/index.js';
import type { SeriesKind } from './series-kind.js';

/** On demand: the linear algebra behind the fits takes its time to load. */
const loadFits = () => import('../fits/index.js');

/** Strength over dosage. */
export const DOSAGE_SERIES = {
  id: 'dosage',
  label: 'Dosage',
  unit: ({ dosageUnit = '% on pigment' }) => dosageUnit,
  allowsZero: true,
  describes: { reading: 'Dosage of the package', package: 'Dosage at which the package is judged' },
  against: 'reference',
  judgedAt: (dosages) => (dosages.length === 1 ? dosages[0] : undefined),
  quantities: {
    /** Dosage at which more additive brings no more strength. */
    'optimum-dosage': { unit: undefined, name: 'dosage at the start of the plateau' },
  },
  caption:
    'Strength over dosage: every reading, and the curve fitted to those of a package. The stroke marks where the plateau begins. 100 % is the reference as it is judged.',
  async evaluate(points) {
    const { fitDosageLadder } = await loadFits();
    const fit = fitDosageLadder(points.map(({ at, value }) => ({ dosage: at, response: value })));
    const { optimum, plateau } = fit;
    return {
      fit,
      curve: fit.curve.map(({ dosage, response }) => ({ at: dosage, value: response })),
      mark: optimum && plateau && { at: optimum.value, value: plateau.value },
      figures: optimum
        ? [
            {
              quantity: 'optimum-dosage',
              value: optimum.value,
              interval: optimum.interval,
              method: 'quadratic plateau',
            },
          ]
        : [],
      warnings: fit.warnings,
    };
  },
} as const satisfies SeriesKind<DosageLadderFit>;
