import { describe, expect, test } from 'vitest';
import { readMeasurements } from '../../../src/exchange/index.js';

// Hand-made files, each with what is expected of its conditions and why. The headings are invented.

const first = (text: string) => readMeasurements(text).measurements[0];
const codes = (text: string) => readMeasurements(text).warnings.map(({ code }) => code);
const viewings = (text: string) => {
  const { colours, lab, xyz, conditions } = first(text);
  return (
    colours?.map(({ viewing }) => viewing) ?? [
      ...(lab ? [conditions.viewing] : []),
      ...(xyz ? [conditions.viewing] : []),
    ]
  );
};
const under = (illuminant: string, observer: string) => ({ illuminant, observer });

describe('illuminant and observer in the headings of a colour', () => {
  // the same statement in any order and punctuation
  test.each([
    ['D65/10'],
    ['D65/10°'],
    ['D65-10'],
    ['D65 10°'],
    ['D65,10 deg'],
    ['D65 / 10 degree'],
    ['10°/D65'],
    ['10 D65'],
    ['10 degrees, D65'],
    ['CIE D65, CIE 1964'],
    ['Illuminant D65, observer 10°'],
    ['Obs. 10°; Ill. D65'],
    ['D65 1964'],
    ['D6510'],
    ['Normlichtart D65, 10° Normalbeobachter'],
    ['observateur 10°, illuminant D65'],
  ])('%s is D65 under 10 degrees', (statement) => {
    const heading = ['L*', 'a*', 'b*'].map((coordinate) => `"${coordinate} (${statement})"`);
    expect(first(`Name,${heading}\nx,45,1,2\n`).conditions.viewing).toEqual(under('D65', '10'));
  });

  // a lamp's number is no observer
  test.each([
    ['F2/10', 'FL2', '10'],
    ['F10/2', 'FL10', '2'],
    ['FL2/2', 'FL2', '2'],
    ['10/F2', 'FL2', '10'],
    ['2° F11', 'FL11', '2'],
    ['F 11, 10°', 'FL11', '10'],
    ['FL02/10', 'FL2', '10'],
    ['A/2', 'A', '2'],
    ['C/2', 'C', '2'],
    ['A 10°', 'A', '10'],
    ['D50/2', 'D50', '2'],
    ['E/10', 'E', '10'],
  ])('%s', (statement, illuminant, observer) => {
    const delimited = `Name;L* (${statement});a* (${statement});b* (${statement})\nx;45;1;2\n`;
    expect(first(delimited).conditions.viewing).toEqual(under(illuminant, observer));
    const before = `Name;${statement} L*;${statement} a*;${statement} b*\nx;45;1;2\n`;
    expect(first(before).conditions.viewing).toEqual(under(illuminant, observer));
    const fields = ['LAB_L', 'LAB_A', 'LAB_B'].map((field) => `"${field} (${statement})"`).join(' ');
    const keywords = `BEGIN_DATA_FORMAT\nSAMPLE_NAME ${fields}\nEND_DATA_FORMAT\nBEGIN_DATA\nx 45 1 2\nEND_DATA\n`;
    expect(first(keywords).conditions.viewing).toEqual(under(illuminant, observer));
  });

  test('each colour has its own viewing, and what stands at the first coordinate holds for the next two', () => {
    expect(viewings('Name;L*(D50/2);a*;b*;X(D65/10);Y;Z\nx;45;1;2;14;15;16\n')).toEqual([
      under('D50', '2'),
      under('D65', '10'),
    ]);
  });

  test('three viewings of one sample are three colours', () => {
    const heading = ['D65/10', 'A/10', 'F11/10'].flatMap((viewing) =>
      ['L*', 'a*', 'b*'].map((one) => `${one} ${viewing}`),
    );
    const text = `Name,${heading}\nx,45,1,2,46,3,4,47,5,6\n`;
    expect(viewings(text)).toEqual([under('D65', '10'), under('A', '10'), under('FL11', '10')]);
    expect(first(text).colours?.map(({ lab }) => lab?.L)).toEqual([45, 46, 47]);
    expect(first(text).lab?.L).toBe(45);
  });

  test('a heading in two rows states the viewing above the coordinates', () => {
    const text = ',D65/10,,,A/10,,\nName,L*,a*,b*,L*,a*,b*\nx,45,1,2,46,3,4\n';
    expect(viewings(text)).toEqual([under('D65', '10'), under('A', '10')]);
  });

  test.each(['Name,X10,Y10,Z10\nx,10,20,30\n', 'Name,L*10,a*10,b*10\nx,10,20,30\n'])(
    'the index 10 is the observer of 10 degrees, as the CIE writes it: %j',
    (text) => {
      expect(viewings(`Illuminant: D65\n${text}`)).toEqual([under('D65', '10')]);
    },
  );

  test('coordinates grouped by letter rather than by viewing are put together by what they state', () => {
    const text = 'Name,L* D65/10,L* A/10,a* D65/10,a* A/10,b* D65/10,b* A/10\nx,45,46,1,3,2,4\n';
    expect(first(text).colours?.map(({ lab }) => lab)).toEqual([
      { L: 45, a: 1, b: 2 },
      { L: 46, a: 3, b: 4 },
    ]);
  });
});

