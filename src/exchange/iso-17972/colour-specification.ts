import type { Conditions } from '../../colorimetry/index.js';
import { parseIlluminant, parseObserver } from '../conditions/stated-conditions.js';
import { childOf, descendants, type XmlElement } from './xml-element.js';

/** What a `ColorSpecification` says of the values that refer to it. */
export interface ColourSpecification {
  readonly conditions: Conditions;
  /** First wavelength and step, nm, where it has them. */
  readonly start?: string;
  readonly step?: string;
  /** What was measured, such as `Spectrum_Reflectance`. */
  readonly measurementType?: string;
}

/** The colour specifications of a file by their identifiers. */
export function readColourSpecifications(root: XmlElement): ReadonlyMap<string, ColourSpecification> {
  return new Map(
    descendants(root, 'ColorSpecification').map((element) => [
      element.attributes.get('Id') ?? '',
      toSpecification(element),
    ]),
  );
}

function toSpecification(element: XmlElement): ColourSpecification {
  const tristimulus = childOf(element, 'TristimulusSpec');
  const measurement = childOf(element, 'MeasurementSpec');
  const illuminant = parseIlluminant(childOf(tristimulus, 'Illuminant')?.text ?? '');
  const observer = parseObserver((childOf(tristimulus, 'Observer')?.text ?? '').replaceAll('_', ' '));
  const range = childOf(measurement, 'WavelengthRange');
  const start = range?.attributes.get('StartWL');
  const step = range?.attributes.get('Increment');
  const measurementType = childOf(measurement, 'MeasurementType')?.text;
  const geometry = readGeometry(childOf(measurement, 'GeometryChoice'));
  const device = childOf(measurement, 'Device');
  const instrument = [childOf(device, 'Manufacturer')?.text, childOf(device, 'Model')?.text].filter(Boolean).join(' ');
  return {
    conditions: {
      ...(illuminant && observer ? { viewing: { illuminant, observer } } : {}),
      ...geometry,
      ...(instrument ? { instrument } : {}),
    },
    ...(start === undefined ? {} : { start }),
    ...(step === undefined ? {} : { step }),
    ...(measurementType ? { measurementType } : {}),
  };
}

/** A single angle as `45°:0°` (annular `45°a:0°`), a sphere as `di:8°` or `de:8°` with its specular component. */
function readGeometry(choice: XmlElement | undefined): Pick<Conditions, 'geometry' | 'specular'> {
  const single = childOf(choice, 'SingleAngle');
  if (single) {
    const annular = /annular/i.test(childOf(single, 'SingleAngleConfiguration')?.text ?? '') ? 'a' : '';
    const illumination = childOf(single, 'IlluminationAngle')?.text;
    const measurement = childOf(single, 'MeasurementAngle')?.text;
    return illumination && measurement ? { geometry: `${illumination}°${annular}:${measurement}°` } : {};
  }
  const sphere = childOf(choice, 'Sphere');
  if (!sphere) return {};
  const words = sphere.children.map(({ text }) => text).join(' ');
  const specular = /exclud|\bSPEX\b/i.test(words)
    ? 'excluded'
    : /includ|\bSPIN\b/i.test(words)
      ? 'included'
      : undefined;
  const angle = childOf(sphere, 'MeasurementAngle')?.text;
  const letter = specular === 'included' ? 'i' : specular === 'excluded' ? 'e' : '';
  return { ...(angle ? { geometry: `d${letter}:${angle}°` } : {}), ...(specular ? { specular } : {}) };
}
