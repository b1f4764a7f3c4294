import { type Lab, srgbSwatch, type Viewing } from '../../colorimetry/index.js';
import { internalReflectance, kOverS, type Surface } from '../../kubelka-munk/index.js';
import type { Cell, StudyResult } from '../../study/index.js';
import { type ComparisonRow, comparisonRows } from '../comparison-row.js';
import { cellCurves, type TintCurves } from '../figures/cell-curves.js';
import { type Swatch, swatchPlate } from '../figures/swatches.js';
import { formatFixed } from '../format.js';
import { element, type Markup } from './element.js';

/** More plates than these nobody looks through, and a page of thousands of curves is slow to open. */
const MOST_PLATES = 60;

/**
 * Swatches, reflectance and K/S of every package in every paint, on common scales; in a large study those that call for a
 * look first, as many as a reader can take in.
 */
export function plates(result: StudyResult): Markup[] {
  const { viewing, surface } = result.method;
  const rows = comparisonRows(result);
  const shown = rows.length > MOST_PLATES ? callingForALook(rows).slice(0, MOST_PLATES) : rows;
  const drawn = shown.map((row) => ({ row, ...curvesOf(row.cell, surface) }));
  const highest = Math.max(0.1, ...drawn.flatMap(({ reflectance }) => valuesOf(reflectance)));
  const strongest = Math.max(0.1, ...drawn.flatMap(({ ratio }) => valuesOf(ratio)));
  const left = rows.length - shown.length;
  const note = `Shown are ${shown.length} of ${rows.length}: what fails first, then what is undecided; the figures of all stand in the tables.`;
  const figures = drawn.map(({ row, reflectance, ratio }, i) => {
    const id = `plate-${i + 1}`;
    const where = `${row.package} in ${row.paint}`;
    const grid = row.cell.spectra.grid;
    return element(
      'figure',
      { class: 'plate' },
      element('figcaption', {}, captionOf(row)),
      element(
        'div',
        { class: 'plate-grid' },
        swatches(`${id}-swatches`, where, row.cell, viewing),
        cellCurves({
          id: `${id}-reflectance`,
          title: `Reflectance of ${where}`,
          description: describeCurves(reflectance, grid, 100, '%'),
          yLabel: 'Reflectance, %',
          yMax: 100 * highest,
          grid,
          curves: reflectance.map(([name, values]) => [name, values.map((value) => value && 100 * value)]),
        }),
        cellCurves({
          id: `${id}-ratio`,
          title: `K/S of ${where}`,
          description: describeCurves(ratio, grid, 1, ''),
          yLabel: 'K/S',
          yMax: strongest,
          grid,
          curves: ratio,
        }),
      ),
    );
  });
  return left > 0 ? [element('p', {}, note), ...figures] : figures;
}

/** What fails, then what is undecided, then the rest, each in the order of the tables. */
function callingForALook(rows: readonly ComparisonRow[]): ComparisonRow[] {
  return (['fails', 'undecided', 'meets'] as const).flatMap((outcome) => rows.filter((row) => row.outcome === outcome));
}

function captionOf({ package: name, paint, isReference }: ComparisonRow): string {
  return `${name}${isReference ? ' (reference)' : ''} in ${paint}`;
}

/** The curves of a cell; the reference package is its own reference and is drawn once. */
function curvesOf({ spectra, strength }: Cell, surface: Surface | undefined) {
  const reflectance: TintCurves = [
    ...(strength ? [['reference', spectra.reference] as const] : []),
    ['unrubbed', spectra.unrubbed],
    ...(spectra.rubbed ? [['rubbed', spectra.rubbed] as const] : []),
  ];
  const ratio: TintCurves = reflectance.map(([name, values]) => [
    name,
    values.map((value) => ratioOf(value ?? 0, surface)),
  ]);
  return { reflectance, ratio };
}

/** K/S after the study's surface correction; undefined where a value has none, which is left out of the curve. */
function ratioOf(measured: number, surface: Surface | undefined): number | undefined {
  if (surface && !(measured > (surface.specular === 'included' ? surface.external : 0))) return undefined;
  const internal = surface ? internalReflectance(measured, surface) : measured;
  return internal > 0 && internal <= 1 ? kOverS(internal) : undefined;
}

function valuesOf(curves: TintCurves): number[] {
  return curves.flatMap(([, values]) => values.filter((value) => value !== undefined));
}

function describeCurves(
  curves: TintCurves,
  { start, step }: { start: number; step: number },
  factor: number,
  unit: string,
): string {
  return curves
    .map(([name, values]) => {
      const numbers = values.filter((value) => value !== undefined);
      if (numbers.length === 0) return `${name}: no value`;
      const [low, high] = [Math.min(...numbers), Math.max(...numbers)];
      const at = (value: number) => `${formatFixed(start + values.indexOf(value) * step, 0)} nm`;
      const figure = (value: number) => `${formatFixed(factor * value, unit === '%' ? 1 : 3)}${unit && ` ${unit}`}`;
      return `${name}: lowest ${figure(low)} at ${at(low)}, highest ${figure(high)} at ${at(high)}`;
    })
    .join('; ');
}

function swatches(id: string, where: string, { colours, strength }: Cell, viewing: Viewing): Markup {
  const compared: [string, Lab | undefined][] = [
    ['reference', colours.reference],
    ['trial', colours.unrubbed],
    ['matched', colours.matched],
  ];
  const rubbed: [string, Lab | undefined][] = [
    ['unrubbed', colours.unrubbed],
    ['rubbed', colours.rubbed],
  ];
  const rows = [...(colours.rubbed ? [rubbed] : []), ...(strength ? [compared] : [])];
  const shown = rows.length > 0 ? rows : [[['unrubbed', colours.unrubbed]] satisfies [string, Lab][]];
  const described = shown.flat().flatMap(([name, lab]) => (lab ? [`${name} ${labWords(lab)}`] : []));
  return swatchPlate({
    id,
    title: `Swatches of ${where}`,
    description: `${[...new Set(described)].join('; ')}.`,
    rows: shown.map((row) =>
      row.flatMap(([label, lab]): Swatch[] => (lab ? [{ label, colour: srgbSwatch(lab, viewing).hex }] : [])),
    ),
  });
}

function labWords({ L, a, b }: Lab): string {
  return `L* ${formatFixed(L, 2)}, a* ${formatFixed(a, 2)}, b* ${formatFixed(b, 2)}`;
}
