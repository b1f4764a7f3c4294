import type { DosageLadderFit } from '../fits/index.js';
import type { SeriesKind } from './series-kind.js';
import { stepsOf } from './series-steps.js';

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
    /** The smallest dosage shown to lie within 2 % of the best. */
    'optimum-dosage': { unit: undefined, name: 'smallest dosage shown to suffice' },
  },
  caption:
    'Strength over dosage: every reading, and the curve fitted to those of a package. The stroke marks the smallest dosage shown to lie within 2 % of the best. 100 % is the reference as it is judged.',
  async evaluate(points) {
    const { fitDosageLadder } = await loadFits();
    const fit = fitDosageLadder(
      stepsOf(points, points.some(({ grind }) => grind) ? 'grind' : 'weighing').map(({ at, value }) => ({
        dosage: at,
        response: value,
      })),
    );
    const { sufficient, margin } = fit;
    return {
      fit,
      curve: fit.curve.map(({ dosage, response }) => ({ at: dosage, value: response })),
      ...(sufficient && { mark: { at: sufficient.dosage, value: sufficient.response } }),
      figures: sufficient
        ? [
            {
              quantity: 'optimum-dosage',
              value: sufficient.dosage,
              method: `smallest dosage shown within ${margin.toFixed(1)} of the best`,
            },
          ]
        : [],
      warnings: fit.warnings,
    };
  },
} as const satisfies SeriesKind<DosageLadderFit>;
