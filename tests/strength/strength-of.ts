import { createSpectrum, D65_10 } from '../../src/colorimetry/index.js';
import type { Repeated } from '../../src/evidence/index.js';
import { relativeTintingStrength, type StrengthOptions, type StrengthReading } from '../../src/strength/index.js';

/** Strength by the absorption maximum under D65/10° without surface correction, unless told otherwise. */
export const strengthOf = (
  reference: Repeated<StrengthReading>,
  trial: Repeated<StrengthReading>,
  options: Partial<StrengthOptions> = {},
) =>
  relativeTintingStrength(reference, trial, {
    criterion: 'absorption-maximum',
    viewing: D65_10,
    surface: 'none',
    ...options,
  });

export const codesOf = (...parameters: Parameters<typeof strengthOf>) =>
  strengthOf(...parameters).warnings.map(({ code }) => code);

export const noteOf = ({ warnings }: ReturnType<typeof strengthOf>, code: string) =>
  warnings.find((warning) => warning.code === code);

/** A spectrum of one reflectance. */
export const flat = (value: number, start = 400, count = 31) =>
  createSpectrum({ start, step: 10, values: Array(count).fill(value), scale: 'fraction' });
