import { describe, expect, test } from 'vitest';
import { createSpectrum, D65_10, labFromSpectrum } from '../../../src/colorimetry/index.js';
import { readMeasurements } from '../../../src/exchange/index.js';
import { faultOf } from '../fault-of.js';

// Hand-made files, each with what is expected of its quantity and scale, and why. The headings are invented.

const values = (text: string, options = {}) =>
  readMeasurements(text, options).measurements.map(({ spectrum }) => [...(spectrum?.values ?? [])]);
const codes = (text: string, options = {}) => readMeasurements(text, options).warnings.map(({ code }) => code);
const keywords = (head: string) =>
  `${head}\nBEGIN_DATA_FORMAT\nSAMPLE_NAME SPEC_400 SPEC_410\nEND_DATA_FORMAT\nBEGIN_DATA\nx 40 41\nEND_DATA\n`;

describe('another quantity is refused in every layout', () => {
  test.each([
    // transposed: the heading of the column
    ['nm,A\n400,0.4\n410,0.5\n'],
    ['nm,%T\n400,40\n410,50\n'],
    ['nm,T%\n400,40\n410,50\n'],
    ['nm,OD\n400,0.4\n410,0.5\n'],
    ['nm,F(R)\n400,0.4\n410,0.5\n'],
    ['nm,K/S\n400,0.4\n410,0.5\n'],
    ['Wavelength (nm),Absorbance (AU)\n400,0.4\n410,0.5\n'],
    ['nm,Energy\n400,40\n410,50\n'],
    ['nm,Counts\n400,40\n410,50\n'],
    ['nm,SPD\n400,40\n410,50\n'],
    ['nm,log(1/R)\n400,0.4\n410,0.5\n'],
    // wide: beside the wavelength, a unit, a column
    ['Name,A400,A410\nx,0.4,0.5\n'],
    ['Name,K/S 400,K/S 410\nx,0.4,0.5\n'],
    ['Name,400 nm (%T),410 nm (%T)\nx,40,50\n'],
    ['Name,400,410\n,counts,counts\nx,40,50\n'],
    // long: the heading of the values
    ['Name,Wavelength,Transmittance\nx,400,40\nx,410,50\n'],
    ['Name,nm,Absorbance\nx,400,0.4\nx,410,0.5\n'],
    // above the table
    ['K/S values\nName,400,410\nx,0.4,0.5\n'],
    ['Absorbance spectra\nName,400,410\nx,0.4,0.5\n'],
    ['Transmission spectrum\nName,400,410\nx,40,50\n'],
    ['Data type: Absorbance\nName,400,410\nx,0.4,0.5\n'],
    ['Title: K/S values of the tints\nName,400,410\nx,0.4,0.5\n'],
    ['Unit: AU\nName,400,410\nx,0.4,0.5\n'],
    // keyword text
    [keywords('DESCRIPTOR "Spectral power of a lamp"')],
    [keywords('DESCRIPTOR "Transmission spectra"')],
    [keywords('DEVICE_CLASS "DISPLAY"')],
    [keywords('MEASUREMENT_TYPE "Emission"')],
  ])('%j', (text) => {
    expect(faultOf(text).code).toBe('unsupported-quantity');
  });

  test('a column of types says it row by row: those rows are left out, and alone they are refused', () => {
    const text = 'Name,Type,400,410\nx,R,40,41\nx,K/S,0.4,0.5\n';
    expect(values(text)).toEqual([[0.4, 0.41]]);
    expect(codes(text)).toContain('other-quantities-left-out');
    expect(faultOf('Name,Type,400,410\nx,K/S,0.4,0.5\n')).toMatchObject({ code: 'empty-file', received: 1 });
  });
});

