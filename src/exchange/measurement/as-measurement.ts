import { asSpectrum, assertReading } from '../../colorimetry/internal.js';
import { assertObject, assertString, refuseNonFinite } from '../../core/internal.js';
import type { Measurement } from './measurement.js';

/**
 * What was passed as a measurement: itself, or with its spectrum checked anew where that comes from JSON or a structured clone.
 *
 * @throws TintladderError `wrong-type` if it is none; what a reading and a spectrum are refused with
 */
export function asMeasurement(given: Measurement, path: string): Measurement {
  assertReading(given, path);
  const { name, spectrum, replicate, fields, line } = given;
  assertString(name, `${path}.name`);
  if (replicate !== undefined) assertString(replicate, `${path}.replicate`);
  assertObject(fields, `${path}.fields`, 'texts by their headings');
  for (const [heading, text] of Object.entries(fields)) assertString(text, `${path}.fields.${heading}`);
  if (line !== undefined) refuseNonFinite(line, `${path}.line`);
  if (spectrum === undefined) return given;
  const checked = asSpectrum(spectrum, `${path}.spectrum`);
  return checked === spectrum ? given : { ...given, spectrum: checked };
}
