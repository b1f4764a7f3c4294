import { describe, expect, test } from 'vitest';
import { readMeasurements } from '../../../src/exchange/index.js';

const read = (text: string) => readMeasurements(text);
const codes = (text: string) => read(text).warnings.map(({ code }) => code);
const values = (text: string) => read(text).measurements.map(({ spectrum }) => [...(spectrum?.values ?? [])]);

describe('a wide table, a row a sample', () => {
  test.each([
    ['comma', 'Sample,400,410\na,45.2,46.1\nb,5,6\n'],
    ['semicolon', 'Sample;400;410\na;45.2;46.1\nb;5;6\n'],
    ['tab', 'Sample\t400\t410\na\t45.2\t46.1\nb\t5\t6\n'],
    ['decimal comma', 'Sample;400,0;410,0\na;45,2;46,1\nb;5;6\n'],
    ['decimal comma with tabs', 'Sample\t400\t410\na\t45,2\t46,1\nb\t5\t6\n'],
    ['decimal comma in quotes', 'Sample,400,410\na,"45,2","46,1"\nb,5,6\n'],
    ['CRLF', 'Sample,400,410\r\na,45.2,46.1\r\nb,5,6\r\n'],
    ['CR alone', 'Sample,400,410\ra,45.2,46.1\rb,5,6\r'],
    ['mixed line breaks', 'Sample,400,410\na,45.2,46.1\r\nb,5,6\r'],
    ['byte-order mark', '\uFEFFSample,400,410\na,45.2,46.1\nb,5,6\n'],
    ['no last line break', 'Sample,400,410\na,45.2,46.1\nb,5,6'],
    ['nm', 'Sample,400 nm,410 nm\na,45.2,46.1\nb,5,6\n'],
    ['R', 'Sample,R400,R410\na,45.2,46.1\nb,5,6\n'],
    ['decimals in the heading', 'Sample,400.0,410.0\na,45.2,46.1\nb,5,6\n'],
    ['brackets', 'Sample,R[400 nm],R[410 nm]\na,45.2,46.1\nb,5,6\n'],
    ['quoted cells', '"Sample","400","410"\n"a","45.2","46.1"\n"b","5","6"\n'],
    ['spaces around numbers', 'Sample, 400, 410\na, 45.2, 46.1\nb, 5, 6\n'],
    ['a delimiter at each line end', 'Sample,400,410,\na,45.2,46.1,\nb,5,6,\n'],
    ['a delimiter at the data line ends', 'Sample,400,410\na,45.2,46.1,\nb,5,6,\n'],
    ['blank lines', '\nSample,400,410\n\na,45.2,46.1\n\n\nb,5,6\n\n'],
    ['comment lines', '# by hand\nSample,400,410\n# first\na,45.2,46.1\n# second\nb,5,6\n'],
    ['a commented heading', '# Sample,400,410\na,45.2,46.1\nb,5,6\n'],
    [
      'a preamble',
      'Export of 3 March\nOperator,nobody\nSize,640,480\n\nSample,400,410,420,430,440\na,45.2,46.1,47,48,49\nb,5,6,7,8,9\n',
    ],
  ])('%s', (_, text) => {
    const { format, measurements } = read(text);
    expect(format).toBe('delimited-text');
    expect(measurements.map(({ name }) => name)).toEqual(['a', 'b']);
    const [a, b] = measurements.map(({ spectrum }) => spectrum);
    expect(a).toMatchObject({ start: 400, step: 10 });
    expect([...(a?.values ?? [])].slice(0, 2)).toEqual([0.452, 0.461]);
    expect([...(b?.values ?? [])].slice(0, 2)).toEqual([0.05, 0.06]);
  });

  test('a name may hold delimiter, quote and line break, and lines are still counted', () => {
    const { measurements } = read('Sample,400,410\n"a, ""b""\nc",45,46\nd,5,6\n');
    expect(measurements.map(({ name, line }) => [name, line])).toEqual([
      ['a, "b"\nc', 2],
      ['d', 4],
    ]);
  });

  test('the sample name comes from the column that says so, the other columns stay text', () => {
    const text = 'Date,Id,Sample name,400,410,Remark\n2025-01-02,7,white,90,91,007\n';
    expect(read(text).measurements[0]).toMatchObject({
      name: 'white',
      fields: { Date: '2025-01-02', Id: '7', Remark: '007' },
    });
    expect(read(text).warnings).toContainEqual(
      expect.objectContaining({
        code: 'columns-kept-as-text',
        path: 'line 1, column 1',
        figures: { columns: ['Date', 'Id', 'Remark'] },
      }),
    );
  });

  test('without such a column the first column of text names the sample', () => {
    expect(read('No,Paint,400,410\n1,blue,20,21\n').measurements[0]).toMatchObject({
      name: 'blue',
      fields: { No: '1' },
    });
  });

  test('without any text the readings are numbered, and that is noted', () => {
    const text = '400,410,420\n0.5,0.51,0.52\n0.6,0.61,0.62\n';
    expect(read(text).measurements.map(({ name }) => name)).toEqual(['1', '2']);
    expect(codes(text)).toContain('names-numbered');
  });

  test('columns of the same heading, of none, and of dangerous headings keep their text', () => {
    const { fields } = read('Sample,x,x,,__proto__,constructor,400,410\na,1,2,3,4,5,50,51\n').measurements[0];
    expect(Object.entries(fields)).toEqual([
      ['x', '1'],
      ['x (2)', '2'],
      ['column 4', '3'],
      ['__proto__', '4'],
      ['constructor', '5'],
    ]);
    expect(({} as Record<string, unknown>)['4']).toBeUndefined();
  });

  test('replicates are told apart by their column', () => {
    expect(read('Sample,Replicate,400,410\na,2,50,51\n').measurements[0].replicate).toBe('2');
  });

  test('a line of units is read as such', () => {
    expect(read('Sample,400,410\n,%,%\na,0.9,46.1\n')).toMatchObject({
      tables: [{ scale: 'percent', scaleFrom: 'stated' }],
      warnings: [],
    });
    expect(codes('Sample,400,410\n,nm,nm\na,45,46\n')).toEqual(['reflectance-assumed', 'percent-assumed']);
  });
});

