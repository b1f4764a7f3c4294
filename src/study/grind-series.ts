import { TintladderError } from '../core/index.js';
import type { Repeated } from '../evidence/index.js';
import type { GrindCurveFit, GrindingTimeSaved } from '../fits/index.js';
import type { SeriesFindings, SeriesKind, SeriesPoint } from './series-kind.js';
import { runsOf, stepsOf } from './series-steps.js';

/** On demand: the linear algebra behind the fits takes its time to load. */
const loadFits = () => import('../fits/index.js');

/** The curve through all runs of a package, and each run by itself. */
export interface GrindSeriesFit extends GrindCurveFit {
  readonly runs: readonly GrindCurveFit[];
}

const grinds = ({ runs }: GrindSeriesFit): Repeated<GrindCurveFit> => (runs.length === 1 ? runs[0] : { grind: runs });

/** Strength over grinding time. */
export const GRIND_SERIES = {
  id: 'grind',
  label: 'Grinding time',
  unit: () => 'min',
  allowsZero: false,
  describes: {
    reading: 'Grinding time, min',
    package: 'Grinding time at which the package is judged, min; the longest if left out',
  },
  against: 'reference',
  judgedAt: (times) => Math.max(...times),
  quantities: {
    'final-strength': { unit: '%', name: 'final strength of the grind' },
    'time-to-95': { unit: 'min', name: 'grinding time to 95 % of the final strength' },
    /** Time of the reference minus that of the package, both to 95 % of the highest strength that both reach. */
    'grinding-time-saved': { unit: 'min', name: 'grinding time saved' },
  },
  caption:
    'Strength over grinding time: every reading, and the curve fitted to those of a package. 100 % is the reference as it is judged.',
  async evaluate(points, reference) {
    const { fitGrindCurve, grindingTimeSaved } = await loadFits();
    const fitOf = (own: readonly SeriesPoint[], level: 'grind' | 'weighing') =>
      fitGrindCurve(stepsOf(own, level).map(({ at, value }) => ({ time: at, strength: value })));
    const runs = runsOf(points);
    const fit: GrindSeriesFit = {
      ...fitOf(points, runs.length > 1 ? 'grind' : 'weighing'),
      runs: runs.map((run) => fitOf(run, 'weighing')),
    };
    const { finalStrength, timeTo95 } = fit;
    const beyond = timeTo95.extrapolated ? ', beyond the last time read' : '';
    const method = `grind curve, ${fit.form} form`;
    const saved =
      reference &&
      (reference === 'itself' ? NOTHING_SAVED : timeSaved(() => grindingTimeSaved(grinds(reference), grinds(fit))));
    return {
      fit,
      curve: fit.curve.map(({ time, strength }) => ({ at: time, value: strength })),
      figures: [
        { quantity: 'final-strength', value: finalStrength.value, method },
        { quantity: 'time-to-95', value: timeTo95.value, method: `${method}${beyond}` },
        ...(saved ? [saved] : []),
      ],
      warnings: fit.warnings,
    };
  },
} as const satisfies SeriesKind<GrindSeriesFit>;

/** By definition: the others are compared with it. */
const NOTHING_SAVED = {
  quantity: 'grinding-time-saved',
  value: 0,
  exact: true,
  method: 'the reference, by definition',
} as const;

/** Nothing where one of the curves doesn't reach the strength. */
function timeSaved(compare: () => GrindingTimeSaved): SeriesFindings<GrindSeriesFit>['figures'][number] | undefined {
  try {
    const { saved, strength } = compare();
    const method = `grind curves, both to ${strength.toFixed(1)} %`;
    const { value, interval } = saved;
    return { quantity: 'grinding-time-saved', value, ...(interval && { interval }), method };
  } catch (error) {
    if (error instanceof TintladderError) return undefined;
    throw error;
  }
}
