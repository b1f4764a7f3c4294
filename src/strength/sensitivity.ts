import type { Warning } from '../warning.js';
import type { Dilution } from './dilution.js';
import { internalOf } from './saunderson.js';

/** One digit of an instrument that shows tenths of a percent. */
const STEP = 0.001;
/** A reading is at its end where one such digit moves the strength by more than this share. */
const LARGEST_EFFECT = 0.05;

/**
 * A note where the reference is so dark or so pale in a band that 0.1 % of reflectance moves its added K/S by more than 5 %.
 * The limit is the package's own; common practice only says that neither end gives a strength.
 */
export function noteSensitivity({ bands, surface, reference, measuredReference }: Dilution, band: number): Warning[] {
  const measured = measuredReference[band];
  const internal = (value: number) => (surface ? internalOf(value, surface) : value);
  const reflectance = internal(measured);
  const slope = (internal(measured + STEP) - reflectance) / STEP;
  const effect = (((1 - reflectance ** 2) / (2 * reflectance ** 2)) * slope * STEP) / reference[band];
  if (!(effect > LARGEST_EFFECT)) return [];
  const dark = reflectance < 0.5;
  const place = bands.nameOf(band);
  return [
    {
      code: dark ? 'absorption-saturated' : 'absorption-weak',
      message:
        `The reference reflects ${(measured * 100).toFixed(1)} % at ${place}; ${STEP * 100} % of reflectance ` +
        `moves its strength by ${(effect * 100).toFixed(0)} % there. ` +
        `Measure a ${dark ? 'paler' : 'stronger'} reduction.`,
      place,
    },
  ];
}
