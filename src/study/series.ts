import { meanSpectrum } from '../colorimetry/index.js';
import { TintladderError } from '../core/index.js';
import { relativeTintingStrength, type StrengthOptions } from '../strength/index.js';
import type { AssignedReading } from './assign-readings.js';
import { computedFigure } from './cell-figures.js';
import { judgeFigures, outcomeOf } from './judge-figures.js';
import { freshTintsOf, type ReadingGroups, whitesOf } from './reading-groups.js';
import type { Cell, DosageSeries, Figure, GrindSeries } from './result.js';
import { selectReadings } from './select-readings.js';
import type { Study } from './study.js';

/** Strength over grinding time and over dosage, with their fits. */
export interface Series {
  readonly grind: readonly GrindSeries[];
  readonly dosage: readonly DosageSeries[];
}

/**
 * The curves of a study: strength of every single reading against the mean of the judged reference, over grinding time
 * and over dosage, for each package and paint that was read at several of them.
 */
export async function evaluateSeries(study: Study, groups: ReadingGroups): Promise<Series> {
  const grind: GrindSeries[] = [];
  const dosage: DosageSeries[] = [];
  for (const { id: paint } of study.paints) {
    const ground: GrindSeries[] = [];
    for (const { id } of study.packages) {
      const own = freshTintsOf(groups, id, paint);
      const path = { package: id, paint };
      if (severalOf(own, 'grindTime')) {
        const points = strengthOver(study, groups, paint, own, 'grindTime').map(([time, strength]) => ({
          time,
          strength,
        }));
        ground.push({ ...path, points, ...(await attempt(async () => (await loadFits()).fitGrindCurve(points))) });
      }
      if (severalOf(own, 'dosage')) {
        const points = strengthOver(study, groups, paint, own, 'dosage').map(([at, response]) => ({
          dosage: at,
          response,
        }));
        dosage.push({ ...path, points, ...(await attempt(async () => (await loadFits()).fitDosageLadder(points))) });
      }
    }
    grind.push(...(await withTimeSaved(ground, study.reference)));
  }
  return { grind, dosage };
}

async function withTimeSaved(ground: readonly GrindSeries[], reference: string): Promise<GrindSeries[]> {
  const slow = ground.find((series) => series.package === reference)?.fit;
  return Promise.all(
    ground.map(async (series) => {
      const { fit } = series;
      if (!slow || !fit || fit === slow) return series;
      const { fit: timeSaved } = await attempt(async () => (await loadFits()).grindingTimeSaved(slow, fit));
      return timeSaved ? { ...series, timeSaved } : series;
    }),
  );
}

/** On demand: the linear algebra behind the fits takes half a second to load. */
const loadFits = () => import('../fits/index.js');

async function attempt<Fit>(makeFit: () => Promise<Fit>): Promise<{ fit?: Fit; reason?: string }> {
  try {
    return { fit: await makeFit() };
  } catch (error) {
    if (error instanceof TintladderError) return { reason: error.message };
    throw error;
  }
}

function severalOf(readings: readonly AssignedReading[], axis: 'grindTime' | 'dosage'): boolean {
  return new Set(readings.flatMap((reading) => reading[axis] ?? [])).size > 1;
}

/** Strength of each reading against the mean of the judged reference, in the order of `axis`. */
function strengthOver(
  study: Study,
  groups: ReadingGroups,
  paint: string,
  own: readonly AssignedReading[],
  axis: 'grindTime' | 'dosage',
): (readonly [at: number, strength: number])[] {
  const reference = study.packages.find(({ id }) => id === study.reference);
  if (!reference) return [];
  const white = whitesOf(groups, paint);
  const options: StrengthOptions = {
    criterion: study.strengthCriterion,
    viewing: study.viewing,
    surface: study.surface,
    white: white.length > 0 ? white : undefined,
  };
  const against = meanSpectrum(selectReadings(groups, reference, paint).unrubbed);
  return own
    .flatMap(({ spectrum, [axis]: at }) =>
      at === undefined ? [] : [[at, relativeTintingStrength(against, spectrum, options).percent] as const],
    )
    .sort(([a], [b]) => a - b);
}

/** A cell with the figures that its curves give, judged like the others. */
export function withSeriesFigures(study: Study, cell: Cell, { grind, dosage }: Series): Cell {
  const own = (series: { readonly package: string; readonly paint: string }) =>
    series.package === cell.package && series.paint === cell.paint;
  const added = [...grindFigures(grind.find(own)), ...dosageFigures(dosage.find(own), study)];
  if (added.length === 0) return cell;
  const judgements = [...cell.judgements, ...judgeFigures(added, study.criteria, cell.paint)];
  return { ...cell, figures: [...cell.figures, ...added], judgements, outcome: outcomeOf(judgements) };
}

function grindFigures(series: GrindSeries | undefined): Figure[] {
  const { fit, timeSaved } = series ?? {};
  const figures: Figure[] = [];
  if (fit) {
    const { value, interval, extrapolated } = fit.timeTo95;
    const method = `grind curve, ${fit.form} form${extrapolated ? ', beyond the last time read' : ''}`;
    figures.push(computedFigure('time-to-95', { value, interval, method }));
  }
  if (timeSaved) {
    const { value, interval } = timeSaved.saved;
    const method = `grind curves, both to ${timeSaved.strength.toFixed(1)} %`;
    figures.push(computedFigure('grinding-time-saved', { value, interval, method }));
  }
  return figures;
}

function dosageFigures(series: DosageSeries | undefined, { dosageUnit = '% on pigment' }: Study): Figure[] {
  const optimum = series?.fit?.optimum;
  if (!optimum) return [];
  const { value, interval } = optimum;
  return [{ quantity: 'optimum-dosage', unit: dosageUnit, value, interval, method: 'quadratic plateau' }];
}
