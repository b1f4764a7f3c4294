import { describe, expect, test } from 'vitest';
import { readMeasurements } from '../../../src/exchange/index.js';
import { faultOf } from '../fault-of.js';

// Hand-made files, each with what is expected of its names and of rows that are no samples, and why. The headings are invented.

const names = (text: string, options = {}) => readMeasurements(text, options).measurements.map(({ name }) => name);
const codes = (text: string, options = {}) => readMeasurements(text, options).warnings.map(({ code }) => code);

describe('one file a sample', () => {
  test.each([
    ['Sample name: blue tint\n\nnm,R%\n400,40\n410,41\n'],
    ['Sample name,blue tint\nnm,R%\n400,40\n410,41\n'],
    ['Sample name;blue tint\nDate;2025-03-01\n\nWavelength;Reflectance (%)\n400;40\n410;41\n'],
    ['# Sample: blue tint\nWavelength,value\n400,40\n410,41\n'],
    ['Probenname: blue tint\nnm;Remission\n400;40\n410;41\n'],
    ['Sample name: blue tint\n400,410\n40,41\n'],
  ])('%j takes its name from the line above', (text) => {
    expect(names(text)).toEqual(['blue tint']);
  });

  test("without one it takes the file's name, else its number", () => {
    const text = 'nm,R%\n400,40\n410,41\n';
    expect(names(text, { fileName: 'blue-07' })).toEqual(['blue-07']);
    expect(names(text)).toEqual(['1']);
  });
});

test.each([
  ['400 40\n410 41\n420 42\n', '1'],
  ['Sample: blue tint\nWavelength  Reflectance\n400   40\n410   41\n420   42\n', 'blue tint'],
])('columns that only blanks separate: %j', (text, name) => {
  const [{ spectrum, ...reading }] = readMeasurements(text).measurements;
  expect(reading.name).toBe(name);
  expect([...(spectrum?.values ?? [])]).toEqual([0.4, 0.41, 0.42]);
});

describe('the column of names', () => {
  test.each([
    ['Operator,Panel,400,410\nAB,p1,40,41\nAB,p2,42,43\n', ['p1', 'p2']],
    ['Batch,Drawdown,400,410\nb7,d1,40,41\nb7,d2,42,43\n', ['d1', 'd2']],
    ['Code,Description,400,410\n17,blue,40,41\n18,red,42,43\n', ['17', '18']],
    ['Colour name,No,400,410\nblue,1,40,41\nred,2,42,43\n', ['blue', 'red']],
    ['Description,400,410\nblue,40,41\nred,42,43\n', ['blue', 'red']],
    ['SampleID,400,410\nblue,40,41\n', ['blue']],
    ['Bezeichnung;400;410\nblau;40;41\n', ['blau']],
    ['Échantillon;400;410\nbleu;40;41\n', ['bleu']],
  ])('%j', (text, expected) => {
    expect(names(text)).toEqual(expected);
    expect(codes(text)).not.toContain('name-column-guessed');
  });

  test('a guess is noted, and takes the column that tells the rows apart', () => {
    const text = 'House,Recipe,400,410\nours,blue,40,41\nours,red,42,43\n';
    expect(names(text)).toEqual(['blue', 'red']);
    expect(readMeasurements(text).warnings).toContainEqual(
      expect.objectContaining({ code: 'name-column-guessed', path: 'line 1, column 2', figures: { column: 'Recipe' } }),
    );
  });

  test('an operator, a date or a remark is no guess', () => {
    expect(names('Operator,Date,400,410\nAB,May 1,40,41\nAB,May 1,42,43\n')).toEqual(['1', '2']);
  });

  test("the caller's column is taken, and one that is not there is refused with those that are", () => {
    const text = 'Name,Panel,400,410\nblue,p1,40,41\n';
    expect(names(text, { names: 'Panel' })).toEqual(['p1']);
    expect(faultOf(text, { names: 'Film' })).toMatchObject({
      code: 'invalid-option',
      path: 'options.names',
      received: 'Film',
    });
  });

  test.each(['Rep', 'Reading #', 'Replicate', 'Measurement no.', 'Messung', 'Spot'])('%s is a replicate', (heading) => {
    expect(readMeasurements(`Name,${heading},400,410\nblue,2,40,41\n`).measurements[0]).toMatchObject({
      name: 'blue',
      replicate: '2',
    });
  });
});

describe('rows that are computed from others', () => {
  test.each(['Avg', 'Average', 'Mean', 'Min', 'Max', 'StdDev', 'Std. Dev.', 'CV %', 'Range', 'Mittelwert', 'Moyenne'])(
    '%s is no film',
    (word) => {
      const text = `Name,400,410\nblue,40,41\nblue,42,43\n${word},1,1\n`;
      expect(names(text)).toEqual(['blue', 'blue']);
      expect(readMeasurements(text).warnings).toContainEqual(
        expect.objectContaining({ code: 'statistics-left-out', path: 'line 4, column 1', figures: { count: 1 } }),
      );
    },
  );

  test('nor in the column of replicates, nor in a transposed table', () => {
    expect(names('Name,Rep,400,410\nblue,1,40,41\nblue,2,42,43\nblue,Mean,41,42\n')).toEqual(['blue', 'blue']);
    expect(names('nm,blue,red,Mean\n400,40,50,45\n410,41,51,46\n')).toEqual(['blue', 'red']);
  });

  test.each(['Difference', 'Delta', 'Diff.', 'ΔE00'])('a row of differences is none: %s', (word) => {
    const text = `Name,400,410\nblue,40,41\n${word},-2,-1\n`;
    expect(names(text)).toEqual(['blue']);
    expect(codes(text)).toContain('differences-left-out');
  });

  test('a sample may be called so where the caller says so', () => {
    expect(names('Name,400,410\nMax,40,41\n', { computedRows: 'keep' })).toEqual(['Max']);
    expect(names('Name,400,410\nMaxine,40,41\nMean green,40,41\n')).toEqual(['Maxine', 'Mean green']);
  });
});

