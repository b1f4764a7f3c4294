import fc from 'fast-check';
import { expect, test } from 'vitest';
import { createSpectrum, daylightIlluminant } from '../../src/colorimetry/index.js';
import { type Measurement, readMeasurements, writeMeasurements } from '../../src/exchange/index.js';

const SEED = 20250102;

const word = fc
  .string({ unit: 'grapheme', minLength: 1, maxLength: 12 })
  // a file holds no control characters, and a name or heading has no blanks at its ends
  .map((text) => text.replace(/[\p{C}\p{Z}\s]/gu, ' ').trim())
  .filter((text) => text !== '');
const cell = fc.oneof(word, fc.constantFrom('', 'a,b', 'a;b\tc', 'say "x"', 'two\nlines', '# 1', "'", '0x10', '=1+1'));
// headings that mean something to a reader are no fields
const heading = fc
  .oneof(word, fc.constantFrom('__proto__', 'constructor', 'toString', 'a remark, long', 'x "y"'))
  .map((text) => `remark ${text}`);
const conditions = fc.record(
  {
    viewing: fc.record({
      illuminant: fc.constantFrom('A', 'C', 'D50', 'D65', 'FL11'),
      observer: fc.constantFrom('2', '10'),
    }),
    specular: fc.constantFrom('included', 'excluded'),
    geometry: fc.constantFrom('d:8°', '45°a:0°'),
    session: word.map((text) => `day ${text}`),
    bandPass: fc.constantFrom('corrected', 'not-corrected'),
    instrument: word.map((text) => `bench ${text}`),
  },
  { requiredKeys: [] },
);
const grid = fc.constantFrom(
  { start: 400, step: 10, count: 5 },
  { start: 360, step: 5, count: 4 },
  { start: 380, step: 2.5, count: 3 },
  { start: 380, step: 10 / 3, count: 4 },
);
const coordinate = fc.double({ min: -100, max: 100, noNaN: true });
const triple = fc.tuple(fc.double({ min: 0, max: 100, noNaN: true }), coordinate, coordinate);

const table = fc
  .record({
    grid,
    conditions,
    headings: fc.uniqueArray(heading, { maxLength: 3 }),
    lab: fc.boolean(),
    xyz: fc.boolean(),
    spectrum: fc.boolean(),
    replicate: fc.boolean(),
  })
  .chain(({ grid: { start, step, count }, conditions, headings, lab, xyz, spectrum, replicate }) =>
    fc
      .array(
        fc.record({
          name: word,
          replicate: word,
          cells: fc.array(cell, { minLength: 3, maxLength: 3 }),
          values: fc.array(fc.double({ min: 0, max: 1.2, noNaN: true }), { minLength: count, maxLength: count }),
          lab: triple,
          xyz: fc.tuple(
            fc.double({ min: 0, max: 120, noNaN: true }),
            fc.double({ min: 0, max: 120, noNaN: true }),
            fc.double({ min: 0, max: 120, noNaN: true }),
          ),
        }),
        { minLength: 1, maxLength: 4 },
      )
      .map((rows) =>
        rows.map(
          (row): Measurement => ({
            name: row.name,
            ...(spectrum || !(lab || xyz)
              ? { spectrum: createSpectrum({ start, step, values: row.values, scale: 'fraction' }) }
              : {}),
            ...(lab ? { lab: { L: row.lab[0], a: row.lab[1], b: row.lab[2] } } : {}),
            ...(xyz ? { xyz: { X: row.xyz[0], Y: row.xyz[1], Z: row.xyz[2] } } : {}),
            conditions: conditions as Measurement['conditions'],
            ...(replicate ? { replicate: row.replicate } : {}),
            fields: Object.fromEntries(headings.map((label, i) => [label, row.cells[i]])),
          }),
        ),
      ),
  );

const withoutLines = (measurements: readonly Measurement[]) => measurements.map(({ line, ...rest }) => rest);

test.each(['delimited-text', 'iso-28178', 'iso-17972'] as const)(
  `what is written as %s is read again unchanged (seed ${SEED})`,
  (format) => {
    fc.assert(
      fc.property(fc.array(table, { minLength: 1, maxLength: 3 }), (tables) => {
        const measurements = tables.flat();
        const read = readMeasurements(writeMeasurements(measurements, { format }));
        expect(read.format).toBe(format);
        expect(withoutLines(read.measurements)).toEqual(withoutLines(measurements));
        // and once more, from what was read
        expect(writeMeasurements(read.measurements, { format })).toBe(writeMeasurements(measurements, { format }));
      }),
      { seed: SEED, numRuns: 150 },
    );
  },
  30_000,
);

const one = readMeasurements('Sample,400,410\nwhite,92.5,93\n').measurements;

test('nothing can not be written', () => {
  expect(() => writeMeasurements([], { format: 'delimited-text' })).toThrow(
    expect.objectContaining({ code: 'empty', path: 'measurements' }),
  );
});

test('another format is refused', () => {
  expect(() => writeMeasurements(one, { format: 'xlsx' as 'iso-28178' })).toThrow(
    expect.objectContaining({ code: 'invalid-option', path: 'options.format' }),
  );
});

test('an illuminant without a standard name is refused', () => {
  const viewing = { illuminant: daylightIlluminant(6000), observer: '10' } as const;
  expect(() => writeMeasurements([{ ...one[0], conditions: { viewing } }], { format: 'iso-28178' })).toThrow(
    expect.objectContaining({ code: 'unknown-illuminant', path: 'measurements[0].conditions.viewing.illuminant' }),
  );
});
