import type { Markup } from '../markup/element.js';
import { type ChartText, chartImage, type Drawing } from './chart-image.js';
import { drawIntervalChart, type IntervalPlot } from './draw-interval-chart.js';
import { drawLineChart, type LinePlot } from './draw-line-chart.js';
import { drawRubOutPlane, type RubOutPlot } from './draw-rub-out-plane.js';
import { drawSwatches, type SwatchPlot } from './draw-swatches.js';

/** What a chart draws, as plain data. */
export type Plot = IntervalPlot | LinePlot | RubOutPlot | SwatchPlot;

/** A chart of a document: what it draws and what it says to someone who can't see it. */
export interface Chart extends ChartText {
  readonly plot: Plot;
}

/** A chart as part of a page that brings the style. */
export function drawChart({ plot, ...words }: Chart): Markup {
  return chartImage(words, drawingOf(plot));
}

function drawingOf(plot: Plot): Drawing {
  switch (plot.kind) {
    case 'intervals':
      return drawIntervalChart(plot);
    case 'lines':
      return drawLineChart(plot);
    case 'rub-out-plane':
      return drawRubOutPlane(plot);
    case 'swatches':
      return drawSwatches(plot);
  }
}
