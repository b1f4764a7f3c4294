import type { Warning } from '../core/index.js';
import { assertObject, assertOptions } from '../core/internal.js';
import { type ColourDifference, colourDifference } from './colour-difference.js';
import { type Conditions, commonConditions } from './conditions.js';
import { labOfReading } from './lab-of-reading.js';
import { assertReading, type Reading } from './reading.js';
import { assertViewing, type Viewing } from './viewing.js';

/** A colour difference with the conditions it belongs to. */
export interface ReadingDifference extends Omit<ColourDifference, 'kind'> {
  readonly kind: 'reading-difference';
  readonly viewing: Viewing;
  /** What both readings state alike. */
  readonly conditions: Conditions;
  readonly warnings: readonly Warning[];
}

/**
 * The colour difference of two readings, refused when they were taken under different conditions.
 *
 * A spectrum is computed under `viewing`; Lab and XYZ are taken as they were read and must belong to that viewing. Specular mode and geometry
 * must agree; another instrument, session or band-pass correction is noted, and so is once each condition that only one reading states.
 *
 * @param reference - reading of the standard: spectrum, Lab or XYZ with its conditions
 * @param sample - reading of the sample
 * @param options - illuminant and observer
 * @returns all parts of the difference, with viewing, common conditions and warnings
 * @throws TintladderError `conditions-mismatch` if illuminant, observer, geometry or specular mode are stated and differ; `empty` for a
 * reading without a colour
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
  options: { readonly viewing: Viewing },
): ReadingDifference {
  assertReading(reference, 'reference');
  assertReading(sample, 'sample');
  assertObject(options, 'options', 'the viewing');
  assertOptions(options, ['viewing']);
  const { viewing } = options;
  assertViewing(viewing, 'options.viewing');
  const common = commonConditions(
    Object.entries({ reference, sample }).map(([name, { conditions }]) => ({ name, conditions })),
  );
  const [first, second] = [labOfReading(reference, viewing, 'reference'), labOfReading(sample, viewing, 'sample')];
  return {
    ...colourDifference(first.lab, second.lab),
    kind: 'reading-difference',
    viewing,
    conditions: { viewing, ...common.conditions },
    warnings: [...common.warnings, ...first.warnings, ...second.warnings],
  };
}