describe('the parts of a viewing come each from its nearest statement', () => {
  test('the observer stands above, the illuminant in the heading', () => {
    expect(viewings('Observer: 10\nName,L*(D65),a*(D65),b*(D65)\nx,45,1,2\n')).toEqual([under('D65', '10')]);
  });

  test('the heading is nearer than the line above, and the contradiction is noted with both', () => {
    const text = 'Illuminant: D50\nObserver: 2°\nName,L*(D65),a*(D65),b*(D65)\nx,45,1,2\n';
    expect(viewings(text)).toEqual([under('D65', '2')]);
    expect(readMeasurements(text).warnings).toContainEqual(
      expect.objectContaining({
        code: 'condition-contradicted',
        path: 'line 4, column 2',
        figures: { part: 'illuminant', taken: 'D65', passedOver: 'D50' },
      }),
    );
  });

  test('a column is nearer than the line above', () => {
    const text = 'Illuminant: D50\nName,Illuminant,Observer,L*,a*,b*\nx,D65,10,45,1,2\ny,A,10,45,1,2\n';
    expect(readMeasurements(text).measurements.map(({ conditions }) => conditions.viewing)).toEqual([
      under('D65', '10'),
      under('A', '10'),
    ]);
    expect(codes(text)).toContain('condition-contradicted');
  });

  test.each([
    ['one line, both parts', 'Illuminant/Observer: D65/10'],
    ['one line, two pairs', '"Illuminant: D65, Observer: 10°"'],
    ['underscores', 'ILLUMINATION_NAME: D65\nOBSERVER_ANGLE: 10'],
    ['cells', 'Illuminant,D65\nObserver,10 deg'],
    ['cells, two pairs in a line', 'Illuminant,D65,Observer,10'],
    ['a sentence', 'D65/10°'],
    ['German', 'Lichtart: D65\nNormalbeobachter: 10°'],
    ['French', 'Illuminant: D65\nObservateur: 10°'],
    ['Spanish', 'Iluminante: D65\nObservador: 10 grados'],
    ['commented', '# Illuminant: D65\n# Observer: 10°'],
    ['an equals sign', 'Illuminant = D65\nObserver = CIE 1964'],
    ['the second statement is nearer', 'Illuminant: A\nIlluminant: D65\nObserver: 10'],
  ])('above the table: %s', (_, lines) => {
    expect(viewings(`${lines}\n\nName,L*,a*,b*\nx,45,1,2\n`)).toEqual([under('D65', '10')]);
  });

  test.each([
    ['WEIGHTING_FUNCTION "ILLUMINANT, D65"\nWEIGHTING_FUNCTION "OBSERVER, 10 degree"'],
    ['ILLUMINATION_NAME "D65"\nOBSERVER_ANGLE "10"'],
    ['ILLUMINANT "D65/10"'],
    ['ILLUMINANT "D65"\nOBSERVER "CIE 1964"'],
  ])('keyword text: %s', (keywords) => {
    const text = `${keywords}\nBEGIN_DATA_FORMAT\nSAMPLE_NAME LAB_L LAB_A LAB_B\nEND_DATA_FORMAT\nBEGIN_DATA\nx 45 1 2\nEND_DATA\n`;
    expect(viewings(text)).toEqual([under('D65', '10')]);
  });

  test('a list of illuminants settles nothing, and that is noted', () => {
    const text = 'Illuminant: D65 A F11\nObserver: 10\nName,L*,a*,b*\nx,45,1,2\n';
    expect(viewings(text)).toEqual([undefined]);
    expect(codes(text)).toEqual(expect.arrayContaining(['condition-contradicted', 'viewing-not-stated']));
  });

  test.each([
    ['Illuminant: booth lamp 3', 'illuminant'],
    ['Observer: the usual', 'observer'],
    ['Specular: partly', 'specular'],
  ])('%s is not understood, and that is noted', (line, part) => {
    expect(readMeasurements(`${line}\nName,L*,a*,b*\nx,45,1,2\n`).warnings).toContainEqual(
      expect.objectContaining({
        code: 'condition-not-understood',
        path: 'line 1, column 1',
        figures: expect.objectContaining({ part }),
      }),
    );
  });

  test('an illuminant of no known name in a heading leaves the colour without a viewing, noted', () => {
    const text = 'Name,L*(Q7/10),a*(Q7/10),b*(Q7/10)\nx,45,1,2\n';
    expect(viewings(text)).toEqual([undefined]);
    expect(codes(text)).toContain('condition-not-understood');
  });

  test('what stands only below the table is told and not applied', () => {
    const text = 'Name,L*,a*,b*\nx,45,1,2\n\nIlluminant: D65\n';
    expect(viewings(text)).toEqual([undefined]);
    expect(codes(text)).toContain('condition-after-data');
  });

  test('a line holds for the tables that follow until another is nearer', () => {
    const text =
      'Specular: included\nName,400,410\na,40,41\n\nName,400,410\nb,40,41\n\nSpecular: excluded\nName,400,410\nc,40,41\n';
    expect(readMeasurements(text).measurements.map(({ conditions }) => conditions.specular)).toEqual([
      'included',
      'included',
      'excluded',
    ]);
  });
});

