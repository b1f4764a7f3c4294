import { describe, expect, test } from 'vitest';
import { readMeasurements } from '../../../src/exchange/index.js';
import { faultOf } from '../fault-of.js';

function cxf(
  objects: string,
  specifications = '<ColorSpecification Id="s"><MeasurementSpec><WavelengthRange StartWL="400" Increment="10"/></MeasurementSpec></ColorSpecification>',
): string {
  return `<?xml version="1.0"?>
<CxF xmlns="http://colorexchangeformat.com/CxF3-core">
<Resources><ObjectCollection>
${objects}
</ObjectCollection><ColorSpecificationCollection>${specifications}</ColorSpecificationCollection></Resources>
</CxF>
`;
}

function object(values: string, attributes = 'Name="a" Id="1"', rest = ''): string {
  return `<Object ${attributes}><ColorValues>${values}</ColorValues>${rest}</Object>`;
}

const SPECTRUM = '<ReflectanceSpectrum ColorSpecification="s">0.452 0.461</ReflectanceSpectrum>';

test('spectra of several objects, prefixed or not', () => {
  const text = cxf(object(SPECTRUM) + object(SPECTRUM.replace('0.452', '0.5'), 'Name="b" Id="2"'));
  for (const variant of [text, text.replace(/<(\/?)(?=[A-Z])/g, '<$1q:').replace('xmlns=', 'xmlns:q=')]) {
    const { format, measurements, tables } = readMeasurements(variant);
    expect(format).toBe('iso-17972');
    expect(measurements.map(({ name, spectrum }) => [name, ...(spectrum?.values ?? [])])).toEqual([
      ['a', 0.452, 0.461],
      ['b', 0.5, 0.461],
    ]);
    expect(tables).toMatchObject([{ count: 2, grid: { start: 400, step: 10, count: 2 }, scale: 'fraction' }]);
  }
});

test('several spectra of one object, each with the colour of its specification', () => {
  const specification = (id: string, illuminant: string) =>
    `<ColorSpecification Id="${id}"><TristimulusSpec><Illuminant>${illuminant}</Illuminant><Observer>2_Degree</Observer></TristimulusSpec><MeasurementSpec><WavelengthRange StartWL="400" Increment="10"/></MeasurementSpec></ColorSpecification>`;
  const values = `<ReflectanceSpectrum Name="M0" ColorSpecification="m0">.4 .5</ReflectanceSpectrum><ReflectanceSpectrum Name="M1" ColorSpecification="m1">.41 .51</ReflectanceSpectrum>
    <ColorCIELab ColorSpecification="m1"><L>70</L><A>1</A><B>2</B></ColorCIELab><ColorCIELab ColorSpecification="m0"><L>69</L><A>1</A><B>2</B></ColorCIELab>`;
  const { measurements } = readMeasurements(
    cxf(object(values), specification('m0', 'D50') + specification('m1', 'D65')),
  );
  expect(measurements).toMatchObject([
    {
      name: 'a',
      lab: { L: 69 },
      conditions: { viewing: { illuminant: 'D50', observer: '2' } },
      fields: { Spectrum: 'M0' },
    },
    {
      name: 'a',
      lab: { L: 70 },
      conditions: { viewing: { illuminant: 'D65', observer: '2' } },
      fields: { Spectrum: 'M1' },
    },
  ]);
});

