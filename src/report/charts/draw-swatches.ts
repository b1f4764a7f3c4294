import { element, fragment } from '../markup/element.js';
import type { Drawing } from './chart-image.js';
import { text } from './svg-parts.js';

/** A colour patch with its name. */
export interface Swatch {
  readonly label: string;
  /** CSS colour. */
  readonly colour: string;
}

/** Rows of patches; those of a row touch, so that a difference shows at their common edge. */
export interface SwatchPlot {
  readonly kind: 'swatches';
  readonly rows: readonly (readonly Swatch[])[];
}

const WIDTH = 240;
const PATCH = 62;
const ROW = PATCH + 26;

/** Swatches as a drawing, since printers leave out the backgrounds of a page but not the fills of a drawing. */
export function drawSwatches({ rows }: SwatchPlot): Drawing {
  const content = fragment(
    rows.map((row, r) => {
      const width = WIDTH / row.length;
      const top = 4 + ROW * r;
      return row.map(({ label, colour }, i) => [
        // a hair wider than its share, so that no line of paper shows between two patches
        element('rect', {
          x: i * width,
          y: top,
          width: width + (i < row.length - 1 ? 0.5 : 0),
          height: PATCH,
          fill: colour,
        }),
        text((i + 0.5) * width, top + PATCH + 14, label, { 'text-anchor': 'middle' }),
      ]);
    }),
  );
  return { width: WIDTH, height: 6 + ROW * rows.length, content };
}
