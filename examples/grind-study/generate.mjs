// Writes readings.csv and truth.json. Invented scenario: two additive packages for one red pigment, three mill runs of each,
// sampled at eight grinding times, each sample weighed up and drawn down once in one white paint.
// Run it with `node examples/grind-study/generate.mjs`; the same seed gives the same files.
import {
  delimitedText,
  filmReadings,
  PIGMENTS,
  seededNoise,
  unitsFrom,
  withInstrumentNoise,
  writeWhenRun,
} from '../simulation.mjs';

export const SEED = 20262;
const TIMES = [10, 20, 30, 45, 60, 80, 100, 120];
const RUNS = 3;
const WHITES = 3;

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
/** From one run to the next, standard deviation, relative. */
const PACE_SCATTER = 0.05;

export function generate() {
  const noise = seededNoise(SEED);
  const rows = [];
  const white = { colorants: [] };
  const unit = unitsFrom(noise);
  for (let i = 1; i <= WHITES; i++) {
    rows.push({ name: `white ${i}`, percents: withInstrumentNoise(filmReadings(white), noise) });
  }
  for (const [id, curve] of Object.entries(TRUTH)) {
    for (let run = 1; run <= RUNS; run++) {
      const charge = unit('grind');
      // no two runs of a mill grind at quite the same pace
      const pace = 1 + PACE_SCATTER * noise();
      for (const time of TIMES) {
        const strength = charge * strengthAt(curve, time * pace);
        const amount = AMOUNT * (strength / 100) * unit('weighing') * unit('drawdown') * unit('spot');
        const percents = filmReadings({ colorants: [{ pigment: PIGMENTS.red, amount }] });
        rows.push({ name: `${id} run ${run} ${time} min`, percents: withInstrumentNoise(percents, noise) });
      }
    }
  }
  return { 'readings.csv': delimitedText(rows), 'truth.json': `${JSON.stringify(TRUTH, null, 2)}\n` };
}

writeWhenRun(import.meta.url, generate);
