import { createSpectrum, type Spectrum } from '../../src/colorimetry/index.js';
import type { Measurement } from '../../src/exchange/index.js';
import { measuredReflectance, reflectanceFromKOverS } from '../../src/strength/index.js';
import type { Study } from '../../src/study/index.js';

// A small invented study and films simulated from Kubelka-Munk, for the tests of this folder.

export const SURFACE = { external: 0.04, internal: 0.6, specular: 'included' } as const;

const absorption = (nm: number) =>
  0.7 * Math.exp(-(((nm - 620) / 50) ** 2)) + 0.3 * Math.exp(-(((nm - 430) / 40) ** 2));

/** One film: `amount` of a blue-green pigment in white, readings shifted by `noise` times its own random numbers. */
export function film(amount: number, noise: () => number = () => 0): Spectrum {
  const offset = 0.0002 * noise();
  const values = Array.from({ length: 31 }, (_, i) => {
    const ratio = 0.002 + amount * (absorption(400 + 10 * i) + 0.01);
    return measuredReflectance(reflectanceFromKOverS(ratio), SURFACE) + offset + 0.00005 * noise();
  });
  return createSpectrum({ start: 400, step: 10, values, scale: 'fraction' });
}

export function measurement(name: string, spectrum: Spectrum): Measurement {
  return { name, spectrum, conditions: {}, fields: {} };
}

export const STUDY: Study = {
  title: 'Invented comparison',
  viewing: { illuminant: 'D65', observer: '10' },
  surface: SURFACE,
  strengthCriterion: 'absorption-maximum',
  reference: 'R',
  packages: [
    { id: 'R', name: 'Reference' },
    { id: 'A', name: 'Package A' },
  ],
  paints: [{ id: 'W', name: 'Wall paint' }],
  readings: [
    { pattern: '{paint} white {drawdown}', role: 'white' },
    { pattern: '{paint} {package} {area} {weighing}' },
  ],
  criteria: [
    { quantity: 'strength', lower: 100, unit: '%', reason: 'as strong as the one in use' },
    { quantity: 'rub-out', upper: 1, unit: 'ΔE*ab', reason: 'common practice, no source' },
  ],
  rankBy: { quantity: 'strength', best: 'highest' },
};
