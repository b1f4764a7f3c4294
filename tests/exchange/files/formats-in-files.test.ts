import { Readable } from 'node:stream';
import { describe, expect, test } from 'vitest';
import { createSpectrum } from '../../../src/colorimetry/index.js';
import {
  type Measurement,
  readMeasurementStream,
  readMeasurements,
  type StreamOptions,
  type StreamSummary,
  writeMeasurements,
} from '../../../src/exchange/index.js';
import { faultOf } from '../fault-of.js';

// Hand-made files of the open standards, each with what is expected and why.

const cxf = (values: string, specification: string) => `<?xml version="1.0"?>
<CxF xmlns="http://colorexchangeformat.com/CxF3-core"><Resources><ObjectCollection>
<Object ObjectType="Target" Name="x" Id="1"><ColorValues>${values}</ColorValues></Object>
</ObjectCollection><ColorSpecificationCollection>${specification}</ColorSpecificationCollection></Resources></CxF>
`;
const specification = (measurement: string, tristimulus = '') =>
  `<ColorSpecification Id="s">${tristimulus}<MeasurementSpec>${measurement}<WavelengthRange StartWL="400" Increment="10"/></MeasurementSpec></ColorSpecification>`;
const SPECTRUM = '<ReflectanceSpectrum ColorSpecification="s">0.4 0.41</ReflectanceSpectrum>';
const first = (text: string) => readMeasurements(text).measurements[0];

describe('ISO 17972', () => {
  test.each([
    ['<GeometryChoice><SphereGeometry>Specular_Included</SphereGeometry></GeometryChoice>', { specular: 'included' }],
    ['<GeometryChoice><SphereGeometry>Specular_Excluded</SphereGeometry></GeometryChoice>', { specular: 'excluded' }],
    [
      '<GeometryChoice><Sphere><SphereGeometry>Specular_Excluded</SphereGeometry></Sphere></GeometryChoice>',
      { specular: 'excluded' },
    ],
    [
      '<GeometryChoice><SingleAngle><SingleAngleConfiguration>Annular</SingleAngleConfiguration><IlluminationAngle>45.0</IlluminationAngle><MeasurementAngle>0.0</MeasurementAngle></SingleAngle></GeometryChoice>',
      { geometry: '45°a:0°' },
    ],
    [
      '<GeometryChoice><SingleAngle><SingleAngleConfiguration>Uniplanar</SingleAngleConfiguration><IlluminationAngle>45</IlluminationAngle><MeasurementAngle>0</MeasurementAngle></SingleAngle></GeometryChoice>',
      { geometry: '45°:0°' },
    ],
    ['<Device><Model>bench 2</Model></Device>', { instrument: 'bench 2' }],
  ])('%s', (measurement, conditions) => {
    expect(first(cxf(SPECTRUM, specification(measurement))).conditions).toEqual(conditions);
  });

  test('a percentage is the fraction that its digits say', () => {
    const text = cxf(SPECTRUM.replace('0.4 0.41', '88.1 65.8'), specification(''));
    expect([...(first(text).spectrum?.values ?? [])]).toEqual([0.881, 0.658]);
  });

  test('several colours of an object are kept, each with the viewing of its own specification', () => {
    const viewing = (id: string, illuminant: string) =>
      `<ColorSpecification Id="${id}"><TristimulusSpec><Illuminant>${illuminant}</Illuminant><Observer>10_Degree</Observer></TristimulusSpec></ColorSpecification>`;
    const colour = (id: string, L: number) =>
      `<ColorCIELab ColorSpecification="${id}"><L>${L}</L><A>0</A><B>0</B></ColorCIELab>`;
    const text = cxf(
      SPECTRUM + colour('a', 70) + colour('b', 71),
      specification('') + viewing('a', 'A') + viewing('b', 'D65'),
    );
    expect(first(text).colours).toMatchObject([
      { lab: { L: 70 }, viewing: { illuminant: 'A', observer: '10' } },
      { lab: { L: 71 }, viewing: { illuminant: 'D65', observer: '10' } },
    ]);
  });

  test('an illuminant of no known name is noted', () => {
    const tristimulus =
      '<TristimulusSpec><Illuminant>Booth3</Illuminant><Observer>10_Degree</Observer></TristimulusSpec>';
    expect(readMeasurements(cxf(SPECTRUM, specification('', tristimulus))).warnings).toContainEqual(
      expect.objectContaining({ code: 'condition-not-understood', figures: { part: 'illuminant', stated: 'Booth3' } }),
    );
  });
});

