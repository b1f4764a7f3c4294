import type { Reading, Spectrum } from '../colorimetry/index.js';
import { asSpectrum, assertReading, isReading } from '../colorimetry/internal.js';
import { TintladderError } from '../core/index.js';
import { assertObject } from '../core/internal.js';
import type { PlacedReading } from '../evidence/internal.js';

/** A reduction as read: a spectrum, or a reading that holds one with the conditions it was read under, such as a measurement from a file. */
export type StrengthReading = Spectrum | Reading;

/**
 * The checked spectrum of a reading.
 *
 * @throws TintladderError `kinds-mixed` for a reading without a spectrum; `wrong-type`; what `createSpectrum` and the conditions throw
 */
export function spectrumOf({ reading, path }: PlacedReading<StrengthReading>): Spectrum {
  assertObject(reading, path, 'a spectrum, as createSpectrum makes it, or a reading that holds one');
  if (!isReading(reading)) return asSpectrum(reading, path);
  assertReading(reading, path);
  if (reading.spectrum !== undefined) return asSpectrum(reading.spectrum, `${path}.spectrum`);
  throw new TintladderError('kinds-mixed', {
    path: `${path}.spectrum`,
    received: undefined,
    expected: 'a reflectance spectrum',
    hint: 'Lab values are for relativeTintingStrengthFromLab.',
  });
}
