import { describe, expect, test } from 'vitest';
import { readMeasurements } from '../../../src/exchange/index.js';
import { faultOf } from '../fault-of.js';

function table(
  fields: string,
  rows: readonly string[],
  { head = '', sets = rows.length, names = fields.split(/\s+/).length } = {},
): string {
  return `${head}NUMBER_OF_FIELDS ${names}
BEGIN_DATA_FORMAT
${fields}
END_DATA_FORMAT
NUMBER_OF_SETS ${sets}
BEGIN_DATA
${rows.join('\n')}
END_DATA
`;
}

const FIELDS = 'SAMPLE_ID SPEC_400 SPEC_410';

describe('spectral fields', () => {
  test.each([
    ['SPEC_400 SPEC_410', 'a 45.2 46.1'],
    ['SPECTRAL_400 SPECTRAL_410', 'a 45.2 46.1'],
    ['SPECTRAL_PCT400 SPECTRAL_PCT410', 'a 45.2 46.1'],
    ['SPECTRAL_DEC400 SPECTRAL_DEC410', 'a 0.452 0.461'],
    ['NM400 NM410', 'a 45.2 46.1'],
    ['nm_400 nm_410', 'a 45.2 46.1'],
    ['R_400 R_410', 'a 45.2 46.1'],
    ['SPECTRAL_NM SPECTRAL_PCT SPECTRAL_NM SPECTRAL_PCT', 'a 400 45.2 410 46.1'],
    ['SPECTRAL_NM SPECTRAL_DEC SPECTRAL_NM SPECTRAL_DEC', 'a 400 0.452 410 0.461'],
  ])('%s', (fields, row) => {
    const { format, measurements } = readMeasurements(table(`SAMPLE_ID ${fields}`, [row]));
    expect(format).toBe('iso-28178');
    expect(measurements[0]).toMatchObject({ name: 'a', spectrum: { start: 400, step: 10 } });
    expect([...(measurements[0].spectrum?.values ?? [])]).toEqual([0.452, 0.461]);
  });

  test('say their scale where they can, and a dark table in percent stays dark', () => {
    const { measurements, tables } = readMeasurements(
      table('SAMPLE_ID SPECTRAL_PCT400 SPECTRAL_PCT410', ['w 90 91', 'k 0.4 0.5']),
    );
    expect(measurements[1].spectrum?.values[0]).toBe(0.004);
    expect(tables[0]).toMatchObject({ scale: 'percent', scaleFrom: 'stated' });
  });

  test('may bring other wavelengths in every row', () => {
    const { measurements, warnings } = readMeasurements(
      table('SAMPLE_ID SPECTRAL_NM SPECTRAL_PCT SPECTRAL_NM SPECTRAL_PCT', ['a 400 45 410 46', 'b 400 47 420 48']),
    );
    expect(measurements.map(({ spectrum }) => spectrum?.step)).toEqual([10, 20]);
    expect(warnings.map(({ code }) => code)).toContain('several-grids');
  });
});

test('colour fields, conditions and the rest', () => {
  const head = `WEIGHTING_FUNCTION "ILLUMINANT, D50"
WEIGHTING_FUNCTION "OBSERVER, 2 degree"
MEASUREMENT_GEOMETRY "45/0"
INSTRUMENTATION "bench unit"
`;
  const text = table('SAMPLE_ID LAB_L LAB_A LAB_B XYZ_X XYZ_Y XYZ_Z LOT', ['a 50 1 -2 17 18.4 15 x1'], { head });
  expect(readMeasurements(text).measurements[0]).toEqual({
    name: 'a',
    lab: { L: 50, a: 1, b: -2 },
    xyz: { X: 17, Y: 18.4, Z: 15 },
    conditions: { viewing: { illuminant: 'D50', observer: '2' }, geometry: '45°:0°', instrument: 'bench unit' },
    fields: { LOT: 'x1' },
    line: 11,
  });
});

test('several tables, one of them without colour', () => {
  const text =
    table('SAMPLE_ID LAB_L LAB_A LAB_B', ['a 50 1 -2']) +
    table('INDEX RGB_R RGB_G RGB_B', ['0 1 2 3']) +
    table(FIELDS, ['b 45 46']);
  const { measurements, tables, warnings } = readMeasurements(text);
  expect(measurements.map(({ name }) => name)).toEqual(['a', 'b']);
  expect(tables).toHaveLength(2);
  expect(warnings.map(({ code }) => code)).toContain('tables-without-colour');
});

