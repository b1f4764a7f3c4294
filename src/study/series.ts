import type { Spectrum } from '../colorimetry/index.js';
import { TintladderError } from '../errors.js';
import type { DosageLadderFit, GrindCurveFit } from '../strength/fits/index.js';
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
    for (const { id } of study.packages) {
      const own = freshTintsOf(groups, id, paint);
      const strengths = () => strengthEach(study, groups, paint, own);
      if (severalOf(own, 'grindTime')) {
        const points = pointsOver(own, 'grindTime', strengths()).map(([time, strength]) => ({ time, strength }));
        grind.push({
          package: id,
          paint,
          points,
          ...(await attempt(async () => (await loadFits()).fitGrindCurve(points))),
        });
      }
      if (severalOf(own, 'dosage')) {
        const points = pointsOver(own, 'dosage', strengths()).map(([x, response]) => ({ dosage: x, response }));
        dosage.push({
          package: id,
          paint,
          points,
          ...(await attempt(async () => (await loadFits()).fitDosageLadder(points))),
        });
      }
    }
  }
  return { grind, dosage };
}

/** On demand: the linear algebra behind the fits takes half a second to load. */
const loadFits = () => import('../strength/fits/index.js');

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

function strengthEach(study: Study, groups: ReadingGroups, paint: string, own: readonly AssignedReading[]): number[] {
  const reference = study.packages.find(({ id }) => id === study.reference);
  if (!reference) return [];
  const white = whitesOf(groups, paint);
  const options: StrengthOptions = {
    criterion: study.strengthCriterion,
    viewing: study.viewing,
    surface: study.surface,
    white: white.length > 0 ? white : undefined,
  };
  const against: readonly Spectrum[] = selectReadings(groups, reference, paint).unrubbed;
  return own.map(({ spectrum }) => relativeTintingStrength(against, spectrum, options).percent);
}

function pointsOver(
  own: readonly AssignedReading[],
  axis: 'grindTime' | 'dosage',
  strengths: readonly number[],
): (readonly [number, number])[] {
  return own
    .flatMap((reading, i) => {
      const at = reading[axis];
      return at === undefined ? [] : [[at, strengths[i]] as const];
    })
    .sort(([a], [b]) => a - b);
}

/** A cell with the figures that its curves give, judged like the others. */
export function withSeriesFigures(study: Study, cell: Cell, { grind, dosage }: Series): Cell {
  const ownGrind = grind.find((series) => series.package === cell.package && series.paint === cell.paint)?.fit;
  const ownDosage = dosage.find((series) => series.package === cell.package && series.paint === cell.paint)?.fit;
  const added = [...grindFigures(ownGrind), ...dosageFigures(ownDosage, study)];
  if (added.length === 0) return cell;
  const judgements = [...cell.judgements, ...judgeFigures(added, study.criteria, cell.paint)];
  return { ...cell, figures: [...cell.figures, ...added], judgements, outcome: outcomeOf(judgements) };
}

function grindFigures(fit: GrindCurveFit | undefined): Figure[] {
  if (!fit) return [];
  return [computedFigure('time-to-95', { ...fit.timeTo95, method: `grind curve, ${fit.form} form` })];
}

function dosageFigures(fit: DosageLadderFit | undefined, study: Study): Figure[] {
  if (fit?.optimum === undefined) return [];
  const figure = computedFigure('optimum-dosage', { ...fit.optimum, method: 'start of the plateau' });
  return [{ ...figure, unit: study.dosageUnit ?? '% on pigment' }];
}