describe('the specular mode', () => {
  test.each([
    ['Specular: included', 'included'],
    ['Specular component: excluded', 'excluded'],
    ['Specular: SCI', 'included'],
    ['Specular: no', 'excluded'],
    ['Mode: SCE', 'excluded'],
    ['Measurement mode: RSIN', 'included'],
    ['SCI', 'included'],
    ['specular excluded', 'excluded'],
    ['Gloss included', 'included'],
    ['Glanz: ausgeschlossen', 'excluded'],
    ['ohne Glanz', 'excluded'],
    ['Spéculaire: inclus', 'included'],
    ['read with the specular component excluded', 'excluded'],
    ['Geometry: di:8°', 'included'],
    ['Geometry: 8°:de', 'excluded'],
  ])('above the table: %s', (line, mode) => {
    expect(first(`${line}\nName,400,410\nx,40,41\n`).conditions.specular).toBe(mode);
  });

  test.each([
    ['beside a wavelength', 'Name,400 nm SCI,410 nm SCI\nx,40,41\n'],
    ['before a wavelength', 'Name,SCI 400,SCI 410\nx,40,41\n'],
    ['beside a coordinate', 'Name,L* SCI,a* SCI,b* SCI\nx,40,1,1\n'],
    ['beside a coordinate with its viewing', 'Name,L*(SCI D65/10),a*(SCI D65/10),b*(SCI D65/10)\nx,40,1,1\n'],
    ['in a column of its own', 'Name,Specular,400,410\nx,included,40,41\n'],
    ['in a column of modes', 'Name,Mode,400,410\nx,SCI,40,41\n'],
    ['in a column of types', 'Name,Type,400,410\nx,specular included,40,41\n'],
    ['as the heading of a transposed table', 'Sample name: x\n\nnm,SCI\n400,40\n410,41\n'],
    ['in a long table', 'Name,Mode,Wavelength,Value\nx,SCI,400,40\nx,SCI,410,41\n'],
  ])('%s', (_, text) => {
    expect(first(text)).toMatchObject({ name: 'x', conditions: { specular: 'included' } });
  });

  test('a name that carries it is believed where nothing else states it, and that is noted', () => {
    const text = 'Name,400,410\nblue SCE,40,41\nblue (SCI),42,43\nSCIENCE,44,45\n';
    expect(readMeasurements(text).measurements.map(({ conditions }) => conditions.specular)).toEqual([
      'excluded',
      'included',
      undefined,
    ]);
    expect(codes(text)).toContain('mode-from-name');
    expect(first(`Specular: included\n${text}`).conditions.specular).toBe('included');
  });

  const both = [
    { name: 'x', conditions: { specular: 'included' } },
    { name: 'x', conditions: { specular: 'excluded' } },
  ];

  test.each([
    ['wide', 'Name,400 SCI,410 SCI,400 SCE,410 SCE\nx,44,45,40,41\n'],
    ['long', 'Name,Wavelength,SCI,SCE\nx,400,44,40\nx,410,45,41\n'],
    ['long, in words', 'Name,Wavelength,Specular included,Specular excluded\nx,400,44,40\nx,410,45,41\n'],
    ['long, by rows', 'Name,Mode,Wavelength,R%\nx,SCI,400,44\nx,SCI,410,45\nx,SCE,400,40\nx,SCE,410,41\n'],
    ['transposed', 'Sample name: x\n\nnm,SCI,SCE\n400,44,40\n410,45,41\n'],
  ])('two modes side by side are two readings: %s', (_, text) => {
    const { measurements } = readMeasurements(text);
    expect(measurements).toMatchObject(both);
    expect(measurements.map(({ spectrum }) => spectrum?.values[0])).toEqual([0.44, 0.4]);
  });

  test('colours of two modes without spectra are one reading each only with their spectra; alone they keep their columns', () => {
    const text =
      'Name,400 SCI,410 SCI,L* SCI,a* SCI,b* SCI,400 SCE,410 SCE,L* SCE,a* SCE,b* SCE\nx,44,45,72,0,1,40,41,69,0,1\n';
    expect(readMeasurements(text).measurements.map(({ lab }) => lab?.L)).toEqual([72, 69]);
  });
});