describe('lines that are no readings', () => {
  test.each([
    ['Name,400,410\nblue,40,41\nRemark: drawdown 150 µm, 2 coats\n'],
    ['Name,400,410\nblue,40,41\nDate,2025-04-03\n'],
    ['Name,400,410\nblue,40,41\n\nend of list\n'],
    ['Name,400,410\nblue,40,41\nRemark: drawdown 150 µm\n'],
    ['Name,400,410\nblue,40,41\nDate,2025-04-03,\n'],
    ['nm,blue\n400,40\n410,41\nRemark: drawdown 150 µm, 2 coats\n'],
    ['nm,blue\n400,40\n410,41\n\nend of list\n'],
    ['Name,nm,R%\nblue,400,40\nblue,410,41\nRemark: two coats\n'],
  ])('%j closes with one', (text) => {
    expect(readMeasurements(text).measurements).toMatchObject([{ name: 'blue', spectrum: { start: 400, step: 10 } }]);
    expect(codes(text)).toContain('lines-outside-tables');
  });

  test('a heading with nothing below, at the end, is no table', () => {
    expect(names('nm,blue\n400,40\n410,41\n\nnm,R')).toEqual(['blue']);
  });

  test('a row that is cut off is none', () => {
    expect(faultOf('Name,400,410\nblue,40,41\nred\n')).toMatchObject({ code: 'row-length', path: 'line 3, column 2' });
    expect(faultOf('Name,400,410\nblue,40,41\nred,42\n')).toMatchObject({
      code: 'row-length',
      path: 'line 3, column 3',
    });
  });

  test.each([
    ['wide', 'Name,400,410\nblue,40,41\n\nName,400,410\nred,42,43\n'],
    ['wide, of two kinds', 'Name,400,410\nblue,40,41\nName,L*,a*,b*\nred,1,2,3\n'],
    ['transposed', 'nm,blue\n400,40\n410,41\n\nnm,red\n400,42\n410,43\n'],
    ['transposed with a line between', 'nm,blue\n400,40\n410,41\n\nSecond sheet\nnm,red\n400,42\n410,43\n'],
    ['long', 'Name,nm,R%\nblue,400,40\nblue,410,41\n\nName,nm,R%\nred,400,42\nred,410,43\n'],
  ])('two tables one below the other: %s', (_, text) => {
    expect(names(text)).toEqual(['blue', 'red']);
  });
});

describe('the end of a file', () => {
  const wavelengths = Array.from({ length: 31 }, (_, i) => 400 + 10 * i);
  const row = wavelengths.map(() => '45.12');

  test('a whole last number without a line break is no cut file, and noted', () => {
    const text = `Name,${wavelengths}\nblue,${[...row.slice(0, -1), '46']}`;
    expect(readMeasurements(text).measurements[0].spectrum?.values.at(-1)).toBe(0.46);
    expect(codes(text)).toContain('perhaps-cut-off');
  });

  test('a number far from its neighbour, or with some of its decimals, is cut', () => {
    expect(faultOf(`Name,${wavelengths}\nblue,${[...row.slice(0, -1), '4']}`).code).toBe('truncated');
    expect(faultOf(`Name,${wavelengths}\nblue,${[...row.slice(0, -1), '45.1']}`).code).toBe('truncated');
  });
});

describe('what the caller leaves out', () => {
  const text = 'Name,400,410\nblue,40,41\nblue,42,43\nred,44,45\n';

  test('by name, or one reading of it by its line, with the reason noted', () => {
    expect(names(text, { exclude: [{ name: 'red', reason: 'scratched' }] })).toEqual(['blue', 'blue']);
    const one = { exclude: [{ name: 'blue', line: 3, reason: 'wet spot' }] };
    expect(readMeasurements(text, one).measurements.map(({ line }) => line)).toEqual([2, 4]);
    expect(readMeasurements(text, one).warnings).toContainEqual(
      expect.objectContaining({
        code: 'readings-excluded',
        path: 'line 3, column 1',
        message: expect.stringContaining('wet spot'),
      }),
    );
  });

  test.each([
    [{ exclude: 'red' }, 'options.exclude'],
    [{ exclude: [{ name: 'red' }] }, 'options.exclude[0].reason'],
    [{ exclude: [{ name: 'red', reason: 'x', because: 'y' }] }, 'options.exclude[0]'],
    [{ resample: 0.5 }, 'options.resample'],
    [{ quantity: 'transmittance' }, 'options.quantity'],
    [{ names: '' }, 'options.names'],
    [{ computedRows: 'drop' }, 'options.computedRows'],
  ])('%j is refused', (options, path) => {
    expect(faultOf(text, options)).toMatchObject({ code: 'invalid-option', path });
  });
});

test.each(['bytes', 'buffer', 'view'])('the file may come as %s', (kind) => {
  const bytes = new TextEncoder().encode('Name,400,410\nblue,40,41\n');
  const input = kind === 'bytes' ? bytes : kind === 'buffer' ? bytes.buffer : new DataView(bytes.buffer);
  expect(readMeasurements(input).measurements[0].name).toBe('blue');
});