describe('reflectance stays reflectance', () => {
  test.each([
    ['Remark: red enamel for a lamp housing\nName,R400,R410\nx,40,41\n'],
    ['Comment: transmission oil, red\nName,R400,R410\nx,40,41\n'],
    ['red enamel for a lamp housing\nName,400,410\nx,40,41\n'],
    ['Reflectance and K/S of the tints\nName,400,410\nx,40,41\n'],
    [keywords('DESCRIPTOR "red enamel for a lamp housing"')],
    [keywords('ORIGINATOR "Absorbance Labs"')],
  ])('%j', (text) => {
    expect(values(text)).toEqual([[0.4, 0.41]]);
  });

  test.each([
    ['wide', 'Name,R400,R410,K/S 400,K/S 410\nx,40,41,0.45,0.42\n', ['x']],
    ['transposed', 'Sample name: x\n\nnm,R%,K/S\n400,40,0.45\n410,41,0.42\n', ['x']],
    ['long', 'Name,nm,R%,K/S\nx,400,40,0.45\nx,410,41,0.42\n', ['x']],
  ])('K/S beside complete reflectance is no sample and no fault: %s', (_, text, names) => {
    expect(readMeasurements(text).measurements.map(({ name }) => name)).toEqual(names);
    expect(values(text)).toEqual([[0.4, 0.41]]);
  });

  test('a column named for a sample and K/S is no sample', () => {
    const text = 'nm,blue %R,blue K/S\n400,40,0.45\n410,41,0.42\n';
    expect(values(text)).toEqual([[0.4, 0.41]]);
    expect(codes(text)).toContain('other-quantities-left-out');
  });

  test.each(['Counts: 3', 'Power: on', 'Absorption: 12 hours', 'Energy class A', 'Density: 1.2 g/cm3'])(
    '%s says nothing of the values',
    (line) => {
      expect(values(`${line}\nName,400,410\nx,40,41\n`)).toEqual([[0.4, 0.41]]);
    },
  );

  test('K/S beside L*, a*, b* stays text', () => {
    const text = 'Name,K/S 400,K/S 410,L*,a*,b*\nx,1,2,40,1,2\n';
    const [{ spectrum, lab, fields }] = readMeasurements(text).measurements;
    expect([spectrum, lab, Object.values(fields)]).toEqual([undefined, { L: 40, a: 1, b: 2 }, ['1', '2']]);
    expect(codes(text)).toContain('other-quantities-left-out');
  });

  test('samples called A and B are samples where other headings are no quantities', () => {
    expect(readMeasurements('nm,A,B\n400,40,50\n410,41,51\n').measurements.map(({ name }) => name)).toEqual(['A', 'B']);
    expect(readMeasurements('nm,T,blue\n400,40,50\n410,41,51\n').measurements.map(({ name }) => name)).toEqual([
      'T',
      'blue',
    ]);
  });

  test('reflectance that is assumed is noted', () => {
    expect(codes('Name,400,410\nx,40,41\n')).toContain('reflectance-assumed');
    expect(codes('Name,R400,R410\nx,40,41\n')).not.toContain('reflectance-assumed');
    expect(codes('Reflectance (%)\nName,400,410\nx,40,41\n')).not.toContain('reflectance-assumed');
  });
});

describe('on request', () => {
  // Kubelka & Munk (1931): K/S = (1 - R)² / 2R, so R = 0.5 has 0.25 and R = 0.25 has 1.125
  test('K/S is turned into reflectance, and that is said', () => {
    const text = 'Name,K/S 400,K/S 410\nx,0.25,1.125\n';
    const [[first, second]] = values(text, { quantity: 'K/S' });
    expect(first).toBeCloseTo(0.5, 12);
    expect(second).toBeCloseTo(0.25, 12);
    expect(codes(text, { quantity: 'K/S' })).toContain('turned-into-reflectance');
  });

  // absorbance is -log10 R
  test.each([['Name,A400,A410\nx,1,2\n'], ['nm,Absorbance\n400,1\n410,2\n'], ['Name,400,410\nx,1,2\n']])(
    'absorbance %j',
    (text) => {
      const [[first, second]] = values(text, { quantity: 'absorbance' });
      expect(first).toBeCloseTo(0.1, 12);
      expect(second).toBeCloseTo(0.01, 12);
    },
  );

  test('a file that says something else than the request is refused; reflectance is believed', () => {
    expect(faultOf('Name,A400,A410\nx,1,2\n', { quantity: 'K/S' }).code).toBe('unsupported-quantity');
    expect(values('nm,A\n400,40\n410,50\n', { quantity: 'reflectance' })).toEqual([[0.4, 0.5]]);
  });
});