describe('the scale', () => {
  test('is decided by the values of the whole file and reported', () => {
    expect(read('Sample,400,410\na,45,46\n')).toMatchObject({
      tables: [{ line: 1, count: 1, grid: { start: 400, step: 10, count: 2 }, scale: 'percent', scaleFrom: 'values' }],
      warnings: [{ code: 'reflectance-assumed' }, { code: 'percent-assumed', path: 'line 2, column 3' }],
    });
    expect(read('Sample,400,410\na,.45,.46\n')).toMatchObject({
      tables: [{ scale: 'fraction', scaleFrom: 'values' }],
      warnings: [{ code: 'reflectance-assumed' }, { code: 'fraction-assumed', path: 'line 2, column 3' }],
    });
  });

  test('may be settled by a later reading, and the order stays', () => {
    const text = 'Sample,400,410\nblack,1.5,1.6\ngrey,3.1,3.2\nwhite,90,91\n';
    expect(values(text)).toEqual([
      [0.015, 0.016],
      [0.031, 0.032],
      [0.9, 0.91],
    ]);
    expect(read(text).measurements.map(({ name }) => name)).toEqual(['black', 'grey', 'white']);
  });

  test('is taken as the caller or the headings state it, a black in percent included', () => {
    const black = 'Sample,400,410\nwhite,90,91\nblack,0.4,0.5\n';
    expect(readMeasurements(black, { scale: 'percent' }).measurements[1].spectrum?.values[0]).toBe(0.004);
    expect(values('Sample,%R 400,%R 410\nwhite,90,91\nblack,0.4,0.5\n')[1]).toEqual([0.004, 0.005]);
    expect(values('Reflectance (%)\nSample,400,410\nwhite,90,91\nblack,0.4,0.5\n')[1]).toEqual([0.004, 0.005]);
  });

  test('a fluorescent white a little above 1 passes', () => {
    expect(values('Sample,400,410\nwhite,1.1,1.2\ngrey,0.4,0.5\n')).toEqual([
      [1.1, 1.2],
      [0.4, 0.5],
    ]);
  });
});

