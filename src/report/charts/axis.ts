import type { ScaleLinear } from 'd3-scale';
import { element, type Markup } from '../markup/element.js';
import { at, segment, text } from './svg-parts.js';

/** A scale with the words that go with it. */
export interface Axis {
  readonly scale: ScaleLinear<number, number>;
  /** Quantity and unit. */
  readonly label: string;
  /** About how many ticks. */
  readonly ticks: number;
}

/** Where the ticks of a scale stand, and what is written beside them. */
function ticksOf(scale: Axis['scale'], ticks: number) {
  const values = scale.ticks(ticks);
  return { positions: values.map((value) => scale(value)), labels: values.map(scale.tickFormat(ticks, 'f')) };
}

/** A horizontal axis at height `y`, with grid lines up to `top`. */
export function bottomAxis({ scale, label, ticks }: Axis, y: number, top: number): Markup {
  const [left, right] = scale.range();
  const { positions, labels } = ticksOf(scale, ticks);
  return element(
    'g',
    { class: 'axis' },
    gridLines(positions.map((x) => `M${at(x)} ${at(top)}V${at(y)}`)),
    positions.map((x, i) => text(x, y + 14, labels[i], { 'text-anchor': 'middle' })),
    segment(left, y, right, y, 'base'),
    text((left + right) / 2, y + 29, label, { 'text-anchor': 'middle', class: 'axis-label' }),
  );
}

/** A vertical axis at `x`, with grid lines as far as `right`; its label stands above it, where it reads without turning. */
export function leftAxis({ scale, label, ticks }: Axis, x: number, right: number): Markup {
  const [bottom, top] = scale.range();
  const { positions, labels } = ticksOf(scale, ticks);
  return element(
    'g',
    { class: 'axis' },
    gridLines(positions.map((y) => `M${at(x)} ${at(y)}H${at(right)}`)),
    positions.map((y, i) => text(x - 6, y + 3.5, labels[i], { 'text-anchor': 'end' })),
    segment(x, bottom, x, top, 'base'),
    text(at(2), top - 9, label, { class: 'axis-label' }),
  );
}

function gridLines(lines: readonly string[]): Markup {
  return element('path', { class: 'grid', d: lines.join('') });
}
