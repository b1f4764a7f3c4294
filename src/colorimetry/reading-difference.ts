import { TintladderError, type Warning } from '../core/index.js';
import { type Lab, labFromSpectrum, labFromXyz } from './cielab.js';
import { type ColourDifference, colourDifference } from './colour-difference.js';
import type { Conditions, Reading } from './reading.js';
import { describeViewing, type Viewing } from './viewing.js';
import { whitePoint } from './xyz-from-spectrum.js';

/** A colour difference with the conditions it belongs to. */
export interface ReadingDifference extends ColourDifference {
  readonly viewing: Viewing;
  /** What both readings state alike. */
  readonly conditions: Conditions;
  readonly warnings: readonly Warning[];
}

const OPTICAL = ['specular', 'geometry'] as const;

/**
 * The colour difference of two readings, refused when they were taken under different conditions.
 *
 * A spectrum is computed under `viewing`; Lab and XYZ are taken as they were read and must belong to that viewing. A condition that only one
 * reading states can't be compared and is noted, as is a change of instrument.
 *
 * @param reference - reading of the standard: spectrum, Lab or XYZ with its conditions
 * @param sample - reading of the sample
 * @param options - illuminant and observer
 * @returns all parts of the difference, with viewing, common conditions and warnings
 * @throws TintladderError `conditions-mismatch` if illuminant, observer, geometry or the treatment of the specular reflection differ,
 * or if Lab or XYZ come without their illuminant and observer; `empty` for a reading without a colour
 * @example
 * const conditions = { viewing: D65_10, specular: 'included' };
 * const reference = { name: 'standard', lab: { L: 50, a: 0, b: 0 }, conditions };
 * const sample = { name: 'batch', lab: { L: 51, a: 0, b: 0 }, conditions: { ...conditions, specular: 'excluded' } };
 * colourDifferenceOfReadings(reference, sample, { viewing: D65_10 }) // throws conditions-mismatch
 * @see ISO/CIE 11664-4; ASTM E1164 for the conditions that belong to a reading
 */
export function colourDifferenceOfReadings(
  reference: Reading,
  sample: Reading,
  { viewing }: { readonly viewing: Viewing },
): ReadingDifference {
  const warnings: Warning[] = [];
  for (const condition of OPTICAL) {
    const stated = reference.conditions[condition];
    const received = sample.conditions[condition];
    if (stated !== undefined && received !== undefined && stated !== received) {
      throw new TintladderError('conditions-mismatch', {
        path: `sample.conditions.${condition}`,
        received,
        expected: `${JSON.stringify(stated)}, as of the reference`,
      });
    }
    if (stated === received) continue;
    const [silent, telling] = stated === undefined ? [reference, sample] : [sample, reference];
    warnings.push({
      code: 'condition-not-stated',
      message: `${condition === 'specular' ? 'Specular treatment' : 'Geometry'} is stated for ${JSON.stringify(telling.name)} but not for ${JSON.stringify(silent.name)}; they are taken to agree.`,
      path: condition,
    });
  }
  const [first, second] = [reference.conditions.instrument, sample.conditions.instrument];
  if (first !== second) {
    warnings.push({
      code: 'instruments-differ',
      message: `The reference was read with ${first ?? 'an instrument that is not stated'}, the sample with ${second ?? 'one that is not stated'}; part of the difference may be the instruments'.`,
      path: 'instrument',
    });
  }
  const difference = colourDifference(labOf(reference, viewing, 'reference'), labOf(sample, viewing, 'sample'));
  return { ...difference, viewing, conditions: common(reference.conditions, sample.conditions, viewing), warnings };
}

function labOf({ spectrum, lab, xyz, conditions }: Reading, viewing: Viewing, path: string): Lab {
  if (spectrum) return labFromSpectrum(spectrum, viewing);
  const own = conditions.viewing;
  if ((lab || xyz) && (own?.illuminant !== viewing.illuminant || own.observer !== viewing.observer)) {
    throw new TintladderError('conditions-mismatch', {
      path: `${path}.conditions.viewing`,
      received: own && describeViewing(own),
      expected: describeViewing(viewing),
      hint: 'Lab and XYZ can be compared only under the illuminant and observer they were computed for.',
    });
  }
  if (lab) return lab;
  if (xyz) return labFromXyz(xyz, whitePoint(viewing));
  throw new TintladderError('empty', {
    path,
    received: 'a reading without a colour',
    expected: 'a spectrum, Lab or XYZ',
  });
}

function common(first: Conditions, second: Conditions, viewing: Viewing): Conditions {
  const { specular, geometry, instrument } = first;
  return {
    viewing,
    ...(specular !== undefined && specular === second.specular && { specular }),
    ...(geometry !== undefined && geometry === second.geometry && { geometry }),
    ...(instrument !== undefined && instrument === second.instrument && { instrument }),
  };
}
