import { formatCount } from '../../core/internal.js';
import { type ChartGroup, paragraph } from '../document/report-document.js';
import type { ComparisonRow } from '../subject/comparison-row.js';
import { plateCurves, ratioDomain, ratioPlot, reflectancePlot, valuesOf } from './plate-curves.js';
import { swatchChart } from './plate-swatches.js';
import type { SectionBuilder } from './section-builder.js';

/** More plates than these nobody looks through, and a page of thousands of curves is slow to open. */
const MOST_PLATES = 30;

/** Swatches, reflectance and the ratio of added K/S where something was found, on common scales; what fails comes first. */
export const platesSection: SectionBuilder = ({ rows, result: { method } }) => {
  const found = callingForALook(rows);
  const shown = found.slice(0, MOST_PLATES);
  if (shown.length === 0) return undefined;
  const drawn = shown.map((row) => ({
    row,
    ...plateCurves(row.cell, method.surface === 'none' ? undefined : method.surface),
  }));
  const highest = Math.max(0.1, ...drawn.flatMap(({ reflectance }) => valuesOf(reflectance)));
  const domain = ratioDomain(drawn.map(({ ratios }) => ratios));
  const plates = drawn.map(({ row, reflectance, ratios }, i): ChartGroup => {
    const id = `plate-${i + 1}`;
    const where = `${row.package} in ${row.paint}`;
    const grid = row.cell.spectra.grid;
    return {
      kind: 'charts',
      layout: 'plate',
      caption: `${row.package}${row.isReference ? ' (reference)' : ''} in ${row.paint}`,
      panels: [
        { chart: swatchChart(`${id}-swatches`, where, row.cell, method.viewing) },
        { chart: reflectancePlot(`${id}-reflectance`, where, grid, reflectance, highest) },
        ...(ratios.length > 0 ? [{ chart: ratioPlot(`${id}-ratio`, where, grid, ratios, domain) }] : []),
      ],
    };
  });
  const left = found.length - shown.length;
  const rest = left > 0 ? ` ${formatCount(left, 'more plate')} left out; their figures stand with each package.` : '';
  return {
    id: 'plates',
    heading: 'Swatches and curves of what was found',
    blocks: [
      paragraph(
        `The ratio compares the K/S that the colorant adds at each wavelength, 100 % being equal: a flat line is a difference of strength, a sloped or bent one a difference of shade.${rest}`,
      ),
      ...plates,
    ],
  };
};

/** What fails, then what is undecided, then other findings, each in the order of the tables. */
function callingForALook(rows: readonly ComparisonRow[]): ComparisonRow[] {
  const found = rows.filter(
    ({ outcome, cell: { rubOut, shadeChange } }) =>
      outcome !== 'meets' || shadeChange === true || (rubOut !== undefined && rubOut.causes.length > 0),
  );
  return (['fails', 'undecided', 'meets'] as const).flatMap((outcome) =>
    found.filter((row) => row.outcome === outcome),
  );
}
