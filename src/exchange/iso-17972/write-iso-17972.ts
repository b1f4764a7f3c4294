import { describeViewing, type Grid, gridOf, type Viewing } from '../../colorimetry/index.js';
import { describeGrid } from '../../colorimetry/internal.js';
import { TintladderError } from '../../core/index.js';
import type { Measurement } from '../measurement/measurement.js';
import { coloursOf, toBlocks } from '../measurement/measurement-blocks.js';
import { BAND_PASS_TAG, NO_TYPE, OWN_ID, REPLICATE_TAG, SESSION_TAG } from './own-tags.js';

/** Fields that ISO 17972 has a place of its own for. */
const PLACED = new Set(['ObjectType', 'Id', 'Spectrum']);

/** What a `ColorSpecification` says, by its identifier. */
interface Specification {
  readonly id: string;
  readonly viewing?: Viewing | undefined;
  readonly grid?: Grid | undefined;
  readonly conditions: Measurement['conditions'];
}

/**
 * Writes measurements in the XML colour exchange of ISO 17972: an object each, with its spectrum, its colours, and its fields as tags.
 *
 * @see ISO 17972-1, Graphic technology: colour data exchange format (CxF/X)
 */
export function writeIso17972(measurements: readonly Measurement[]): string {
  toBlocks(measurements);
  const specifications = new Map<string, Specification>();
  const specify = (one: Omit<Specification, 'id'>): string => {
    const { specular, geometry, instrument } = one.conditions;
    const viewing = one.viewing && describeViewing(one.viewing);
    const key = JSON.stringify([viewing, one.grid && describeGrid(one.grid), specular, geometry, instrument]);
    const known = specifications.get(key) ?? { ...one, id: `${OWN_ID}s${specifications.size + 1}` };
    specifications.set(key, known);
    return known.id;
  };
  const objects = measurements.map((measurement, i) => writeObject(measurement, i, specify));
  return [
    '<?xml version="1.0" encoding="UTF-8"?>',
    '<cc:CxF xmlns:cc="http://colorexchangeformat.com/CxF3-core">',
    element('FileInformation', {}, [
      element('Creator', {}, ['tintladder']),
      element('Description', {}, ['Reflectance values in fractions of 1']),
    ]),
    '<cc:Resources>',
    '<cc:ObjectCollection>',
    ...objects,
    '</cc:ObjectCollection>',
    '<cc:ColorSpecificationCollection>',
    ...[...specifications.values()].map(writeSpecification),
    '</cc:ColorSpecificationCollection>',
    '</cc:Resources>',
    '</cc:CxF>',
    '',
  ].join('\n');
}

function writeObject(
  measurement: Measurement,
  index: number,
  specify: (one: Omit<Specification, 'id'>) => string,
): string {
  const { name, spectrum, replicate, conditions, fields } = measurement;
  const { session, bandPass } = conditions;
  refuseUnwritable(name, `measurements[${index}].name`);
  const colours = coloursOf(measurement);
  const values = [
    ...(spectrum
      ? [
          element(
            'ReflectanceSpectrum',
            {
              ...(fields.Spectrum === undefined ? {} : { Name: fields.Spectrum }),
              ColorSpecification: specify({
                grid: gridOf(spectrum),
                conditions,
                viewing: colours.length > 0 ? undefined : conditions.viewing,
              }),
              StartWL: String(spectrum.start),
            },
            [Array.from(spectrum.values, String).join(' ')],
          ),
        ]
      : []),
    ...colours.map(({ space, viewing, values: triple }) => {
      const [tag, names] = space === 'lab' ? (['ColorCIELab', 'LAB'] as const) : (['ColorCIEXYZ', 'XYZ'] as const);
      const parts = triple.map((value, i) => element(names[i], {}, [String(value)]));
      return element(tag, { ColorSpecification: specify({ viewing, conditions }) }, parts);
    }),
  ];
  const tags = [
    ...Object.entries(fields).filter(([label]) => !PLACED.has(label)),
    ...(replicate === undefined ? [] : [[REPLICATE_TAG, replicate]]),
    ...(session === undefined ? [] : [[SESSION_TAG, session]]),
    ...(bandPass === undefined ? [] : [[BAND_PASS_TAG, bandPass]]),
  ].map(([label, value]) => element('Tag', { Name: label, Value: value }, []));
  const attributes = { ObjectType: fields.ObjectType ?? NO_TYPE, Name: name, Id: fields.Id ?? `${OWN_ID}${index + 1}` };
  return element('Object', attributes, [
    element('ColorValues', {}, values),
    ...(tags.length > 0 ? [element('TagCollection', { Name: 'Fields' }, tags)] : []),
  ]);
}

