import { geometryAt } from '../conditions/geometry-text.js';
import { noteNotUnderstood } from '../conditions/read-condition.js';
import type { StatedParts } from '../conditions/stated-parts.js';
import { parseStatement } from '../conditions/statement.js';
import type { Notes } from '../text/notes.js';
import { childOf, descendants, type XmlElement } from './xml-element.js';

/** What a `ColorSpecification` says of the values that refer to it. */
export interface ColourSpecification {
  readonly stated: StatedParts;
  /** First wavelength and step, nm, where it has them. */
  readonly start?: string;
  readonly step?: string;
  /** What was measured, such as `Spectrum_Reflectance`. */
  readonly measurementType?: string;
}

/** The colour specifications of a file by their identifiers. */
export function readColourSpecifications(root: XmlElement, notes: Notes): ReadonlyMap<string, ColourSpecification> {
  return new Map(
    descendants(root, 'ColorSpecification').map((element) => [
      element.attributes.get('Id') ?? '',
      toSpecification(element, notes),
    ]),
  );
}

function toSpecification(element: XmlElement, notes: Notes): ColourSpecification {
  const tristimulus = childOf(element, 'TristimulusSpec');
  const measurement = childOf(element, 'MeasurementSpec');
  const range = childOf(measurement, 'WavelengthRange');
  const start = range?.attributes.get('StartWL');
  const step = range?.attributes.get('Increment');
  const measurementType = childOf(measurement, 'MeasurementType')?.text;
  const device = childOf(measurement, 'Device');
  const instrument = [childOf(device, 'Manufacturer')?.text, childOf(device, 'Model')?.text].filter(Boolean).join(' ');
  return {
    stated: {
      ...readPart(tristimulus, 'Illuminant', 'illuminant', notes),
      ...readPart(tristimulus, 'Observer', 'observer', notes),
      ...readGeometry(childOf(measurement, 'GeometryChoice')),
      ...(instrument ? { instrument } : {}),
    },
    ...(start === undefined ? {} : { start }),
    ...(step === undefined ? {} : { step }),
    ...(measurementType ? { measurementType } : {}),
  };
}

function readPart(
  parent: XmlElement | undefined,
  name: string,
  part: 'illuminant' | 'observer',
  notes: Notes,
): StatedParts {
  const element = childOf(parent, name);
  if (!element || element.text === '') return {};
  const { parts } = parseStatement(element.text, part);
  const value = parts[part];
  if (value !== undefined) return { [part]: value };
  noteNotUnderstood(part, element.text, `line ${element.line}, column 1`, notes);
  return {};
}

/**
 * A single angle as `45°:0°` (annular `45°a:0°`, circumferential `45°c:0°`); a sphere by its specular component, with the angle where it is given. An
 * element of any name that begins with Sphere is looked at, since writers differ in it.
 */
function readGeometry(choice: XmlElement | undefined): Pick<StatedParts, 'geometry' | 'specular'> {
  const single = childOf(choice, 'SingleAngle');
  if (single) {
    const form = /(annular|circumferential)/i.exec(childOf(single, 'SingleAngleConfiguration')?.text ?? '')?.[1] ?? '';
    const angles = ['IlluminationAngle', 'MeasurementAngle'].map((name) => childOf(single, name)?.text ?? '');
    const written = `${angles[0]}${form.charAt(0).toLowerCase()}:${angles[1]}`;
    const geometry = geometryAt(written)?.geometry;
    return { ...specularOf(choice), ...(geometry ? { geometry } : {}) };
  }
  const own = childOf(choice, 'Geometry')?.text;
  const sphere = choice?.children.find(({ name }) => name.startsWith('Sphere'));
  if (!sphere) return own ? { geometry: geometryAt(own)?.geometry ?? own } : {};
  const texts = [sphere, ...allBelow(sphere)];
  const { parts } = parseStatement(texts.map(({ text }) => text).join(' '), 'specular');
  const angle = texts.find(({ name }) => name === 'MeasurementAngle')?.text;
  const letter = parts.specular?.charAt(0) ?? '';
  return {
    ...(own ? { geometry: geometryAt(own)?.geometry ?? own } : {}),
    ...(angle ? { geometry: `d${letter}:${Number(angle)}°` } : {}),
    ...(parts.specular ? { specular: parts.specular } : {}),
  };
}

function specularOf(choice: XmlElement | undefined): Pick<StatedParts, 'specular'> {
  const text = childOf(choice, 'SphereGeometry')?.text ?? '';
  const { specular } = parseStatement(text, 'specular').parts;
  return specular ? { specular } : {};
}

function allBelow({ children }: XmlElement): XmlElement[] {
  return children.flatMap((child) => [child, ...allBelow(child)]);
}
