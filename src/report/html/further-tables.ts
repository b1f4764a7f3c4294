import { quantityName, type StudyResult } from '../../study/index.js';
import { criterionSpreads, SPREAD_HEADINGS } from '../criterion-spread.js';
import { estimateWords, valueWords } from '../estimate-words.js';
import { withUnit } from '../format.js';
import { FURTHER_HEADINGS, furtherFigures } from '../further-figures.js';
import { namesOf } from '../names.js';
import type { Markup } from './element.js';
import { dataTable } from './table.js';

/** Strength by each criterion, %, grouped by paint. */
export function criterionSpreadTable(result: StudyResult): Markup | undefined {
  const spreads = criterionSpreads(result);
  if (spreads.length === 0) return undefined;
  const paints = [...new Set(spreads.map(({ paint }) => paint))];
  return dataTable({
    caption: 'Strength by each criterion, %. Where the criteria disagree, the trial differs in shade.',
    columns: [{ heading: 'Package' }, ...SPREAD_HEADINGS.map((heading) => ({ heading, numeric: true }))],
    groups: paints.map((heading) => ({
      heading,
      rows: spreads
        .filter(({ paint }) => paint === heading)
        .map(({ package: name, strengths }) => ({ cells: [name, ...strengths] })),
    })),
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
  const rows = packages.flatMap(({ package: { name }, letDown }) =>
    letDown
      ? [
          {
            cells: [
              name,
              letDown.letDownFactor.toFixed(3),
              valueWords(letDown.additiveShare, '%'),
              valueWords(letDown.grindHoursPerTonne, 'h'),
              valueWords(letDown.hoursSavedPerTonne, 'h'),
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
  const rows = result.series.flatMap(({ curves }) =>
    curves.map(({ package: item, paint, figures, reason }) => {
      const found = figures.map(
        (figure) => `${quantityName(figure.quantity)} ${withUnit(estimateWords(figure, figure.unit), figure.unit)}`,
      );
      const finding = reason === undefined ? found.join('; ') || 'no finding' : `no curve: ${reason}`;
      return { cells: [names.package(item), names.paint(paint), finding] };
    }),
  );
  if (rows.length === 0) return undefined;
  return dataTable({
    caption: 'What the fitted curves say, with 95 % intervals.',
    columns: [{ heading: 'Package' }, { heading: 'Paint' }, { heading: 'Finding' }],
    groups: [{ rows }],
  });
}