describe('wavelengths', () => {
  test('descending ones are turned and noted', () => {
    const text = 'Sample,420,410,400\na,42,41,40\n';
    expect(values(text)).toEqual([[0.4, 0.41, 0.42]]);
    expect(read(text).warnings[0]).toMatchObject({ code: 'wavelengths-descending', path: 'line 1, column 2' });
  });

  test('whole nanometres of an interval of 10/3 nm are read as that grid', () => {
    const text = 'Sample,380,383,387,390,393,397,400\na,40,41,42,43,44,45,46\n';
    expect(read(text).tables[0].grid?.step).toBeCloseTo(10 / 3, 8);
    expect(codes(text)).toContain('wavelengths-rounded');
  });

  test('readings outside 360-830 nm can be dropped on demand', () => {
    const read = readMeasurements('Sample,350,360,370\na,40,41,42\n', { outsideRange: 'drop' });
    expect(read.tables[0].grid).toEqual({ start: 360, step: 10, count: 2 });
    expect(read.warnings.map(({ code }) => code)).toContain('wavelengths-dropped');
  });

  test('two grids in one file are kept apart', () => {
    const { measurements, tables, warnings } = read('Sample,400,410\na,45,46\n\nBatch two\nSample,400,420\nb,50,51\n');
    expect(measurements.map(({ spectrum }) => spectrum?.step)).toEqual([10, 20]);
    expect(tables.map(({ line, count }) => [line, count])).toEqual([
      [1, 1],
      [5, 1],
    ]);
    expect(warnings.map(({ code }) => code)).toContain('several-grids');
  });
});

describe('other layouts', () => {
  test.each([
    ['transposed', 'Wavelength,a,b\n400,45.2,5\n410,46.1,6\n'],
    ['transposed, decimal comma', 'nm;a;b\n400;45,2;5\n410;46,1;6\n'],
    ['transposed with a name row and remarks', 'Date,monday,tuesday\nSample,a,b\n400 nm,45.2,5\n410 nm,46.1,6\n'],
    ['transposed with units', 'Wavelength,a,b\nnm,%,%\n400,45.2,5\n410,46.1,6\n'],
    ['transposed after a preamble', 'Export\n\nWavelength,a,b\n400,45.2,5\n410,46.1,6\n'],
    ['long', 'sample,wavelength,value\na,400,45.2\na,410,46.1\nb,400,5\nb,410,6\n'],
    [
      'long, other order and heading',
      'Reflectance (%);Wavelength (nm);Sample\n45,2;400;a\n46,1;410;a\n5;400;b\n6;410;b\n',
    ],
    ['long, interleaved', 'sample,wavelength,value\na,400,45.2\nb,400,5\na,410,46.1\nb,410,6\n'],
    ['long, unordered', 'sample,wavelength,value\na,410,46.1\na,400,45.2\nb,400,5\nb,410,6\n'],
    ['blocks', 'Sample,400,410\na,45.2,46.1\nSample,400,410\nb,5,6\n'],
    ['blocks under bare wavelengths', 'Sample,400,410\na,45.2,46.1\n\nB\nSample,400,410\nb,5,6\n\nend of export\n'],
  ])('%s', (_, text) => {
    const { measurements } = read(text);
    expect(measurements.map(({ name }) => name)).toEqual(['a', 'b']);
    expect(values(text)).toEqual([
      [0.452, 0.461],
      [0.05, 0.06],
    ]);
    expect(measurements[0].spectrum).toMatchObject({ start: 400, step: 10 });
  });

  test('bare transposed numbers are numbered', () => {
    expect(read('400,45,5\n410,46,6\n').measurements.map(({ name }) => name)).toEqual(['1', '2']);
  });

  test('a long table tells replicates apart and keeps other columns', () => {
    const text = 'sample,replicate,wavelength,value,lot\na,1,400,45,x\na,1,410,46,x\na,2,400,47,y\na,2,410,48,y\n';
    expect(read(text).measurements).toMatchObject([
      { name: 'a', replicate: '1', fields: { lot: 'x' }, line: 2 },
      { name: 'a', replicate: '2', fields: { lot: 'y' }, line: 4 },
    ]);
  });
});

