import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { intervalChart } from '../../src/report/figures/interval-chart.js';
import { lineChart } from '../../src/report/figures/line-chart.js';
import { rubOutPlane } from '../../src/report/figures/rub-out-plane.js';
import { seriesStyles, styleOf } from '../../src/report/figures/series-style.js';
import { spreadLabels } from '../../src/report/figures/spread-labels.js';

const SEED = 20_240_613;
const STYLE = styleOf(new Map(), 'x');
const TEXT = { id: 'f', title: 'A title', description: 'What it shows.' };

/** The linear scale that the tick labels of a drawing state, by its first and last tick. */
function scaleOfTicks(markup: string, tick: RegExp): (value: number) => number {
  const ticks = [...markup.matchAll(tick)].map(([, position, label]) => [
    Number(position),
    Number(label.replace('\u2212', '-')),
  ]);
  const [[p0, v0]] = ticks;
  const [p1, v1] = ticks[ticks.length - 1];
  return (value) => p0 + ((value - v0) / (v1 - v0)) * (p1 - p0);
}

const BOTTOM_TICK = /<text x="([\d.]+)" y="[\d.]+" text-anchor="middle">([+\u2212\d.]+)<\/text>/g;
const LEFT_TICK = /<text x="34" y="([\d.]+)" text-anchor="end">([+\u2212\d.]+)<\/text>/g;
const MARK = /class="series[^"]* mark[^"]*" transform="translate\(([\d.-]+) ([\d.-]+)\)"/g;

const marksOf = (markup: string) => [...markup.matchAll(MARK)].map(([, x, y]) => [Number(x), Number(y)]);

describe('interval chart', () => {
  const { markup } = intervalChart({
    ...TEXT,
    axisLabel: 'Strength, %',
    rows: [
      { label: 'A', value: 104.2, interval: { low: 102.5, high: 105.9 }, printed: '104.2', style: STYLE },
      { label: 'B', value: 97.3, printed: '97.3', style: STYLE },
    ],
    lines: [{ value: 100, label: 'reference', kind: 'reference' }],
    domain: [95, 108],
  });
  const x = scaleOfTicks(markup, BOTTOM_TICK);

  test('puts marks, whisker ends and line where the axis says', () => {
    const marks = marksOf(markup);
    expect(marks[0][0]).toBeCloseTo(x(104.2), 0);
    expect(marks[1][0]).toBeCloseTo(x(97.3), 0);
    const [, low, high] = markup.match(/whisker" d="M([\d.]+) [\d.]+H([\d.]+)/)?.map(Number) ?? [];
    expect(low).toBeCloseTo(x(102.5), 0);
    expect(high).toBeCloseTo(x(105.9), 0);
    const [, line] = markup.match(/<line x1="([\d.]+)"[^>]*class="reference"/) ?? [];
    expect(Number(line)).toBeCloseTo(x(100), 0);
  });

  test('draws no whisker where there is no interval', () => {
    expect(markup.match(/whisker/g)).toHaveLength(1);
  });

  test('is one image with title and description', () => {
    expect(markup).toMatch(/^<svg [^>]*role="img" aria-labelledby="f-title f-description">/);
    expect(markup).toContain('<title id="f-title">A title</title><desc id="f-description">What it shows.</desc>');
  });
});

describe('line chart', () => {
  const { markup } = lineChart({
    ...TEXT,
    xLabel: 'Time, min',
    yLabel: 'Strength, %',
    xDomain: [0, 120],
    yDomain: [40, 110],
    series: [
      {
        label: 'A',
        style: STYLE,
        curve: [
          [10, 50],
          [60, 90],
        ],
        points: [
          [10, 52],
          [60, 88],
        ],
      },
    ],
  });
  const x = scaleOfTicks(markup, BOTTOM_TICK);
  const y = scaleOfTicks(markup, LEFT_TICK);
  // the text of a tick stands 3.5 below its line
  const height = (value: number) => y(value) - 3.5;

  test('puts readings and curve where the axes say', () => {
    const marks = marksOf(markup);
    expect(marks[0][0]).toBeCloseTo(x(10), 0);
    expect(marks[0][1]).toBeCloseTo(height(52), 0);
    const [, x0, y0] = markup.match(/curve" d="M([\d.]+),([\d.]+)L/)?.map(Number) ?? [];
    expect(x0).toBeCloseTo(x(10), 0);
    expect(y0).toBeCloseTo(height(50), 0);
  });
});

describe('rub-out plane', () => {
  const { markup } = rubOutPlane({
    ...TEXT,
    points: [{ label: 'A', dL: -0.6, da: 0.8, db: -0.3, style: STYLE }],
    limit: 1,
    reach: 1.4,
  });
  const x = scaleOfTicks(markup, BOTTOM_TICK);

  test('draws the limit as a circle on the scale of the axes', () => {
    const [, cx, , r] =
      markup.match(/<circle class="limit" cx="([\d.]+)" cy="([\d.]+)" r="([\d.]+)"/)?.map(Number) ?? [];
    expect(cx).toBeCloseTo(x(0), 0);
    expect(r).toBeCloseTo(x(1) - x(0), 0);
  });

  test('puts Δa* to the right, Δb* up, and ΔL* on the same scale beside them', () => {
    const [[px, py], [, lightness]] = marksOf(markup);
    const [, cy] = markup.match(/<circle class="limit" cx="[\d.]+" cy="([\d.]+)"/)?.map(Number) ?? [];
    const unit = x(1) - x(0);
    expect(px).toBeCloseTo(x(0.8), 0);
    expect(py).toBeCloseTo(cy + 0.3 * unit, 0);
    expect(lightness).toBeCloseTo(cy + 0.6 * unit, 0);
  });
});

test('every package of many is drawn differently, without its colour', () => {
  const packages = Array.from({ length: 14 }, (_, i) => ({ package: { id: `P${i}` }, isReference: i === 0 }));
  const styles = [...seriesStyles(packages).values()];
  const looks = styles.map(({ shape, filled, dash }) => [shape.draw.toString(), filled, dash].join());
  expect(new Set(looks).size).toBe(14);
});

test(`labels keep apart, in order, and inside where they fit (seed ${SEED})`, () => {
  fc.assert(
    fc.property(
      fc.array(fc.double({ min: 0, max: 200, noNaN: true }), { minLength: 1, maxLength: 12 }),
      (positions) => {
        const placed = spreadLabels(positions, 12, 0, 200);
        const order = positions.map((_, i) => i).sort((i, j) => positions[i] - positions[j] || i - j);
        for (let k = 1; k < order.length; k++) {
          expect(placed[order[k]] - placed[order[k - 1]]).toBeGreaterThanOrEqual(12 - 1e-9);
        }
        for (const place of placed) {
          expect(place).toBeGreaterThanOrEqual(-1e-9);
          expect(place).toBeLessThanOrEqual(200 + 1e-9);
        }
      },
    ),
    { seed: SEED },
  );
});