describe('Hunter L, a, b are no CIELAB', () => {
  test.each([
    ['Name,Hunter L,Hunter a,Hunter b,400,410\nx,60,1,2,40,41\n'],
    ['Colour space: Hunter Lab\nName,L,a,b,400,410\nx,60,1,2,40,41\n'],
  ])('%j', (text) => {
    const [{ lab, fields }] = readMeasurements(text).measurements;
    expect(lab).toBeUndefined();
    expect(Object.values(fields)).toEqual(['60', '1', '2']);
    expect(codes(text)).toContain('hunter-lab-left-out');
  });

  test('L, a, b without a star or a name are taken for CIELAB, and that is noted', () => {
    expect(codes('Name,L,a,b\nx,60,1,2\n')).toContain('cielab-assumed');
    expect(codes('Name,L*,a*,b*\nx,60,1,2\n')).not.toContain('cielab-assumed');
  });
});

describe('X, Y, Z', () => {
  test('of a white of 1 are brought to 100 and noted', () => {
    const text = 'Name,X,Y,Z\nwhite,0.9,0.95,1.02\nblack,0.005,0.005,0.005\n';
    expect(readMeasurements(text).measurements[0].xyz).toEqual({ X: 90, Y: 95, Z: 102 });
    expect(codes(text)).toContain('tristimulus-scaled');
  });

  test('of a white of 100 stay, a black among them too; a heading may state it', () => {
    expect(readMeasurements('Name,X,Y,Z\nwhite,90,95,102\nblack,0.5,0.5,0.5\n').measurements[1].xyz?.Y).toBe(0.5);
    expect(readMeasurements('Name,X (0-100),Y (0-100),Z (0-100)\nblack,0.5,0.5,0.5\n').measurements[0].xyz?.Y).toBe(
      0.5,
    );
  });
});

describe('a stated scale wins', () => {
  // a black film alone: nothing but the statement tells that it is in percent
  test.each([
    ['Reflectance (%)\nName,400,410\nblack,0.4,0.5\n'],
    ['Name,R% 400,R% 410\nblack,0.4,0.5\n'],
    ['Name,400 nm %,410 nm %\nblack,0.4,0.5\n'],
    ['Unit: %\nName,400,410\nblack,0.4,0.5\n'],
    ['All reflectance values in percent\nName,400,410\nblack,0.4,0.5\n'],
    ['Scale: 0-100\nName,400,410\nblack,0.4,0.5\n'],
    ['Name,400,410\n,%,%\nblack,0.4,0.5\n'],
    ['Name,400,410\nblack,0.4%,0.5%\n'],
    ['nm,R%\n400,0.4\n410,0.5\n'],
    ['Name,nm,Reflectance (%)\nblack,400,0.4\nblack,410,0.5\n'],
    [
      'BEGIN_DATA_FORMAT\nSAMPLE_NAME SPECTRAL_PCT400 SPECTRAL_PCT410\nEND_DATA_FORMAT\nBEGIN_DATA\nx 0.4 0.5\nEND_DATA\n',
    ],
    [
      'SPECTRAL_NORM 100\nBEGIN_DATA_FORMAT\nSAMPLE_NAME SPEC_400 SPEC_410\nEND_DATA_FORMAT\nBEGIN_DATA\nx 0.4 0.5\nEND_DATA\n',
    ],
    [
      '##TITLE=x\n##JCAMP-DX=4.24\n##XUNITS=NANOMETERS\n##YUNITS=PERCENT REFLECTANCE\n##FIRSTX=400\n##LASTX=410\n##NPOINTS=2\n##XYDATA=(X++(Y..Y))\n400 0.4 0.5\n##END=\n',
    ],
  ])('%j is a black of 0.4 and 0.5 percent', (text) => {
    expect(values(text)).toEqual([[0.004, 0.005]]);
    expect(readMeasurements(text).tables[0]).toMatchObject({ scale: 'percent', scaleFrom: 'stated' });
  });

  test('fractions above 1.2 are read where they are stated', () => {
    expect(values('Reflectance (0-1)\nName,400,410\nx,1.4,1.5\n')).toEqual([[1.4, 1.5]]);
    expect(values('Name,400,410\nx,1.4,1.5\n', { scale: 'fraction' })).toEqual([[1.4, 1.5]]);
  });

  test("the caller's word is stronger than the file's", () => {
    expect(values('Unit: %\nName,400,410\nx,0.4,0.5\n', { scale: 'fraction' })).toEqual([[0.4, 0.5]]);
  });

  test('two tables of one file may state different scales', () => {
    const text = 'Name,%R 400,%R 410\na,40,50\n\nReflectance (0-1)\nName,R 400,R 410\nb,0.4,0.5\n';
    expect(values(text)).toEqual([
      [0.4, 0.5],
      [0.4, 0.5],
    ]);
  });
});

