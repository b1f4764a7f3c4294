import fc from 'fast-check';
import { XMLValidator } from 'fast-xml-parser';
import { describe, expect, test } from 'vitest';
import { intervalChart } from '../../src/report/figures/interval-chart.js';
import { lineChart } from '../../src/report/figures/line-chart.js';
import { rubOutPlane } from '../../src/report/figures/rub-out-plane.js';
import { seriesStyles, styleAt } from '../../src/report/figures/series-style.js';
import { spreadLabels } from '../../src/report/figures/spread-labels.js';
import { cutToWidth, textWidth, wrapBold } from '../../src/report/figures/text-width.js';
import * as words from '../../src/report/words.js';

const SEED = 20_240_613;
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

const LINES = { ...TEXT, xLabel: 'x', yLabel: 'y' };
const ROWS = { ...TEXT, axisLabel: 'Strength, %' };

describe('interval chart', () => {
  const markup = intervalChart({
    ...TEXT,
    axisLabel: 'Strength, %',
    rows: [
      { label: 'A', value: 104.2, interval: { low: 102.5, high: 105.9 } },
      { label: 'B', value: 97.3 },
    ],
    lines: [{ value: 100, label: 'reference', kind: 'reference' }],
    range: [95, 108],
    decimals: 1,
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
    expect(markup.match(/whisker" d/g)).toHaveLength(1);
  });

  test('prints the figures to the decimals asked for', () => {
    expect(markup).toContain('>104.2</text>');
    expect(markup).toContain('>97.3</text>');
  });

  test('is one image with title and description', () => {
    expect(markup).toMatch(/^<svg [^>]*role="img" aria-labelledby="f-title f-description">/);
    expect(markup).toContain('<title id="f-title">A title</title><desc id="f-description">What it shows.</desc>');
  });
});

describe('line chart', () => {
  const markup = lineChart({
    ...TEXT,
    xLabel: 'Time, min',
    yLabel: 'Strength, %',
    xRange: [0, 120],
    yRange: [40, 110],
    series: [
      {
        label: 'A',
        curve: [
          [10, 50],
          [60, 90],
        ],
        points: [
          [10, 52],
          [60, 88],
        ],
        intervals: [{ x: 60, low: 84, high: 92 }],
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

  test('puts an interval upright at its point', () => {
    const [, at, low, high] = markup.match(/whisker" d="M([\d.]+) ([\d.]+)V([\d.]+)/)?.map(Number) ?? [];
    expect(at).toBeCloseTo(x(60), 0);
    expect(low).toBeCloseTo(height(84), 0);
    expect(high).toBeCloseTo(height(92), 0);
  });

  test('shows more than the range asked for where values lie outside', () => {
    const wide = lineChart({ ...LINES, yRange: [0, 1], series: [{ label: 'A', points: [[1, 7.2]] }] });
    const [[, mark]] = marksOf(wide);
    expect(mark).toBeGreaterThanOrEqual(26);
    expect(mark).toBeCloseTo(scaleOfTicks(wide, LEFT_TICK)(7.2) - 3.5, 0);
  });
});

describe('rub-out plane', () => {
  const markup = rubOutPlane({
    ...TEXT,
    points: [{ label: 'A', dL: -0.6, da: 0.8, db: -0.3 }],
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

describe('a figure by itself', () => {
  const FIGURES = {
    line: (words: Partial<typeof TEXT>) =>
      lineChart({
        ...LINES,
        ...words,
        series: [
          { label: 'A', points: [[1, 2]] },
          { label: 'B', points: [[2, 3]] },
        ],
      }),
    interval: (words: Partial<typeof TEXT>) =>
      intervalChart({
        ...ROWS,
        ...words,
        rows: [
          { label: 'A', value: 1 },
          { label: 'B', value: 2 },
        ],
      }),
    plane: (words: Partial<typeof TEXT>) =>
      rubOutPlane({
        ...TEXT,
        ...words,
        points: [
          { label: 'A', dL: 1, da: 0, db: 0 },
          { label: 'B', dL: 0, da: 1, db: 0 },
        ],
        limit: 1,
      }),
  };

  describe.each(Object.entries(FIGURES))('%s', (_, draw) => {
    const svg = draw({});
    const style = svg.match(/<style>(.*?)<\/style>/)?.[1] ?? '';

    test('is one SVG element, well-formed as XML, whatever its texts hold', () => {
      const hostile = draw({ title: '<b>"&\'\u0001\uffff', description: ']]><script>' });
      for (const one of [svg, hostile]) {
        expect(one).toMatch(/^<svg xmlns="http:\/\/www\.w3\.org\/2000\/svg" .*<\/svg>$/s);
        expect(XMLValidator.validate(one)).toBe(true);
      }
      for (const part of ['<b>', '<script>', '\u0001', '\uffff']) expect(hostile).not.toContain(part);
    });

    test('holds its style to itself, since a style in an SVG holds for the whole page', () => {
      const rules = style.replace(/@media[^{]*\{(.*)\}$/, '$1').match(/[^{}]+(?=\{)/g) ?? [];
      expect(rules.length).toBeGreaterThan(20);
      for (const selector of rules.flatMap((one) => one.split(','))) expect(selector).toMatch(/^\.tintladder-figure/);
    });

    test('needs nothing that the page or the renderer would have to bring', () => {
      expect(svg).not.toMatch(/var\(|url\(|href|@import/);
    });

    test('is dark on a dark screen and never on paper', () => {
      expect(style.match(/@media[^{]*/g)).toEqual(['@media screen and (prefers-color-scheme:dark)']);
    });

    test('colours every class it uses in both schemes', () => {
      const [light, dark] = style.split('@media');
      const used = new Set([...svg.matchAll(/class="series ([a-z0-9-]+)/g)].map(([, name]) => name));
      expect([...used]).toEqual(['reference', 'colour-1']);
      for (const name of used) {
        for (const scheme of [light, dark]) expect(scheme).toMatch(new RegExp(`\\.${name}\\{color:#`));
      }
    });

    test('shows its title as a heading within its frame', () => {
      const title = 'A title that is far too long for one line and has to be broken into several of them';
      const long = draw({ title });
      const [, top] = long.match(/viewBox="0 (-\d+) /)?.map(Number) ?? [];
      const lines = [...long.matchAll(/y="([\d.-]+)" class="heading">([^<]*)</g)];
      expect(lines.length).toBeGreaterThan(1);
      expect(lines.map(([, , line]) => line).join(' ')).toBe(title);
      for (const [, y] of lines) {
        expect(Number(y)).toBeGreaterThan(top + 10);
        expect(Number(y)).toBeLessThan(0);
      }
    });

    test('has ids of its own, so that several stand in one page', () => {
      const ids = (one: string) => [...one.matchAll(/ id="([^"]+)"/g)].map(([, id]) => id);
      expect(ids(draw({ id: 'g' }))).toEqual(['g-title', 'g-description']);
      expect(draw({ id: 'f' })).toBe(svg);
    });

    test.each(['', 'two words', '\n'])('refuses %j as an id', (id) => {
      expect(() => draw({ id })).toThrow(expect.objectContaining({ code: 'invalid-option', path: 'id' }));
    });

    test('tells its series apart without colour', () => {
      const shapeOf = (name: string) =>
        svg.match(new RegExp(`class="series ${name} mark[^"]*" transform="[^"]*" d="([^"]*)"`))?.[1];
      expect(shapeOf('reference')).toBeDefined();
      expect(shapeOf('colour-1')).toBeDefined();
      expect(shapeOf('colour-1')).not.toBe(shapeOf('reference'));
    });
  });

  test('takes the style it is told', () => {
    const rows = [
      { label: 'A', value: 1, style: 1 },
      { label: 'B', value: 2, style: 1 },
    ];
    const svg = intervalChart({ ...ROWS, rows });
    expect(svg.match(/class="series colour-1 mark/g)).toHaveLength(2);
  });

  const whole = { label: 'A', curve: [[0, 1]] as const };
  test.each([
    ['empty', 'series', () => lineChart({ ...LINES, series: [{ label: 'A' }] })],
    [
      'not-finite',
      'series[1].curve[0][1]',
      () => lineChart({ ...LINES, series: [whole, { label: 'B', curve: [[0, Number.NaN]] }] }),
    ],
    [
      'not-finite',
      'series[0].points[0][0]',
      () => lineChart({ ...LINES, series: [{ label: 'B', points: [[Number.POSITIVE_INFINITY, 1]] }] }),
    ],
    [
      'invalid-interval',
      'series[0].intervals[0].high',
      () => lineChart({ ...LINES, series: [{ label: 'A', intervals: [{ x: 0, low: 2, high: 1 }] }] }),
    ],
    ['invalid-option', 'series[0].style', () => lineChart({ ...LINES, series: [{ ...whole, style: 0.5 }] })],
    ['out-of-range', 'xRange[1]', () => lineChart({ ...LINES, series: [whole], xRange: [1, 1] })],
    ['out-of-range', 'width', () => lineChart({ ...LINES, series: [whole], width: 20 })],
    ['out-of-range', 'height', () => lineChart({ ...LINES, series: [whole], height: Number.NaN })],
    [
      'not-finite',
      'lines[0].value',
      () => lineChart({ ...LINES, series: [whole], lines: [{ value: Number.NaN, label: '', kind: 'limit' }] }),
    ],
    ['empty', 'rows', () => intervalChart({ ...ROWS, rows: [] })],
    ['out-of-range', 'rows[0].value', () => intervalChart({ ...ROWS, rows: [{ label: 'A', value: 1e12 }] })],
    [
      'invalid-interval',
      'rows[0].interval.high',
      () => intervalChart({ ...ROWS, rows: [{ label: 'A', value: 1, interval: { low: 2, high: 1 } }] }),
    ],
    ['invalid-option', 'rows[0].style', () => intervalChart({ ...ROWS, rows: [{ label: 'A', value: 1, style: -1 }] })],
    ['invalid-option', 'decimals', () => intervalChart({ ...ROWS, rows: [{ label: 'A', value: 1 }], decimals: 1.5 })],
    ['empty', 'points', () => rubOutPlane({ ...TEXT, points: [] })],
    [
      'not-finite',
      'points[0].da',
      () => rubOutPlane({ ...TEXT, points: [{ label: 'A', dL: 0, da: Number.NaN, db: 0 }] }),
    ],
    ['invalid-limit', 'limit', () => rubOutPlane({ ...TEXT, points: [{ label: 'A', dL: 0, da: 0, db: 0 }], limit: 0 })],
  ])('refuses what it can’t draw: %s at %s', (code, path, draw) => {
    expect(draw).toThrow(expect.objectContaining({ code, path }));
  });

  test(`draws every number inside its frame (seed ${SEED})`, () => {
    const number = fc.double({ min: -1e9, max: 1e9, noNaN: true });
    const label = fc.string({ maxLength: 30 });
    fc.assert(
      fc.property(fc.array(fc.tuple(label, number, number), { minLength: 1, maxLength: 8 }), (values) => {
        const drawn = [
          lineChart({ ...LINES, series: values.map(([name, x, y]) => ({ label: name, points: [[x, y]] })) }),
          intervalChart({
            ...ROWS,
            rows: values.map(([name, a, b]) => ({
              label: name,
              value: a,
              interval: { low: Math.min(a, b), high: Math.max(a, b) },
            })),
          }),
          rubOutPlane({ ...TEXT, points: values.map(([name, a, b]) => ({ label: name, dL: a, da: b, db: -a })) }),
        ];
        for (const svg of drawn) {
          expect(svg).not.toMatch(/"[^"]*(NaN|Infinity|undefined)[^"]*"/);
          const [, width, height] = svg.match(/viewBox="0 -\d+ (\d+) (\d+)"/)?.map(Number) ?? [];
          for (const [x, y] of marksOf(svg)) {
            expect(x).toBeGreaterThan(0);
            expect(x).toBeLessThan(width);
            expect(y).toBeGreaterThan(0);
            expect(y).toBeLessThan(height);
          }
        }
      }),
      { seed: SEED, numRuns: 60 },
    );
  });
});

describe('text that must fit', () => {
  test('is cut with a sign that it was', () => {
    expect(cutToWidth('reference', 90)).toBe('reference');
    const cut = cutToWidth('a name that nobody has room for', 90);
    expect(cut).toMatch(/^a name .*…$/);
    expect(textWidth(cut)).toBeLessThanOrEqual(90);
  });

  test('counts full-width characters as wide', () => {
    expect(textWidth('分散剤')).toBeGreaterThan(1.5 * textWidth('abc'));
  });

  test('is broken between words', () => {
    expect(wrapBold('one two three', 1.3 * textWidth('one two'))).toEqual(['one two', 'three']);
  });
});

test('the words can’t be changed from outside', () => {
  const lists = [
    words.CERTAINTY_WORDS,
    words.CRITERION_WORDS,
    words.DIAGNOSIS_WORDS,
    words.FINDING_WORDS,
    words.OUTCOME_WORDS,
  ];
  for (const list of lists) expect(Object.isFrozen(list)).toBe(true);
});

test('series take the style of their path: the reference first, then the trials', () => {
  const packages = Array.from({ length: 9 }, (_, i) => ({ package: { id: `P${i}` }, isReference: i === 0 }));
  expect([...seriesStyles(packages).values()]).toEqual(packages.map((_, i) => styleAt(i)));
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
        for (const path of placed) {
          expect(path).toBeGreaterThanOrEqual(-1e-9);
          expect(path).toBeLessThanOrEqual(200 + 1e-9);
        }
      },
    ),
    { seed: SEED },
  );
});
