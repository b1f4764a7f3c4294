import { scaleLinear } from 'd3-scale';
import { element, fragment, type Markup } from '../markup/element.js';
import type { Drawing } from './chart-image.js';
import { marker } from './series-style.js';
import { spreadLabels } from './spread-labels.js';
import { type StyleName, styleOf } from './style-name.js';
import { at, segment, text } from './svg-parts.js';
import { cutToWidth } from './text-width.js';

/** A difference of three coordinates. */
interface Difference {
  readonly dL: number;
  readonly da: number;
  readonly db: number;
}

/** The difference of one rubbed from its unrubbed area, and how it is drawn. */
export interface PlottedRubOut extends Difference {
  readonly label: string;
  readonly style: StyleName;
}

/** Rub-out differences of one paint. */
export interface RubOutPlot {
  readonly kind: 'rub-out-plane';
  readonly points: readonly PlottedRubOut[];
  /** Largest ΔE*ab that is accepted. */
  readonly limit?: number | undefined;
  /** Largest coordinate to be shown, shared by the panels of a group. */
  readonly reach: number;
}

const WIDTH = 360;
const SIDE = 186;
const LEFT = 38;
const TOP = 26;
const STRIP = LEFT + SIDE + 22;

/** The largest coordinate that has to be shown, with a margin around limit and points. */
export function rubOutReach(points: readonly Difference[], limit = 0): number {
  const parts = points.flatMap(({ dL, da, db }) => [dL, da, db].map((part) => 1.05 * Math.abs(part)));
  return Math.max(0.1, 1.1 * limit, ...parts);
}

/**
 * Δb* over Δa* with the limit as a circle, and ΔL* beside it on the same scale with the limit as two lines. A difference is
 * within the limit only if circle and lines hold together, since ΔE*ab takes all three.
 */
export function drawRubOutPlane({ points, limit, reach }: RubOutPlot): Drawing {
  const scale = scaleLinear().domain([-reach, reach]).nice();
  const x = scale.copy().range([LEFT, LEFT + SIDE]);
  const y = scale.copy().range([TOP + SIDE, TOP]);
  const ticks = scale.ticks(5);
  const format = scale.tickFormat(5, '+f');
  const label = (tick: number) => (tick === 0 ? '0' : format(tick));
  const bottom = TOP + SIDE;
  const stripRight = STRIP + 24;
  const content = fragment(
    element(
      'g',
      { class: 'axis' },
      ticks.map((tick) => [
        segment(x(tick), TOP, x(tick), bottom, tick === 0 ? 'base' : 'grid'),
        segment(LEFT, y(tick), LEFT + SIDE, y(tick), tick === 0 ? 'base' : 'grid'),
        segment(STRIP, y(tick), stripRight, y(tick), tick === 0 ? 'base' : 'grid'),
        text(x(tick), bottom + 14, label(tick), { 'text-anchor': 'middle' }),
        text(LEFT - 5, y(tick) + 3.5, label(tick), { 'text-anchor': 'end' }),
      ]),
      segment(STRIP, TOP, STRIP, bottom, 'base'),
      text(LEFT + SIDE / 2, bottom + 29, 'Δa*', { 'text-anchor': 'middle', class: 'axis-label' }),
      text(2, TOP - 10, 'Δb*', { class: 'axis-label' }),
      text(STRIP - 6, TOP - 10, 'ΔL*', { class: 'axis-label' }),
    ),
    limit !== undefined && [
      element('circle', { class: 'limit', cx: at(x(0)), cy: at(y(0)), r: at(x(limit) - x(0)) }),
      segment(STRIP, y(limit), stripRight, y(limit), 'limit'),
      segment(STRIP, y(-limit), stripRight, y(-limit), 'limit'),
    ],
    points.map(({ da, db, dL, style: name }) => {
      const style = styleOf(name);
      return [
        element('path', {
          class: `${style.className} leader`,
          d: `M${at(x(0))} ${at(y(0))}L${at(x(da))} ${at(y(db))}`,
        }),
        marker(x(da), y(db), style),
        marker(STRIP + 12, y(dL), style),
      ];
    }),
    drawNames(points, y, bottom),
  );
  return { width: WIDTH, height: bottom + 36, content };
}

function drawNames(points: readonly PlottedRubOut[], y: (value: number) => number, bottom: number): Markup {
  const heights = spreadLabels(
    points.map(({ dL }) => y(dL)),
    12,
    TOP,
    bottom,
  );
  return element(
    'g',
    {},
    points.map(({ label, dL, style }, i) => [
      element('path', {
        class: `${styleOf(style).className} leader`,
        d: `M${STRIP + 17} ${at(y(dL))}L${STRIP + 28} ${at(heights[i])}`,
      }),
      text(STRIP + 30, heights[i] + 3.5, cutToWidth(label, WIDTH - STRIP - 30)),
    ]),
  );
}