describe('a scale that is not stated follows the highest value as written', () => {
  test.each([
    [1.2, 'fraction-assumed', 1.2],
    [0.9, 'fraction-assumed', 0.9],
    [5, 'percent-assumed', 0.05],
    [92.5, 'percent-assumed', 0.925],
  ])('%d', (highest, code, expected) => {
    const text = `Name,400,410\nx,0.4,${highest}\n`;
    const calm = `Name,400,410\nx,${highest},${highest}\n`;
    expect(values(highest > 10 ? calm : text)[0][1]).toBe(expected);
    expect(codes(highest > 10 ? calm : text)).toContain(code);
  });

  test.each([1.21, 1.5, 2, 3, 4.99])('%d is refused with a mend that can be used', (highest) => {
    const text = `Name,400,410\nx,1.1,${highest}\n`;
    expect(faultOf(text)).toMatchObject({
      code: 'reflectance-out-of-range',
      path: 'line 2, column 3',
      received: highest,
    });
    expect(values(text, { scale: 'percent' })[0][0]).toBe(0.011);
  });

  test('a black below 1.2 in a file of percentages is in percent as well, and counted', () => {
    const text = 'Name,400,410\nblack,0.9,1.0\nwhite,90,91\nblack,0.8,0.8\n';
    expect(values(text)[0]).toEqual([0.009, 0.01]);
    expect(readMeasurements(text).warnings).toContainEqual(
      expect.objectContaining({ code: 'dark-readings', figures: { count: 2 } }),
    );
  });

  test('a percentage is the fraction that its digits say', () => {
    // 88.1 / 100 is 0.8809999999999999 in binary arithmetic
    expect(values('Unit: %\nName,400,410\nx,88.1,65.8\n')).toEqual([[0.881, 0.658]]);
  });
});

describe('near zero', () => {
  test.each([
    ['Unit: %\nName,400,410\nx,-1.7e-18,0.3\n', -1.7e-20],
    ['Unit: %\nName,400,410\nx,-0.02,0.3\n', -0.0002],
    ['Reflectance (0-1)\nName,400,410\nx,-0.004,0.3\n', -0.004],
  ])('%j is noise: kept and noted', (text, expected) => {
    expect(values(text)[0][0]).toBeCloseTo(expected, 22);
    expect(codes(text)).toContain('negative-noise');
  });

  test.each([['Unit: %\nName,400,410\nx,-0.6,0.3\n'], ['Reflectance (0-1)\nName,400,410\nx,-0.006,0.3\n']])(
    '%j is below what noise explains',
    (text) => {
      expect(faultOf(text)).toMatchObject({
        code: 'reflectance-out-of-range',
        path: expect.stringContaining('column 2'),
      });
    },
  );
});

