import { TintladderError } from '../core/index.js';
import type { Repeated } from '../evidence/index.js';
import type { Measurement } from '../exchange/index.js';
import type { Figure } from './figure.js';
import { judgeFigures, outcomeOf } from './judge-figures.js';
import { meanOfUnits, nestAssigned, topUnitsOf } from './nest-assigned.js';
import { freshTintsOf, type ReadingGroups, whitesOf } from './reading-groups.js';
import type { Cell } from './result.js';
import { selectReadings } from './select-readings.js';
import type { Series, SeriesCurve } from './series.js';
import type { SeriesKind, SeriesPoint } from './series-kind.js';
import { SERIES_FIELDS, SERIES_KINDS, type SeriesField, type SeriesFit } from './series-kinds.js';
import { groupedBy } from './series-steps.js';
import { spectralBasis } from './strength-basis.js';
import type { Study, StudyPackage } from './study.js';

/**
 * The series of a study: strength of every unit that was made anew over each quantity that was varied, for each package and paint that
 * was read at several values of it. Kinds of which the study holds nothing are left out.
 */
export async function evaluateSeries(study: Study, groups: ReadingGroups): Promise<Series[]> {
  const found = SERIES_FIELDS.map(async (field): Promise<Series> => {
    const kind: SeriesKind<SeriesFit> = SERIES_KINDS[field];
    const curves: SeriesCurve[] = [];
    for (const { id: paint } of study.paints) curves.push(...(await curvesIn(study, groups, paint, field)));
    return {
      kind: SERIES_KINDS[field].id,
      axis: { label: kind.label, unit: kind.unit(study) },
      response: { label: 'Strength', unit: '%' },
      caption: kind.caption,
      curves,
    };
  });
  return (await Promise.all(found)).filter(({ curves }) => curves.length > 0);
}

async function curvesIn(
  study: Study,
  groups: ReadingGroups,
  paint: string,
  field: SeriesField,
): Promise<SeriesCurve[]> {
  const kind: SeriesKind<SeriesFit> = SERIES_KINDS[field];
  const unit = kind.unit(study);
  const ladders = study.packages.flatMap((item) => {
    const points = pointsOf(study, groups, item, paint, field);
    return new Set(points.map(({ at }) => at)).size > 1 ? [{ item, points }] : [];
  });
  const own = ladders.find(({ item }) => item.id === study.reference);
  const reference = own && (await attempt(kind, unit, own.points, 'itself'));
  return Promise.all(
    ladders.map(async ({ item, points }) => {
      const found =
        reference && item.id === study.reference ? reference : await attempt(kind, unit, points, reference?.fit);
      return { package: item.id, paint, points, ...found };
    }),
  );
}

/** Everything of a curve but its place. */
type Found = Omit<SeriesCurve, 'package' | 'paint' | 'points'>;

async function attempt(
  kind: SeriesKind<SeriesFit>,
  unit: string,
  points: readonly SeriesPoint[],
  reference: SeriesFit | 'itself' | undefined,
): Promise<Found> {
  try {
    const { figures, ...found } = await kind.evaluate(points, reference);
    const withUnit = (figure: (typeof figures)[number]): Figure => ({
      ...figure,
      unit: kind.quantities[figure.quantity].unit ?? unit,
    });
    return { ...found, figures: figures.map(withUnit) };
  } catch (error) {
    if (error instanceof TintladderError) return { curve: [], figures: [], reason: error.message, warnings: [] };
    throw error;
  }
}

/** Strength of each unit that was made anew, in the order of the axis: below such a unit repeats only average. */
function pointsOf(study: Study, groups: ReadingGroups, item: StudyPackage, paint: string, field: SeriesField) {
  const kind: SeriesKind = SERIES_KINDS[field];
  const base = kind.against === 'itself' ? item : study.packages.find(({ id }) => id === study.reference);
  const own = freshTintsOf(groups, item.id, paint);
  const values = own.flatMap((reading) => reading[field] ?? kind.unstated ?? []);
  if (!base || own.every((reading) => reading[field] === undefined)) return [];
  const full = selectReadings(groups, base, paint).unrubbed;
  if (full === undefined) return [];
  const basis = spectralBasis(study);
  const meanOf = (nest: Repeated<Measurement>) => meanOfUnits(nest, basis);
  const white = whitesOf(groups, paint);
  const percentOf = basis.percents(meanOf(full), white && meanOf(white));
  return [...new Set(values)]
    .sort((a, b) => a - b)
    .flatMap((at): SeriesPoint[] => {
      const there = own.filter(({ [field]: value = kind.unstated }) => value === at);
      const units = groupedBy(there, ({ grind = '', weighing = '' }) => JSON.stringify([grind, weighing]));
      return [...units.values()].flatMap((unit) => {
        const nest = nestAssigned(unit);
        if (!nest) return [];
        const [{ grind, weighing }] = unit;
        return topUnitsOf(nest).map((part) => {
          return { at, value: percentOf(meanOf(part)), ...(grind && { grind }), ...(weighing && { weighing }) };
        });
      });
    });
}

/** A cell with the figures that its curves give, judged like the others. */
export function withSeriesFigures(study: Study, cell: Cell, series: readonly Series[]): Cell {
  const added = series.flatMap(({ curves }) =>
    curves
      .filter((curve) => curve.package === cell.package && curve.paint === cell.paint)
      .flatMap(({ figures }) => figures),
  );
  if (added.length === 0) return cell;
  const judgements = [...cell.judgements, ...judgeFigures(added, study, cell.package, cell.paint)];
  return { ...cell, figures: [...cell.figures, ...added], judgements, outcome: outcomeOf(judgements) };
}
