import { formatFixed } from '../../core/internal.js';
import { type Block, type ChartGroup, paragraph } from '../document/report-document.js';
import type { ComparisonRow } from '../subject/comparison-row.js';
import { kOverSPlot, plateCurves, reflectancePlot, valuesOf } from './plate-curves.js';
import { swatchChart } from './plate-swatches.js';
import type { SectionBuilder } from './section-builder.js';

/** More plates than these nobody looks through, and a page of thousands of curves is slow to open. */
const MOST_PLATES = 60;

/**
 * Swatches, reflectance and K/S of every package in every paint, on common scales; in a large study those that call for a
 * look first, as many as a reader can take in.
 */
export const platesSection: SectionBuilder = ({ rows, result: { method } }) => {
  const shown = rows.length > MOST_PLATES ? callingForALook(rows).slice(0, MOST_PLATES) : rows;
  const drawn = shown.map((row) => ({ row, ...plateCurves(row.cell, method.surface) }));
  const highest = Math.max(0.1, ...drawn.flatMap(({ reflectance }) => valuesOf(reflectance)));
  const strongest = Math.max(0.1, ...drawn.flatMap(({ ratio }) => valuesOf(ratio)));
  const plates = drawn.map(({ row, reflectance, ratio }, i): ChartGroup => {
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
        { chart: kOverSPlot(`${id}-ratio`, where, grid, ratio, strongest) },
      ],
    };
  });
  const left = rows.length - shown.length;
  const note = `Shown are ${formatFixed(shown.length, 0)} of ${formatFixed(rows.length, 0)}: what fails first, then what is undecided; the figures of all stand in the tables.`;
  const blocks: readonly Block[] = left > 0 ? [paragraph(note), ...plates] : plates;
  return blocks.length === 0 ? undefined : { id: 'plates', heading: 'Swatches and curves', blocks };
};

/** What fails, then what is undecided, then the rest, each in the order of the tables. */
function callingForALook(rows: readonly ComparisonRow[]): ComparisonRow[] {
  return (['fails', 'undecided', 'meets'] as const).flatMap((outcome) => rows.filter((row) => row.outcome === outcome));
}