function writeSpecification({ id, viewing, grid, conditions }: Specification): string {
  const { geometry, specular, instrument } = conditions;
  const tristimulus = viewing
    ? [
        element('TristimulusSpec', {}, [
          element('Illuminant', {}, [
            typeof viewing.illuminant === 'string' ? viewing.illuminant : viewing.illuminant.name,
          ]),
          element('Observer', {}, [`${viewing.observer}_Degree`]),
        ]),
      ]
    : [];
  const measurement = [
    ...(grid ? [element('MeasurementType', {}, ['Spectrum_Reflectance'])] : []),
    ...(geometry || specular ? [element('GeometryChoice', {}, writeGeometry(geometry, specular))] : []),
    ...(instrument ? [element('Device', {}, [element('Model', {}, [instrument])])] : []),
    ...(grid ? [element('WavelengthRange', { StartWL: String(grid.start), Increment: String(grid.step) }, [])] : []),
  ];
  return element('ColorSpecification', { Id: id }, [
    ...tristimulus,
    ...(measurement.length > 0 ? [element('MeasurementSpec', {}, measurement)] : []),
  ]);
}

const ANGLES = /^(\d+)°([ac]?):(\d+)°$/;
const FORMS: Readonly<Record<string, string>> = { a: 'Annular', c: 'Circumferential', '': 'Uniplanar' };

function writeGeometry(geometry: string | undefined, specular: Measurement['conditions']['specular']): string[] {
  const angles = geometry === undefined ? null : ANGLES.exec(geometry);
  const sphere = specular
    ? [element('SphereGeometry', {}, [specular === 'included' ? 'Specular_Included' : 'Specular_Excluded'])]
    : [];
  if (!angles) return [...sphere, ...(geometry === undefined ? [] : [element('Geometry', {}, [geometry])])];
  return [
    element('SingleAngle', {}, [
      element('SingleAngleConfiguration', {}, [FORMS[angles[2]] ?? 'Uniplanar']),
      element('IlluminationAngle', {}, [angles[1]]),
      element('MeasurementAngle', {}, [angles[3]]),
    ]),
    ...sphere,
  ];
}

function element(name: string, attributes: Readonly<Record<string, string>>, content: readonly string[]): string {
  const written = Object.entries(attributes).map(([key, value]) => ` ${key}="${escapeXml(value)}"`);
  const start = `<cc:${name}${written.join('')}`;
  if (content.length === 0) return `${start}/>`;
  return `${start}>${content.map((part) => (part.startsWith('<') ? part : escapeXml(part))).join('')}</cc:${name}>`;
}

/** Line breaks and tabs in an attribute would be read as blanks, so they are written by number. */
function escapeXml(text: string): string {
  return text
    .replace(/&/g, '&amp;')
    .replace(/</g, '&lt;')
    .replace(/>/g, '&gt;')
    .replace(/"/g, '&quot;')
    .replace(/[\t\n\r]/g, (character) => `&#${character.charCodeAt(0)};`);
}

/** @throws TintladderError `malformed` for a character that XML can't hold */
function refuseUnwritable(text: string, path: string): void {
  // biome-ignore lint/suspicious/noControlCharactersInRegex: control characters are what is looked for
  if (!/[\u0000-\u0008\u000b\u000c\u000e-\u001f\ufffe\uffff]/.test(text)) return;
  throw new TintladderError('malformed', { path, received: text, expected: 'a text without control characters' });
}
