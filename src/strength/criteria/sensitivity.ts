import type { Warning } from '../../core/index.js';
import { internalOf, measuredOf, opaqueReflectance } from '../../kubelka-munk/internal.js';
import type { Dilution } from '../reduction/dilution.js';

/** One digit of an instrument that shows tenths of a percent. */
const STEP = 0.001;
/** A reading is at its end where one such digit moves the strength by more than this share. */
const LARGEST_EFFECT = 0.05;

/**
 * A note where reference or trial is so dark or so pale in a band that 0.1 % of reflectance moves its added K/S by more than
 * 5 %. The limit is the package's own; common practice only says that neither end gives a strength.
 */
export function noteSensitivity(dilution: Dilution, band: number): Warning[] {
  return [...noteSide(dilution, 'reference', band), ...noteSide(dilution, 'trial', band)];
}

function noteSide(dilution: Dilution, side: 'reference' | 'trial', band: number): Warning[] {
  const { bands, surface, white } = dilution;
  const added = dilution[side][band];
  const reflectance = opaqueReflectance(white[band] + added);
  const measured = measuredOf(reflectance, surface);
  const change = internalOf(measured + STEP, surface) - reflectance;
  const effect = (((1 - reflectance ** 2) / (2 * reflectance ** 2)) * change) / added;
  if (!(effect > LARGEST_EFFECT)) return [];
  const dark = reflectance < 0.5;
  const at = bands.nameOf(band);
  return [
    {
      code: dark ? 'absorption-saturated' : 'absorption-weak',
      message:
        `The ${side} reflects ${(measured * 100).toFixed(1)} % at ${at}; ${STEP * 100} % of reflectance ` +
        `moves its strength by ${(effect * 100).toFixed(0)} % there. ` +
        `Measure a ${dark ? 'paler' : 'stronger'} reduction.`,
      path: `${side} at ${at}`,
      figures: { reflectance: measured, step: STEP, effectPercent: 100 * effect },
    },
  ];
}
