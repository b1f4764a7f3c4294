import { describe, expect, test } from 'vitest';
import { readMeasurements } from '../../../src/exchange/index.js';
import { faultOf } from '../fault-of.js';

function block(records: Readonly<Record<string, string>> = {}, data = '400 45 46\n420 47'): string {
  const all = {
    TITLE: 'a',
    'JCAMP-DX': '4.24',
    'DATA TYPE': 'UV/VIS SPECTRUM',
    XUNITS: 'NANOMETERS',
    YUNITS: 'PERCENT REFLECTANCE',
    FIRSTX: '400',
    LASTX: '420',
    XFACTOR: '1',
    YFACTOR: '1',
    NPOINTS: '3',
    XYDATA: `(X++(Y..Y))\n${data}`,
    ...records,
  };
  return `${Object.entries(all)
    .map(([label, value]) => (value === '' ? '' : `##${label}=${value}\n`))
    .join('')}##END=\n`;
}

const values = (text: string) => [...(readMeasurements(text).measurements[0].spectrum?.values ?? [])];

test('a single block', () => {
  const { format, measurements, tables } = readMeasurements(
    block({ OWNER: 'nobody', 'SPECTROMETER/DATA SYSTEM': 'bench' }),
  );
  expect(format).toBe('jcamp-dx');
  expect(measurements[0]).toMatchObject({
    name: 'a',
    conditions: { instrument: 'bench' },
    fields: { OWNER: 'nobody' },
    spectrum: { start: 400, step: 10 },
  });
  expect(values(block())).toEqual([0.45, 0.46, 0.47]);
  expect(tables[0]).toMatchObject({ scale: 'percent', scaleFrom: 'stated' });
});

test.each([
  ['factors', block({ YFACTOR: '0.5' }, '400 90 92\n420 94')],
  ['micrometres', block({ XUNITS: 'MICROMETERS', FIRSTX: '0.4', LASTX: '0.42', XFACTOR: '0.001' })],
  ['packed', block({}, '400+45+46+47')],
  ['squeezed', block({}, '400D5D6D7')],
  ['differences', block({}, '400D5JJ')],
  ['differences with duplicates', block({}, '400D5JT')],
  ['a check at the next line', block({}, '400D5J\n410D6J\n420D7')],
  ['comments and blank lines', block({}, '400 45 46 $$ first\n\n420 47 $$ last')],
  ['points', block({ XYDATA: '', XYPOINTS: '(XY..XY)\n400, 45; 410, 46\n420, 47' })],
])('%s', (_, text) => {
  expect(values(text)).toEqual([0.45, 0.46, 0.47]);
});

test('descending abscissae are turned', () => {
  expect(values(block({ FIRSTX: '420', LASTX: '400' }, '420 47 46\n400 45'))).toEqual([0.45, 0.46, 0.47]);
});

test('linked blocks', () => {
  const text = `##TITLE=both\n##JCAMP-DX=4.24\n##DATA TYPE=LINK\n##BLOCKS=2\n${block()}${block({ TITLE: 'b' })}##END=\n`;
  expect(readMeasurements(text).measurements.map(({ name }) => name)).toEqual(['a', 'b']);
  expect(faultOf(text.replace('BLOCKS=2', 'BLOCKS=3'))).toMatchObject({
    code: 'count-mismatch',
    path: 'line 4, column 1',
  });
});

test('reflectance that does not say percent is left to the values', () => {
  expect(values(block({ YUNITS: 'REFLECTANCE' }, '400 .45 .46\n420 .47'))).toEqual([0.45, 0.46, 0.47]);
});

describe('damaged or other files', () => {
  test.each([
    ['absorbance', block({ YUNITS: 'ABSORBANCE' }), 'unsupported-quantity', 'line 5, column 1'],
    ['log 1/R', block({ YUNITS: 'LOG(1/R)' }), 'unsupported-quantity', 'line 5, column 1'],
    ['wavenumbers', block({ XUNITS: '1/CM' }), 'unsupported-quantity', 'line 4, column 1'],
    ['another data class', block({ XYDATA: '(R++(A..A))' }), 'unsupported-quantity', 'line 11, column 1'],
    ['no data', block({ XYDATA: '' }), 'unsupported-quantity', 'line 1, column 1'],
    ['a missing record', block({ FIRSTX: '' }), 'no-header', 'line 1, column 1'],
    ['no unit', block({ YUNITS: '' }), 'no-header', 'line 1, column 1'],
    ['a point too few', block({ NPOINTS: '4' }), 'count-mismatch', 'line 10, column 1'],
    ['a line missing', block({ NPOINTS: '3' }, '400 45\n420 47 48'), 'malformed', 'line 13, column 1'],
    ['a check that fails', block({}, '400D5J\n410D8J\n420D7'), 'malformed', 'line 13'],
    ['a character of no form', block({}, '400 45 !'), 'malformed', 'line 12, column 8'],
    ['a difference at the start', block({}, '400J'), 'malformed', 'line 12, column 4'],
    ['endless repeats', block({}, '400D5s99999999'), 'malformed', 'line 12, column 6'],
    ['a count that is none', block({ NPOINTS: 'three' }), 'not-a-number', 'line 10, column 1'],
    ['a single point', block({ NPOINTS: '1' }, '400 45'), 'grid-invalid', 'line 10, column 1'],
    ['half a pair', block({ XYDATA: '', XYPOINTS: '(XY..XY)\n400, 45; 410' }), 'count-mismatch', 'line 12, column 1'],
    [
      'uneven points',
      block({ XYDATA: '', XYPOINTS: '(XY..XY)\n400, 45; 410, 46\n425, 47' }),
      'wavelengths-uneven',
      'line 13',
    ],
    ['no end', block().replace('##END=\n', ''), 'truncated', 'line 14, column 1'],
    ['a record outside a block', `##OWNER=x\n${block()}`, 'malformed', 'line 1, column 1'],
  ] as const)('%s', (_, text, code, path) => {
    expect(faultOf(text)).toMatchObject({ code, path });
  });
});