test('a column of gloss readings, of types by letter, or a number above the table states no condition and leaves no row out', () => {
  const text = '10\nName,Gloss,Type,400,410\nx,85,A,40,41\ny,20.5,T,42,43\n';
  expect(readMeasurements(text).measurements.map(({ conditions }) => conditions)).toEqual([{}, {}]);
  expect(codes(text)).not.toContain('condition-not-understood');
});

describe('geometry, instrument, session', () => {
  test.each([
    ['d/8', 'd:8°'],
    ['di:8°', 'di:8°'],
    ['d:8', 'd:8°'],
    ['diffuse/8°', 'd:8°'],
    ['8°/d', '8°:d'],
    ['45/0', '45°:0°'],
    ['45.0°a : 0.0°', '45°a:0°'],
    ['0/45', '0°:45°'],
    ['45°c:0°', '45°c:0°'],
    ['sphere of the old bench', 'sphere of the old bench'],
  ])('geometry %s', (written, geometry) => {
    expect(first(`Geometry: ${written}\nName,400,410\nx,40,41\n`).conditions.geometry).toBe(geometry);
  });

  test('instrument, session and band-pass correction', () => {
    const text = 'Spectrophotometer: bench 2\nSession: 3 March\nBand-pass correction: no\nName,400,410\nx,40,41\n';
    expect(first(text).conditions).toEqual({ instrument: 'bench 2', session: '3 March', bandPass: 'not-corrected' });
  });
});
