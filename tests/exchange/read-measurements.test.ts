import { expect, test } from 'vitest';
import { readMeasurements } from '../../src/exchange/index.js';
import { faultOf } from './fault-of.js';

const HEAD = 'Sample,400,410,420\n';

test.each([
  ['no wavelength header', 'x,0.5,0.6\n', 'no-header', 'line 1, column 1'],
  ['uneven wavelengths', 'Sample,400,410,430,440,450\na,1,2,3,4,5\n', 'wavelengths-uneven', 'line 1, column 4'],
  ['a mistyped last wavelength', 'Sample,400,410,420,430,441\na,1,2,3,4,5\n', 'wavelengths-uneven', 'line 1, column 6'],
  ['a wavelength twice', 'Sample,400,410,410\na,1,2,3\n', 'wavelength-repeated', 'line 1, column 4'],
  ['a non-number', `${HEAD}a,50,51,52\nb,50,n/a,52\n`, 'not-a-number', 'line 3, column 3'],
  ['an empty cell', `${HEAD}a,50,,52\n`, 'not-a-number', 'line 2, column 3'],
  ['a hexadecimal', `${HEAD}a,50,0x33,52\n`, 'not-a-number', 'line 2, column 3'],
  ['an infinity', `${HEAD}a,50,1e999,52\n`, 'not-a-number', 'line 2, column 3'],
  ['a mark for thousands', 'Sample;400;410\na;50,1;1.051,2\n', 'not-a-number', 'line 2, column 3'],
  ['both decimal marks', 'Sample;400;410\na;50,1;51.2\n', 'not-a-number', 'line 2, column 3'],
  ['a row too short', `${HEAD}a,50,51,52\nb,50,51\n`, 'row-length', 'line 3, column 4'],
  ['a row too long', `${HEAD}a,50,51,52,53\n`, 'row-length', 'line 2, column 5'],
  ['a first row too short', `${HEAD}a,50,51\n`, 'row-length', 'line 2, column 4'],
  ['a fraction amid percentages', `${HEAD}a,50,.51,52\n`, 'scale-mixed', 'line 2, column 3'],
  [
    'a highest value between the scales',
    `${HEAD}a,2.5,2.6,2.7\nb,.5,.51,.52\n`,
    'reflectance-out-of-range',
    'line 2, column 4',
  ],
  ['a negative reflectance', `${HEAD}a,50,-51,52\n`, 'reflectance-out-of-range', 'line 2, column 3'],
  ['a reflectance above 2', `${HEAD}a,.5,2.5,.52\n`, 'reflectance-out-of-range', 'line 2, column 3'],
  ['neither percent nor fraction', `${HEAD}a,5000,51000,52000\n`, 'reflectance-out-of-range', 'line 2, column 2'],
  ['a single band', 'Sample,400\na,50\n', 'grid-invalid', 'line 1, column 2'],
  ['wavelengths below 360', 'Sample,350,360,370\na,50,51,52\n', 'grid-invalid', 'line 1, column 2'],
  ['wavelengths above 830', 'Sample,820,830,840\na,50,51,52\n', 'grid-invalid', 'line 1, column 4'],
  ['an interval above 20', 'Sample,400,450,500\na,50,51,52\n', 'grid-invalid', 'line 1, column 2'],
  ['K/S in the headings', 'Sample,K/S 400,K/S 410\na,1,2\n', 'unsupported-quantity', 'line 1, column 2'],
  [
    'absorbance before the table',
    `Data type: Absorbance\n${HEAD}a,1,2,3\n`,
    'unsupported-quantity',
    'line 1, column 1',
  ],
  ['an unknown unit', 'Sample,400,410\n,counts,counts\na,1,2\n', 'unsupported-quantity', 'line 2, column 2'],
  [
    'transmittance, long',
    'sample,wavelength,transmittance\na,400,1\na,410,2\n',
    'unsupported-quantity',
    'line 1, column 3',
  ],
  [
    'a wavelength twice, long',
    'sample,wavelength,value\na,400,1\na,410,2\na,410,2\n',
    'wavelength-repeated',
    'line 4, column 2',
  ],
  ['no number for a wavelength, long', 'sample,wavelength,value\na,400,1\na,x,2\n', 'not-a-number', 'line 3, column 2'],
  ['a non-number, transposed', 'Wavelength,a,b\n400,1,2\n410,1,x\n', 'not-a-number', 'line 3, column 3'],
  ['a row too short, transposed', 'Wavelength,a,b\n400,50,2\n410,50\n', 'row-length', 'line 3, column 3'],
  ['an L* beyond any surface', 'Name,L*,a*,b*\nx,450,1,2\n', 'out-of-range', 'line 2, column 2'],
  ['an open quote', `${HEAD}"a,50,51,52\nb,50,51,52\n`, 'malformed', 'line 2, column 1'],
  ['text after a closing quote', `${HEAD}"a"b,50,51,52\nb,50,51,52\n`, 'malformed', 'line 2, column 1'],
  ['an empty file', '', 'empty-file', 'line 1, column 1'],
  ['blanks only', ' \n\n', 'empty-file', 'line 1, column 1'],
  ['a heading and no reading', HEAD, 'empty-file', 'line 1, column 1'],
  ['control characters', `${HEAD}a,50,51\u0000,52\n`, 'not-text', 'line 2, column 8'],
] as const)('%s', (_, text, code, path) => {
  expect(faultOf(text)).toMatchObject({ code, path });
});

test('a last number that is cut is no number', () => {
  const wavelengths = Array.from({ length: 31 }, (_, i) => 400 + 10 * i);
  const text = `Sample,${wavelengths}\na,${wavelengths.map(() => '45.123')}`;
  expect(readMeasurements(text).measurements).toHaveLength(1);
  expect(faultOf(text.slice(0, -1))).toMatchObject({ code: 'truncated', path: 'line 2, column 32', received: '45.12' });
});

test.each([
  ['a spreadsheet workbook', [0x50, 0x4b, 3, 4, 20, 0], 'a zip container, such as a spreadsheet workbook'],
  ['a PDF', [0x25, 0x50, 0x44, 0x46, 0x2d], 'a PDF document'],
  ['a picture', [0x89, 0x50, 0x4e, 0x47], 'a PNG image'],
])('%s is named', (_, bytes, received) => {
  expect(faultOf(Uint8Array.from(bytes))).toMatchObject({ code: 'not-text', received });
});

test('a file over the stated size is refused before it is read', () => {
  expect(faultOf(`${HEAD}a,50,51,52\n`, { maxBytes: 10 })).toMatchObject({ code: 'file-too-large', path: 'the file' });
});

test.each([
  [{ format: 'xlsx' }, 'options.format'],
  [{ scale: 'per mille' }, 'options.scale'],
  [{ outsideRange: 'ignore' }, 'options.outsideRange'],
  [{ maxBytes: -1 }, 'options.maxBytes'],
  [{ encoding: 'utf-8' }, 'options.encoding'],
])('the option %j is refused', (options, path) => {
  expect(faultOf(HEAD, options)).toMatchObject({ code: 'invalid-option', path });
});