describe('JCAMP-DX', () => {
  const block = (records: string, data: string) =>
    `##TITLE=x\n##JCAMP-DX=4.24\n##DATA TYPE=UV/VIS SPECTRUM\n##YUNITS=PERCENT REFLECTANCE\n${records}${data}\n##END=\n`;
  const evenly = '##FIRSTX=400\n##LASTX=420\n##NPOINTS=3\n';

  test.each(['NANOMETERS', 'nm', 'Wavelength (nm)', 'WAVELENGTH, NANOMETERS', 'Nanometres'])('XUNITS=%s', (unit) => {
    const text = block(`##XUNITS=${unit}\n${evenly}`, '##XYDATA=(X++(Y..Y))\n400 40 41 42');
    expect(first(text).spectrum).toMatchObject({ start: 400, step: 10 });
  });

  test('pairs under XYDATA', () => {
    const text = block('##XUNITS=NM\n', '##XYDATA=(XY..XY)\n400, 40; 410, 41\n420, 42');
    expect([...(first(text).spectrum?.values ?? [])]).toEqual([0.4, 0.41, 0.42]);
  });

  test('FIRSTY is a check, MINY and MAXY are told', () => {
    const data = '##XYDATA=(X++(Y..Y))\n400 40 41 42';
    expect(faultOf(block(`##XUNITS=NM\n${evenly}##FIRSTY=35\n`, data))).toMatchObject({
      code: 'malformed',
      path: 'line 11, column 1',
      received: 40,
    });
    const read = readMeasurements(block(`##XUNITS=NM\n${evenly}##FIRSTY=40\n##MAXY=90\n`, data));
    expect(read.warnings).toContainEqual(expect.objectContaining({ code: 'limits-differ', path: 'line 10, column 1' }));
  });

  test('conditions in records of its own', () => {
    const text = block(
      `##XUNITS=NM\n${evenly}##$SPECULAR COMPONENT=excluded\n##$GEOMETRY=d/8\n`,
      '##XYDATA=(X++(Y..Y))\n400 40 41 42',
    );
    expect(first(text).conditions).toEqual({ specular: 'excluded', geometry: 'd:8°' });
  });

  test.each(['ABSORBANCE', 'TRANSMITTANCE', 'LOG(1/R)', 'COUNTS', 'ARBITRARY UNITS'])(
    'YUNITS=%s is refused',
    (unit) => {
      const text = block(`##XUNITS=NM\n${evenly}`, '##XYDATA=(X++(Y..Y))\n400 40 41 42').replace(
        'PERCENT REFLECTANCE',
        unit,
      );
      expect(faultOf(text)).toMatchObject({ code: 'unsupported-quantity', path: 'line 4, column 1' });
    },
  );
});

describe('writing', () => {
  const values = [0.1, 1.7, -0.001, 0.5];
  const spectrum = createSpectrum({ start: 380, step: 10 / 3, values, scale: 'fraction' });
  const odd = (name: string): Measurement => ({ name, spectrum, conditions: {}, fields: {} });

  test.each(['delimited-text', 'iso-28178', 'iso-17972'] as const)('odd names and grids come back: %s', (format) => {
    const measurements = [
      'Mean',
      '# 1',
      '"quoted"',
      'a,b;c\td',
      '400',
      'Max',
      'L*',
      '<tag> & more',
      "it's",
      '=1+1',
    ].map(odd);
    const read = readMeasurements(writeMeasurements(measurements, { format })).measurements;
    expect(read.map(({ line, ...rest }) => rest)).toEqual(measurements);
  });

  test('what is not stated is not written', () => {
    const text = writeMeasurements([odd('x')], { format: 'iso-28178' });
    expect(text).not.toContain('""');
    expect(text).not.toMatch(/WEIGHTING_FUNCTION|GEOMETRY|INSTRUMENT|SPECULAR/);
  });

  test('a statement ends where a later measurement does not make it', () => {
    const stated: Measurement = {
      ...odd('x'),
      conditions: { specular: 'included', geometry: 'd:8°', instrument: 'bench' },
    };
    for (const format of ['delimited-text', 'iso-28178', 'iso-17972'] as const) {
      const read = readMeasurements(writeMeasurements([stated, odd('y'), stated], { format })).measurements;
      expect(read.map(({ conditions }) => conditions)).toEqual([stated.conditions, {}, stated.conditions]);
    }
  });

  test.each(['delimited-text', 'iso-28178', 'iso-17972'] as const)('several colours come back: %s', (format) => {
    const viewings = [
      { illuminant: 'FL2', observer: '10' },
      { illuminant: 'FL10', observer: '2' },
    ] as const;
    const colours = viewings.map((viewing, i) => ({ lab: { L: 45 + i, a: 1, b: 2 }, viewing }));
    const measurement: Measurement = {
      name: 'x',
      lab: colours[0].lab,
      colours,
      conditions: { viewing: viewings[0] },
      fields: {},
    };
    const [{ line, ...read }] = readMeasurements(writeMeasurements([measurement], { format })).measurements;
    expect(read).toEqual(measurement);
  });
});

