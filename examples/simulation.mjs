// Simulated drawdowns for the examples. Nothing here was measured: every film comes from the K and S curves stated
// below, so the true strength is known and the examples can be compared with it.

import { writeFileSync } from 'node:fs';
import { fileURLToPath } from 'node:url';

/** Wavelengths of the simulated instrument, nm. */
export const WAVELENGTHS = Array.from({ length: 31 }, (_, i) => 400 + 10 * i);

/** Surface of the simulated films: refractive index 1.5, specular reflection included. */
export const SURFACE = { external: 0.04, internal: 0.6, specular: 'included' };

const band = (nm, centre, width) => Math.exp(-(((nm - centre) / width) ** 2));

/** K for one part of colorant in a hundred of white paint; invented curves of the usual shapes. */
export const PIGMENTS = {
  green: (nm) => 0.72 * band(nm, 640, 52) + 0.3 * band(nm, 708, 38) + 0.42 * band(nm, 418, 42) + 0.012,
  red: (nm) => 0.55 * band(nm, 540, 34) + 0.42 * band(nm, 505, 38) + 0.16 * band(nm, 430, 60) + 0.008,
  violet: (nm) => 0.62 * band(nm, 575, 42) + 0.4 * band(nm, 530, 36) + 0.1 * band(nm, 420, 30) + 0.01,
  yellow: (nm) => 0.8 * band(nm, 415, 48) + 0.35 * band(nm, 465, 24) + 0.004,
};

/** K of a titanium-dioxide white with S = 1: a small even part, and the band edge at the violet end. */
export const whiteAbsorption = (nm) => 0.0006 + 0.03 * Math.exp(-(nm - 380) / 9);

/** Random numbers that are the same on every machine: mulberry32, then Box and Muller. */
export function seededNoise(seed) {
  let state = seed >>> 0;
  const uniform = () => {
    state = (state + 0x6d2b79f5) >>> 0;
    let t = Math.imul(state ^ (state >>> 15), 1 | state);
    t = (t + Math.imul(t ^ (t >>> 7), 61 | t)) ^ t;
    return ((t ^ (t >>> 14)) >>> 0) / 2 ** 32;
  };
  return () => Math.sqrt(-2 * Math.log(1 - uniform())) * Math.cos(2 * Math.PI * uniform());
}

/**
 * Reflectance factors in percent of one opaque film, as the instrument would read them.
 *
 * @param colorants - list of { pigment, amount }: a curve of PIGMENTS and its effective amount
 * @param scattering - S of the white, 1 for sound films, less where the white is flocculated
 */
export function filmReadings({ colorants, scattering = 1 }) {
  return WAVELENGTHS.map((nm) => {
    const K = whiteAbsorption(nm) + colorants.reduce((sum, { pigment, amount }) => sum + amount * pigment(nm), 0);
    const ratio = K / scattering;
    const internal = 1 / (1 + ratio + Math.sqrt(ratio * ratio + 2 * ratio));
    const { external: k1, internal: k2 } = SURFACE;
    return 100 * (k1 + ((1 - k1) * (1 - k2) * internal) / (1 - k2 * internal));
  });
}

/** What the instrument adds to a reading: a little gain, a little offset, a little of its own at every wavelength (percent). */
export function withInstrumentNoise(percents, noise) {
  const gain = 1 + 0.0004 * noise();
  const offset = 0.01 * noise();
  return percents.map((percent) => percent * gain + offset + 0.006 * noise());
}

/**
 * How much a simulated laboratory scatters: standard deviations of the tinting strength, relative, from one unit to the next. A
 * grind made anew scatters most, spots of one film least.
 */
export const SCATTER = { grind: 0.01, weighing: 0.012, drawdown: 0.006, spot: 0.003 };

/** A function that makes a unit anew: the factor by which its strength differs from what was meant. */
export const unitsFrom = (noise) => (level) => 1 + SCATTER[level] * noise();

/** Writes the files of an example into its folder when its generator is run as a program. */
export function writeWhenRun(moduleUrl, generate) {
  if (process.argv[1] !== fileURLToPath(moduleUrl)) return;
  for (const [name, text] of Object.entries(generate())) writeFileSync(new URL(name, moduleUrl), text);
}

/** An export as instruments write them: a name and a column for each wavelength, percent with three decimals. */
export function delimitedText(rows) {
  const lines = rows.map(({ name, percents }) => [name, ...percents.map((percent) => percent.toFixed(3))].join(','));
  return `${['Sample', ...WAVELENGTHS.map((nm) => `${nm} nm`)].join(',')}\n${lines.join('\n')}\n`;
}
