import { STRENGTH_CRITERIA } from '../../strength/index.js';
import type { Cell, StudyResult } from '../../study/index.js';
import { comparisonRows } from '../comparison-row.js';
import { estimateWords, valueWords } from '../estimate-words.js';
import { withUnit } from '../format.js';
import { FURTHER_HEADINGS, furtherFigures } from '../further-figures.js';
import { namesOf } from '../names.js';
import { CRITERION_WORDS } from '../words.js';
import type { Markup } from './element.js';
import { dataTable } from './table.js';

/** Strength by each criterion: where they disagree, the trial differs in shade and no single figure should be quoted. */
export function criterionSpreadTable(result: StudyResult): Markup | undefined {
  const rows = comparisonRows(result).filter(({ cell }) => cell.strengthByCriterion !== undefined);
  if (rows.length === 0) return undefined;
  const paints = [...new Set(rows.map(({ cell }) => cell.paint))];
  return dataTable({
    caption: 'Strength by each criterion, %. Where the criteria disagree, the trial differs in shade.',
    columns: [
      { heading: 'Package' },
      ...STRENGTH_CRITERIA.map((criterion) => ({ heading: CRITERION_WORDS[criterion], numeric: true })),
    ],
    groups: paints.map((id) => {
      const own = rows.filter(({ cell }) => cell.paint === id);
      const figures = (cell: Cell) =>
        STRENGTH_CRITERIA.map((criterion) => valueWords(cell.strengthByCriterion?.[criterion], '%'));
      return {
        heading: own[0].paint,
        rows: own.map(({ package: name, cell }) => ({ cells: [name, ...figures(cell)] })),
      };
    }),
  });
}

/** Figures beside strength and rub-out: storage, curves, let-down and what was supplied. */
export function furtherFiguresTable(result: StudyResult): Markup | undefined {
  const rows = furtherFigures(result).map((cells) => ({ cells }));
  if (rows.length === 0) return undefined;
  return dataTable({
    caption: 'Further figures.',
    columns: FURTHER_HEADINGS.map((heading, i) => ({ heading, numeric: i === 3 || i === 4 })),
    groups: [{ rows }],
  });
}

/** Let-down of the mill bases to the pigment share of the finished colorant. */
export function letDownTable({ packages }: StudyResult): Markup | undefined {
  const rows = packages.flatMap(({ package: { name }, dilution }) =>
    dilution
      ? [
          {
            cells: [
              name,
              dilution.letDownFactor.toFixed(3),
              valueWords(dilution.additiveShare, '%'),
              valueWords(dilution.grindHoursPerTonne, 'h'),
              valueWords(dilution.hoursSavedPerTonne, 'h'),
            ],
          },
        ]
      : [],
  );
  if (rows.length === 0) return undefined;
  return dataTable({
    caption: 'Let-down: mass of finished colorant from one mass of mill base, and what follows from it.',
    columns: [
      { heading: 'Package' },
      { heading: 'Let-down factor', numeric: true },
      { heading: 'Additive in the colorant, %', numeric: true },
      { heading: 'Grinding, h per tonne', numeric: true },
      { heading: 'Saved against the reference, h per tonne', numeric: true },
    ],
    groups: [{ rows }],
  });
}

/** What the fitted curves say, and why a series has none. */
export function curveTable(result: StudyResult): Markup | undefined {
  const names = namesOf(result);
  const grind = result.grindSeries.map(({ package: item, paint, fit, reason }) => [
    names.package(item),
    names.paint(paint),
    fit
      ? `final strength ${estimateWords(fit.finalStrength, '%')} %; 95 % of it after ${estimateWords(fit.timeTo95, 'min')} min`
      : `no curve: ${reason ?? 'not fitted'}`,
  ]);
  const dosage = result.dosageSeries.map(({ package: item, paint, fit, reason }) => [
    names.package(item),
    names.paint(paint),
    fit
      ? fit.optimum
        ? `plateau from ${withUnit(estimateWords(fit.optimum, result.dosageUnit), result.dosageUnit)}`
        : 'no plateau reached within the ladder'
      : `no curve: ${reason ?? 'not fitted'}`,
  ]);
  const rows = [...grind, ...dosage].map((cells) => ({ cells }));
  if (rows.length === 0) return undefined;
  return dataTable({
    caption: 'What the fitted curves say, with 95 % intervals.',
    columns: [{ heading: 'Package' }, { heading: 'Paint' }, { heading: 'Finding' }],
    groups: [{ rows }],
  });
}