describe('streams', () => {
  const TEXT = 'Sample,400,410\nweiß,92,93\n';
  const KEYWORDS =
    'BEGIN_DATA_FORMAT\nSAMPLE_NAME SPEC_400 SPEC_410\nEND_DATA_FORMAT\nNUMBER_OF_SETS 2\nBEGIN_DATA\nx 40 41\n"y z" 42 43\nEND_DATA\n';
  const bytes = (text: string) => new TextEncoder().encode(text);
  async function* pieces(all: Uint8Array, size: number) {
    for (let at = 0; at < all.length; at += size) yield all.subarray(at, at + size);
  }
  async function names(source: Parameters<typeof readMeasurementStream>[0], options: StreamOptions = {}) {
    const found: string[] = [];
    for await (const { name } of readMeasurementStream(source, options)) found.push(name);
    return found;
  }

  test.each([
    ['a web stream', () => new Blob([TEXT]).stream()],
    ['a Node stream', () => Readable.from([Buffer.from(TEXT)])],
    ['an async iterable', () => pieces(bytes(TEXT), 5)],
  ])('%s', async (_, open) => {
    expect(await names(open())).toEqual(['weiß']);
  });

  test.each([
    ['delimited-text', TEXT, ['weiß']],
    ['iso-28178', KEYWORDS, ['x', 'y z']],
    ['iso-17972', cxf(SPECTRUM, specification('')), ['x']],
    [
      'jcamp-dx',
      '##TITLE=x\n##JCAMP-DX=4.24\n##XUNITS=NM\n##YUNITS=REFLECTANCE\n##FIRSTX=400\n##LASTX=410\n##NPOINTS=2\n##XYDATA=(X++(Y..Y))\n400 .4 .5\n##END=\n',
      ['x'],
    ],
  ])('%s is recognised in a stream, in pieces of any size', async (format, text, expected) => {
    for (const size of [1, 7, 1000]) {
      let summary: StreamSummary | undefined;
      const onEnd = (end: StreamSummary) => {
        summary = end;
      };
      expect(await names(pieces(bytes(text), size), { onEnd })).toEqual(expected);
      expect(summary?.format).toBe(format);
    }
  });

  test('Windows-1252 streams too, as the whole file is read', async () => {
    const windows = Uint8Array.from(TEXT, (character) => character.charCodeAt(0));
    let warnings: readonly { code: string }[] = [];
    const onEnd = (end: StreamSummary) => {
      warnings = end.warnings;
    };
    expect(await names(pieces(windows, 4), { onEnd })).toEqual(['weiß']);
    expect(warnings.map(({ code }) => code)).toContain('windows-1252-assumed');
  });

  test('a signal ends the reading with its reason, also while a source is silent', async () => {
    const controller = new AbortController();
    let closed = false;
    async function* silent() {
      try {
        yield bytes('Sample,400,410\n');
        await new Promise(() => undefined);
      } finally {
        closed = true;
      }
    }
    const reading = names(silent(), { signal: controller.signal });
    setTimeout(() => controller.abort(new Error('enough')), 5);
    await expect(reading).rejects.toThrow('enough');
    // a generator that waits can't be closed; one that has not begun is never opened
    expect(closed).toBe(false);
    await expect(names(pieces(bytes(TEXT), 5), { signal: AbortSignal.abort(new Error('before')) })).rejects.toThrow(
      'before',
    );
  });

  test.each([[null], ['text'], [{}], [7]])('%j is no source of bytes', async (source) => {
    await expect(names(source as never)).rejects.toMatchObject({ code: 'invalid-option', path: 'stream' });
  });

  test('pieces that are no bytes are refused', async () => {
    await expect(names(Readable.from(['text']) as never)).rejects.toMatchObject({
      code: 'invalid-option',
      path: 'stream',
    });
  });
});
