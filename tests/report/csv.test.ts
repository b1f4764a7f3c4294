import fc from 'fast-check';
import Papa from 'papaparse';
import { describe, expect, test } from 'vitest';
import { csvField, toCsv } from '../../src/report/csv.js';
import { hostileStudy } from './fixture/hostile-study.js';
import { inventedStudy } from './fixture/invented-study.js';

const SEED = 20_240_612;
const FORMULA_START = /^\s*[=+\-@]/;

// papaparse is a general-purpose reader of delimited text: what it reads is what a spreadsheet reads.
const read = (text: string) => Papa.parse<string[]>(text, { delimiter: ',', skipEmptyLines: true }).data;

describe('toCsv', () => {
  const result = inventedStudy();
  const [header, ...rows] = read(toCsv(result));
  const column = (name: string) => header.indexOf(name);

  test('has a row for each package and paint, as wide as its header', () => {
    expect(rows).toHaveLength(result.cells.length);
    for (const row of rows) expect(row).toHaveLength(header.length);
  });

  test('states units in the header', () => {
    expect(header).toContain('strength (%)');
    expect(header).toContain('residual (ΔE00)');
    expect(header).toContain('rub-out (ΔE*ab)');
  });

  test('carries the figures of the result to seven digits', () => {
    for (const row of rows) {
      const cell = result.cells.find((one) => one.package === row[0] && one.paint === row[2]);
      const expected = cell?.strength?.percent ?? 100;
      expect(Math.abs(Number(row[column('strength (%)')]) - expected)).toBeLessThan(1e-4);
      expect(Number(row[column('rub-out dL*')])).toBeCloseTo(cell?.rubOut?.difference.dL ?? Number.NaN, 6);
      expect(row[column('outcome')]).toBe(cell?.outcome);
    }
  });

  test('ends every line with CR LF (RFC 4180, 2.1)', () => {
    const text = toCsv(result);
    expect(text.endsWith('\r\n')).toBe(true);
    expect(text.replaceAll('\r\n', '')).not.toMatch(/[\r\n]/);
  });

  test('reads back hostile names, led by an apostrophe where they would be a formula', () => {
    const hostile = hostileStudy();
    const names = read(toCsv(hostile))
      .slice(1)
      .map((row) => row[1]);
    const expected = hostile.packages.map(({ package: { name } }) => (FORMULA_START.test(name) ? `'${name}` : name));
    expect(new Set(names)).toEqual(new Set(expected));
  });
});

describe('csvField', () => {
  test.each([
    [-0.25, '-0.25'],
    [-0, '0'],
    [104.123456789, '104.1235'],
    [undefined, ''],
    ['=1+1', "'=1+1"],
    ['-5 °C', "'-5 °C"],
    ['@A1', "'@A1"],
    ['a,b', '"a,b"'],
    ['a"b', '"a""b"'],
    ['a\nb', '"a\nb"'],
  ])('%j is written as %j', (value, expected) => expect(csvField(value)).toBe(expected));

  test(`any text reads back as it was, or led by an apostrophe (seed ${SEED})`, () => {
    fc.assert(
      fc.property(fc.string({ unit: 'binary', minLength: 1 }), fc.string(), (text, second) => {
        const [[first]] = read(`${csvField(text)},${csvField(`x${second}`)}\r\n`);
        expect([text, `'${text}`]).toContain(first);
        expect(first).not.toMatch(FORMULA_START);
      }),
      { seed: SEED, numRuns: 500 },
    );
  });
});
