import { readdirSync, readFileSync } from 'node:fs';
import { expect, test } from 'vitest';
import { recogniseFormat } from '../../src/exchange/formats.js';
import { MEASUREMENT_FORMATS, readMeasurements } from '../../src/exchange/index.js';

// Each page under docs/formats shows a whole example file of tests/fixtures, and the readings that come from it.
const EXAMPLES = [
  { page: 'delimited-text.md', fixture: 'readings.csv', format: 'delimited-text', names: ['white base', 'blue tint'] },
  {
    page: 'delimited-text.md',
    fixture: 'readings-decimal-comma.csv',
    format: 'delimited-text',
    names: ['Weiß', 'Blau'],
  },
  { page: 'iso-28178.md', fixture: 'readings-iso-28178.txt', format: 'iso-28178', names: ['white base', 'blue tint'] },
  { page: 'iso-17972.md', fixture: 'readings-iso-17972.xml', format: 'iso-17972', names: ['blue tint'] },
  { page: 'jcamp-dx.md', fixture: 'readings-jcamp-dx.jdx', format: 'jcamp-dx', names: ['blue tint'] },
] as const;

test.each(EXAMPLES)('$page shows $fixture, which reads as $format', ({ page, fixture, format, names }) => {
  const text = readFileSync(`tests/fixtures/${fixture}`, 'utf8');
  expect(readFileSync(`docs/formats/${page}`, 'utf8')).toContain(text.trimEnd());
  const read = readMeasurements(text);
  expect(read.format).toBe(format);
  expect(read.measurements.map(({ name }) => name)).toEqual(names);
  const tint = read.measurements.at(-1);
  expect(tint?.spectrum?.values[0]).toBeCloseTo(0.523, 12);
  expect(tint?.spectrum?.values[1]).toBeCloseTo(0.5875, 12);
  expect(tint?.spectrum).toMatchObject({ start: 400, step: 20 });
});

test('every page and every fixture is shown', () => {
  expect(new Set(EXAMPLES.map(({ page }) => page))).toEqual(new Set(readdirSync('docs/formats')));
  expect(new Set(EXAMPLES.map(({ fixture }) => fixture))).toEqual(new Set(readdirSync('tests/fixtures')));
});

test('every format has a page, and recognises its own example', () => {
  expect(new Set(EXAMPLES.map(({ format }) => format))).toEqual(new Set(MEASUREMENT_FORMATS));
  for (const { fixture, format } of EXAMPLES) {
    expect(recogniseFormat(readFileSync(`tests/fixtures/${fixture}`, 'utf8'))).toBe(format);
  }
});

test.each(['$$ ', '##', '<', 'BEGIN_DATA ', ' ', '\n', '$$\n', '#'])(
  'recognition takes time in proportion to a text of %j over and over',
  (token) => {
    // a pattern that tries every division of thirty comments takes longer than the tests may
    expect(MEASUREMENT_FORMATS).toContain(recogniseFormat(`${token.repeat(100_000)}x`));
  },
);
