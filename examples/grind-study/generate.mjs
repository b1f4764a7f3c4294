// Writes readings.csv and truth.json. Invented scenario: two additive packages for one red pigment, sampled at eight grinding
// times, each sample let down in one white paint, two drawdowns a sample.
// Run it with `node examples/grind-study/generate.mjs`; the same seed gives the same files.
import {
  delimitedText,
  filmReadings,
  PIGMENTS,
  seededNoise,
  withInstrumentNoise,
  writeWhenRun,
} from '../simulation.mjs';

export const SEED = 20262;
const TIMES = [10, 20, 30, 45, 60, 80, 100, 120];
const REPLICATES = 2;
/** Film-to-film scatter of the tinting strength. Standard deviation, relative. */
const FILM_SCATTER = 0.006;

/**
 * The truth: strength grows as F∞ - (F∞ - F0) exp(-t / τ); F∞ and F0 in percent of the reference's F∞, τ in minutes.
 */
export const TRUTH = {
  R: { final: 100, start: 30, tau: 38 },
  G: { final: 104, start: 36, tau: 19 },
};

/** Strength in percent of the reference's final strength after `time` minutes. */
export const strengthAt = ({ final, start, tau }, time) => final - (final - start) * Math.exp(-time / tau);

const AMOUNT = 1;

export function generate() {
  const noise = seededNoise(SEED);
  const rows = [];
  const white = { colorants: [] };
  for (let i = 1; i <= 3; i++) {
    rows.push({ name: `white ${i}`, percents: withInstrumentNoise(filmReadings(white), noise) });
  }
  for (const [id, curve] of Object.entries(TRUTH)) {
    for (const time of TIMES) {
      for (let replicate = 1; replicate <= REPLICATES; replicate++) {
        const amount = AMOUNT * (strengthAt(curve, time) / 100) * (1 + FILM_SCATTER * noise());
        const percents = filmReadings({ colorants: [{ pigment: PIGMENTS.red, amount }] });
        rows.push({ name: `${id} ${time} min ${replicate}`, percents: withInstrumentNoise(percents, noise) });
      }
    }
  }
  return { 'readings.csv': delimitedText(rows), 'truth.json': `${JSON.stringify(TRUTH, null, 2)}\n` };
}

writeWhenRun(import.meta.url, generate);
