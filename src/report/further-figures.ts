import type { Figure, StudyResult } from '../study/index.js';
import { comparisonRows } from './comparison-row.js';
import { intervalWords, valueWords } from './estimate-words.js';
import { withUnit } from './format.js';
import { namesOf } from './names.js';
import { quantityWords } from './words.js';

/** Headings of {@link furtherFigures}. */
export const FURTHER_HEADINGS = ['Quantity', 'Package', 'Paint', 'Value', '95 % interval', 'Found by'] as const;

/** Figures beside strength and rub-out, a row of texts each: storage, curves, let-down and what was supplied. */
export function furtherFigures(result: StudyResult): string[][] {
  const names = namesOf(result);
  const row = (item: string, paint: string, figure: Figure) => [
    quantityWords(figure.quantity),
    item,
    paint,
    withUnit(valueWords(figure.value, figure.unit), figure.unit),
    intervalWords(figure.interval, figure.unit, figure.value),
    figure.method,
  ];
  return [
    ...comparisonRows(result).flatMap((own) => own.further.map((figure) => row(own.package, own.paint, figure))),
    ...result.packages.flatMap(({ package: { id }, figures }) =>
      figures.map((figure) => row(names.package(id), 'all', figure)),
    ),
  ];
}