test('colours without a spectrum, sphere geometry, device and tags', () => {
  const specification = `<ColorSpecification Id="s"><TristimulusSpec><Illuminant>D65</Illuminant><Observer>10_Degree</Observer></TristimulusSpec><MeasurementSpec><GeometryChoice><Sphere><SphereConfiguration>Specular_Included</SphereConfiguration><MeasurementAngle>8</MeasurementAngle></Sphere></GeometryChoice><Device><Model>bench</Model></Device></MeasurementSpec></ColorSpecification>`;
  const values = '<ColorCIEXYZ ColorSpecification="s"><X>17</X><Y>18.4</Y><Z>15</Z></ColorCIEXYZ>';
  const tags =
    '<TagCollection Name="Tint"><Tag Name="SpotInkPercent" Value="50"/><Tag Name="__proto__" Value="x"/></TagCollection>';
  const { measurements } = readMeasurements(cxf(object(values, 'Name="spot 50" Id="1"', tags), specification));
  expect(measurements[0]).toMatchObject({
    name: 'spot 50',
    xyz: { X: 17, Y: 18.4, Z: 15 },
    conditions: {
      viewing: { illuminant: 'D65', observer: '10' },
      geometry: 'di:8°',
      specular: 'included',
      instrument: 'bench',
    },
  });
  expect(Object.entries(measurements[0].fields)).toContainEqual(['SpotInkPercent', '50']);
  expect(Object.getPrototypeOf(measurements[0].fields)).toBe(Object.prototype);
});

test('characters by number and the five entities are read in names', () => {
  expect(readMeasurements(cxf(object(SPECTRUM, 'Name="Wei&#223; &amp; matt" Id="1"'))).measurements[0].name).toBe(
    'Weiß & matt',
  );
});

describe('damaged or other files', () => {
  test.each([
    ['a document type', `<!DOCTYPE CxF [<!ENTITY a "aaaa">]>${cxf(object(SPECTRUM))}`, 'malformed', 'line 1, column 1'],
    [
      'an external entity',
      cxf(object(SPECTRUM)).replace('<CxF', '<!DOCTYPE x SYSTEM "file:///etc/hostname">\n<CxF'),
      'malformed',
      'line 2, column 1',
    ],
    ['other XML', '<svg xmlns="http://www.w3.org/2000/svg"/>', 'unknown-format', 'line 1, column 1'],
    ['a cut file', cxf(object(SPECTRUM)).slice(0, 150), 'truncated', 'line 4, column 44'],
    [
      'crossed elements',
      cxf(object(SPECTRUM)).replace('</ColorValues></Object>', '</Object></ColorValues>'),
      'malformed',
      undefined,
    ],
    ['a non-number', cxf(object(SPECTRUM.replace('0.461', 'x'))), 'not-a-number', 'line 4, reading 2'],
    ['no wavelengths', cxf(object(SPECTRUM), '<ColorSpecification Id="s"/>'), 'no-header', 'line 4, column 1'],
    [
      'no specification',
      cxf(object(SPECTRUM.replace('ColorSpecification="s"', '')), ''),
      'no-header',
      'line 4, column 1',
    ],
    ['a single reading', cxf(object(SPECTRUM.replace('0.461', ''))), 'grid-invalid', 'line 4, reading 1'],
    [
      'transmittance',
      cxf(object(SPECTRUM.replaceAll('Reflectance', 'Transmittance'))),
      'unsupported-quantity',
      'line 4, column 1',
    ],
    [
      'emission',
      cxf(
        object(SPECTRUM),
        '<ColorSpecification Id="s"><MeasurementSpec><MeasurementType>Spectrum_Emissive</MeasurementType></MeasurementSpec></ColorSpecification>',
      ),
      'unsupported-quantity',
      'line 4, column 1',
    ],
    [
      'an incomplete colour',
      cxf(object('<ColorCIELab><L>50</L><A>1</A></ColorCIELab>')),
      'not-a-number',
      'line 4, object "a"',
    ],
    ['no object', cxf(''), 'empty-file', 'line 1, column 1'],
  ] as const)('%s', (_, text, code, path) => {
    expect(faultOf(text)).toMatchObject(path === undefined ? { code } : { code, path });
  });

  test('deep nesting ends in a fault', () => {
    const deep = `${'<a>'.repeat(5000)}${'</a>'.repeat(5000)}`;
    expect(faultOf(deep)).toMatchObject({ code: 'malformed' });
  });
});
