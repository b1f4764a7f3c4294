import fc from 'fast-check';
import { XMLValidator } from 'fast-xml-parser';
import { describe, expect, test } from 'vitest';
import { intervalChart } from '../../../src/report/charts/interval-chart.js';
import { lineChart } from '../../../src/report/charts/line-chart.js';
import { rubOutPlane } from '../../../src/report/charts/rub-out-plane.js';
import { marksOf } from '../fixture/drawn.js';

const SEED = 20_240_613;
const TEXT = { id: 'f', title: 'A title', description: 'What it shows.' };
const LINES = { ...TEXT, xLabel: 'x', yLabel: 'y' };
const ROWS = { ...TEXT, axisLabel: 'Strength, %' };

describe('a chart by itself', () => {
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
      for (const selector of rules.flatMap((one) => one.split(','))) expect(selector).toMatch(/^\.tintladder-chart/);
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