describe('bands and grids', () => {
  test('empty bands at the ends are cut and noted', () => {
    const text = 'Name,400,410,420,430\nx,,41,42,\ny,40,41,42,43\n';
    const { measurements, tables } = readMeasurements(text);
    expect(measurements[0].spectrum).toMatchObject({ start: 410, step: 10 });
    expect(values(text)[0]).toEqual([0.41, 0.42]);
    expect(tables.map(({ count }) => count)).toEqual([1, 1]);
    expect(codes(text)).toContain('empty-bands-cut');
  });

  test.each(['-', 'n/a', '#N/A'])('%s at an end is an empty band', (cell) => {
    expect(values(`Name,400,410,420\nx,40,41,${cell}\n`)).toEqual([[0.4, 0.41]]);
  });

  test('an empty band in the middle is a fault', () => {
    expect(faultOf('Name,400,410,420\nx,40,,42\n')).toMatchObject({ code: 'not-a-number', path: 'line 2, column 3' });
  });

  test('fine readings are offered resampling and averaged under its band-pass', () => {
    const wavelengths = Array.from({ length: 401 }, (_, i) => 400 + i * 0.5);
    // a straight line stays one under any symmetrical average
    const text = `Name,${wavelengths}\nx,${wavelengths.map((wavelength) => ((wavelength - 300) / 10).toFixed(3))}\n`;
    expect(faultOf(text)).toMatchObject({ code: 'grid-invalid', hint: expect.stringContaining('resample') });
    const read = values(text, { resample: 10 })[0];
    expect(read).toHaveLength(21);
    for (const [i, value] of read.entries()) expect(value).toBeCloseTo((100 + 10 * i) / 1000, 6);
    expect(codes(text, { resample: 10 })).toContain('wavelengths-resampled');
  });

  test('unevenly spaced readings are offered resampling and interpolated', () => {
    const wavelengths = [400, 407, 415, 421, 430, 442, 450, 459, 470];
    const cubic = (x: number) => 0.3 + 0.001 * (x - 430) - 1e-5 * (x - 430) ** 2 + 1e-7 * (x - 430) ** 3;
    const text = `Reflectance (0-1)\nName,${wavelengths}\nx,${wavelengths.map(cubic)}\n`;
    expect(faultOf(text)).toMatchObject({ code: 'wavelengths-uneven', hint: expect.stringContaining('resample') });
    for (const [i, value] of values(text, { resample: 10 })[0].entries()) {
      expect(value).toBeCloseTo(cubic(400 + 10 * i), 12);
    }
  });

  test('10/3 nm printed with two decimals is 10/3 nm', () => {
    const wavelengths = Array.from({ length: 10 }, (_, i) => (400 + (10 / 3) * i).toFixed(2));
    expect(readMeasurements(`Name,${wavelengths}\nx,${wavelengths.map(() => 40)}\n`).tables[0].grid?.step).toBe(10 / 3);
  });
});

describe("a file's own colour is compared with that of its spectrum", () => {
  const bands = Array.from({ length: 31 }, (_, i) => 400 + 10 * i);
  const reflectance = bands.map((wavelength) => 30 + 25 * Math.sin((wavelength - 400) / 60));
  const lab = labFromSpectrum(createSpectrum({ start: 400, step: 10, values: reflectance, scale: 'percent' }), D65_10);
  const file = (heading: string, coordinates: readonly number[], factor = 1) =>
    `Name,${bands},${heading}\nx,${reflectance.map((value) => (value * factor).toFixed(4))},${coordinates.map((value) => value.toFixed(2))}\n`;
  const under = (viewing: string) => ['L*', 'a*', 'b*'].map((one) => `${one} ${viewing}`).join(',');

  test('agreement says nothing', () => {
    expect(codes(file(under('D65/10'), [lab.L, lab.a, lab.b]))).not.toContain('colour-disagrees');
  });

  test.each([
    ['a wrong viewing', file(under('A/2'), [lab.L, lab.a, lab.b])],
    ['a colour of another sample', file(under('D65/10'), [lab.L + 1, lab.a, lab.b])],
    ['percentages of a dark film taken for fractions', file(under('D65/10'), [lab.L, lab.a, lab.b], 0.02)],
  ])('%s is noted with both values', (_, text) => {
    expect(readMeasurements(text).warnings).toContainEqual(
      expect.objectContaining({
        code: 'colour-disagrees',
        figures: expect.objectContaining({
          given: expect.any(Array),
          computed: expect.any(Array),
          deltaE2000: expect.any(Number),
        }),
      }),
    );
  });

  test('without a viewing there is nothing to compare under', () => {
    expect(codes(file('L*,a*,b*', [lab.L + 5, lab.a, lab.b]))).not.toContain('colour-disagrees');
  });
});
