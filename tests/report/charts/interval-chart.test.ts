import { describe, expect, test } from 'vitest';
import { intervalChart } from '../../../src/report/charts/interval-chart.js';
import { BOTTOM_TICK, marksOf, scaleOfTicks } from '../fixture/drawn.js';

const TEXT = { id: 'f', title: 'A title', description: 'What it shows.' };

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