test('names with blanks in quotes or between tabs, quotes inside, comments', () => {
  const rows = ['"white ""A"" # 1" 90 91 # first', 'light blue\t45\t46', '# between', 'b 45 46'];
  expect(readMeasurements(table(FIELDS, rows, { sets: 3 })).measurements.map(({ name }) => name)).toEqual([
    'white "A" # 1',
    'light blue',
    'b',
  ]);
});

test('rows that run over several lines are joined where the number of sets proves them whole', () => {
  const rows = ['a 45', '46', 'b 47', '48'];
  expect(readMeasurements(table(FIELDS, rows, { sets: 2 })).measurements).toHaveLength(2);
  expect(faultOf(table(FIELDS, rows.slice(0, 3), { sets: 2 }))).toMatchObject({
    code: 'row-length',
    path: 'line 7, column 3',
  });
});

test('a stated norm is the scale', () => {
  const { measurements } = readMeasurements(table(FIELDS, ['k 0.4 0.5', 'w 90 91'], { head: 'SPECTRAL_NORM 100\n' }));
  expect(measurements[0].spectrum?.values[0]).toBe(0.004);
});

describe('damaged or other files', () => {
  test.each([
    ['a set too few', table(FIELDS, ['a 45 46'], { sets: 2 }), 'count-mismatch', 'line 6, column 1'],
    ['a field too few', table(FIELDS, ['a 45 46'], { names: 4 }), 'count-mismatch', 'line 2, column 1'],
    [
      'a band too few',
      table(FIELDS, ['a 45 46'], { head: 'SPECTRAL_BANDS 3\n' }),
      'count-mismatch',
      'line 3, column 1',
    ],
    ['no END_DATA', table(FIELDS, ['a 45 46']).replace('END_DATA\n', ''), 'row-length', undefined],
    ['cut in the data', table(FIELDS, ['a 45 46']).replace(/END_DATA\n$/, ''), 'truncated', 'line 7, column 1'],
    ['cut in the format', 'BEGIN_DATA_FORMAT\nSAMPLE_ID SPEC_400', 'truncated', 'line 2, column 1'],
    ['data without a format', 'BEGIN_DATA\na 45 46\nEND_DATA\n', 'no-header', 'line 1, column 1'],
    ['END_DATA without data', `${table(FIELDS, ['a 45 46'])}END_DATA\n`, 'malformed', 'line 9, column 1'],
    ['a block in a block', table(FIELDS, ['a 45 46', 'BEGIN_DATA']), 'malformed', 'line 8, column 1'],
    ['a short row', table(FIELDS, ['a 45']), 'row-length', 'line 7, column 3'],
    ['a long row', table(FIELDS, ['a 45 46 47']), 'row-length', 'line 7, column 4'],
    ['a non-number', table(FIELDS, ['a 45 x']), 'not-a-number', 'line 7, column 3'],
    [
      'a non-number in a wavelength',
      table('SAMPLE_ID SPECTRAL_NM SPECTRAL_PCT', ['a x 46']),
      'not-a-number',
      'line 7, column 2',
    ],
    [
      'a value without its wavelength',
      table('SAMPLE_ID SPECTRAL_PCT SPECTRAL_NM', ['a 46 400']),
      'no-header',
      undefined,
    ],
    ['an open quote', table(FIELDS, ['"a 45 46']), 'malformed', 'line 7, column 1'],
    ['no colour', table('SAMPLE_ID RGB_R RGB_G RGB_B', ['a 1 2 3']), 'no-header', 'line 2, column 1'],
    [
      'light',
      table(FIELDS, ['a 45 46'], { head: 'DESCRIPTOR "Spectral power of a lamp"\n' }),
      'unsupported-quantity',
      'line 3, column 1 (DESCRIPTOR)',
    ],
    ['no row', table(FIELDS, []).replace('\n\n', '\n'), 'empty-file', 'line 2, column 1'],
  ] as const)('%s', (_, text, code, path) => {
    const fault = faultOf(text);
    if (path === undefined) expect(fault.path).toMatch(/^line \d+/);
    else expect(fault).toMatchObject({ code, path });
  });

  test('keyword text without a table is refused when its format is stated', () => {
    expect(faultOf('ISO28178\nORIGINATOR "x"\n', { format: 'iso-28178' })).toMatchObject({
      code: 'no-header',
      path: 'line 1, column 1',
    });
  });
});
