import type { StudyResult } from '../study/index.js';
import { assertStudyResult } from './subject/assert-study-result.js';
import { comparisonRows } from './subject/comparison-row.js';

/** A cell of the table: text, a number, or nothing. */
type CsvValue = string | number | undefined;

/**
 * The comparison as delimited text for a spreadsheet or a script: one row a package and paint, units in the header.
 *
 * Figures that only some rows have, such as supplied ones, get a column each; numbers have a decimal point and an ASCII
 * minus in every locale. Text that a spreadsheet would run as a formula is led by an apostrophe.
 *
 * @param result - as `evaluateStudy` gives it
 * @returns comma-separated values with CRLF line ends
 * @throws TintladderError `wrong-type` for what is no result of a study
 * @example
 * const values = Array.from({ length: 31 }, (_, i) => 0.2 + 0.01 * i);
 * const spectrum = createSpectrum({ start: 400, step: 10, values, scale: 'fraction' });
 * const study = parseStudy({
 *   title: 'An invented tint',
 *   viewing: { illuminant: 'D65', observer: '10' },
 *   surface: 'none',
 *   strengthCriterion: 'absorption-maximum',
 *   reference: 'R',
 *   packages: [{ id: 'R', name: 'Package in use' }],
 *   paints: [{ id: 'W', name: 'Wall paint' }],
 *   readings: [{ names: ['tint'], package: 'R', paint: 'W' }],
 *   criteria: [{ quantity: 'strength', lower: 95, unit: '%', reason: 'No weaker than today' }],
 *   rankBy: { quantity: 'strength', best: 'highest' },
 * });
 * const result = await evaluateStudy(study, [{ name: 'tint', spectrum, conditions: {}, fields: {} }]);
 * toCsv(result).split('\r\n')[1].slice(0, 19) // 'R,Package in use,W,'
 * @see RFC 4180
 */
export function toCsv(result: StudyResult): string {
  assertStudyResult(result);
  const rows = comparisonRows(result);
  const further = uniqueFigures(rows.flatMap((row) => row.further));
  const header = [
    'package id',
    'package',
    'paint id',
    'paint',
    'reference',
    'readings unrubbed',
    'readings rubbed',
    'strength (%)',
    'strength low (%)',
    'strength high (%)',
    'strength criterion',
    'residual (ΔE00)',
    'rub-out (ΔE*ab)',
    'rub-out low (ΔE*ab)',
    'rub-out high (ΔE*ab)',
    'rub-out dL*',
    'rub-out da*',
    'rub-out db*',
    'rub-out shows',
    'causes in question',
    'outcome',
    ...further.flatMap(({ quantity, unit }) => ['', ' low', ' high'].map((end) => `${quantity}${end} (${unit})`)),
  ];
  const lines = rows.map(({ cell, ...row }): CsvValue[] => [
    cell.package,
    row.package,
    cell.paint,
    row.paint,
    row.isReference ? 'yes' : 'no',
    cell.replicates.unrubbed,
    cell.replicates.rubbed,
    row.isReference ? 100 : row.strength?.value,
    row.strength?.interval?.low,
    row.strength?.interval?.high,
    cell.strength?.criterion,
    row.residual,
    row.rubOut?.value,
    row.rubOut?.interval?.low,
    row.rubOut?.interval?.high,
    cell.rubOut?.difference.dL,
    cell.rubOut?.difference.da,
    cell.rubOut?.difference.db,
    row.shown,
    row.causes,
    row.outcome,
    ...further.flatMap(({ quantity, unit }) => {
      const figure = row.further.find((own) => own.quantity === quantity && own.unit === unit);
      return [figure?.value, figure?.interval?.low, figure?.interval?.high];
    }),
  ]);
  return [header, ...lines].map((line) => `${line.map(csvField).join(',')}\r\n`).join('');
}

/** One field: numbers to seven figures, text quoted where it must be and never a formula. */
export function csvField(value: CsvValue): string {
  if (value === undefined) return '';
  // beyond seven figures there is nothing but noise; adding 0 turns −0 into 0
  if (typeof value === 'number') return String(Number(value.toPrecision(7)) + 0);
  const harmless = /^\s*[=+\-@\t\r＝＋－＠]/.test(value) ? `'${value}` : value;
  return /[",\r\n]|^\s|\s$/.test(harmless) ? `"${harmless.replaceAll('"', '""')}"` : harmless;
}

function uniqueFigures<T extends { readonly quantity: string; readonly unit: string }>(figures: readonly T[]): T[] {
  return [...new Map(figures.map((figure) => [JSON.stringify([figure.quantity, figure.unit]), figure])).values()];
}