describe('colour coordinates', () => {
  test.each(['L*,a*,b*', 'L,a,b', 'CIE L*,CIE a*,CIE b*', 'LAB_L,LAB_A,LAB_B', 'CIEL*,CIEa*,CIEb*'])(
    'are found under %s',
    (heading) => {
      expect(read(`Name,${heading}\nx,45.5,-1.25,2\n`).measurements[0]).toMatchObject({
        name: 'x',
        lab: { L: 45.5, a: -1.25, b: 2 },
      });
    },
  );

  test('without illuminant and observer that is noted, nothing is assumed', () => {
    const { measurements, warnings } = read('Name,L*,a*,b*\nx,45.5,-1.25,2\n');
    expect(measurements[0].conditions).toEqual({});
    expect(warnings[0]).toMatchObject({ code: 'viewing-not-stated', path: 'line 1' });
  });

  test.each([
    ['the headings', 'Name,L*(D65/10°),a*(D65/10°),b*(D65/10°)\nx,45.5,-1.25,2\n'],
    ['the headings the other way', 'Name,L* 10° D65,a* 10° D65,b* 10° D65\nx,45.5,-1.25,2\n'],
    ['lines before the table', 'Illuminant: D65\nObserver: 10°\n\nName,L*,a*,b*\nx,45.5,-1.25,2\n'],
    ['columns', 'Name,Illuminant,Observer,L*,a*,b*\nx,D65,10°,45.5,-1.25,2\n'],
  ])('are taken from %s', (_, text) => {
    expect(read(text).measurements[0].conditions.viewing).toEqual({ illuminant: 'D65', observer: '10' });
    expect(codes(text)).not.toContain('viewing-not-stated');
  });

  test('of several viewings are kept, each with its own', () => {
    const text = 'Observer: 10\nName,L*(D65),a*(D65),b*(D65),L*(A),a*(A),b*(A)\nx,45,1,2,46,3,4\n';
    expect(read(text).measurements[0]).toMatchObject({
      lab: { L: 45, a: 1, b: 2 },
      conditions: { viewing: { illuminant: 'D65', observer: '10' } },
      colours: [
        { lab: { L: 45, a: 1, b: 2 }, viewing: { illuminant: 'D65', observer: '10' } },
        { lab: { L: 46, a: 3, b: 4 }, viewing: { illuminant: 'A', observer: '10' } },
      ],
      fields: {},
    });
    expect(codes(text)).not.toContain('viewing-not-stated');
  });

  test('stand beside a spectrum, which some samples may lack', () => {
    const { measurements } = read('Name,400,410,L*,a*,b*,X,Y,Z\nx,50,51,76,0,1,47,50,54\ny,,,60,0,1,25,28,30\n');
    expect(measurements[0]).toMatchObject({ lab: { L: 76, a: 0, b: 1 }, xyz: { X: 47, Y: 50, Z: 54 } });
    expect(measurements[0].spectrum).toBeDefined();
    expect(measurements[1].spectrum).toBeUndefined();
  });

  test('specular component, geometry and instrument are conditions', () => {
    const text = 'Specular: SCI\nGeometry: di:8°\nName,Instrument,400,410\nx,bench,50,51\n';
    expect(read(text).measurements[0].conditions).toEqual({
      specular: 'included',
      geometry: 'di:8°',
      instrument: 'bench',
    });
  });
});
