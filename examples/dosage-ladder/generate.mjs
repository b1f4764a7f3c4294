// Writes readings.csv and truth.json. Invented scenario: one polymeric dispersant for a violet pigment at eight dosages, one
// mill base each, weighed up four times in one white paint and drawn down once, beside the package in use.
// Run it with `node examples/dosage-ladder/generate.mjs`; the same seed gives the same files.
import {
  delimitedText,
  filmReadings,
  PIGMENTS,
  seededNoise,
  unitsFrom,
  withInstrumentNoise,
  writeWhenRun,
} from '../simulation.mjs';

export const SEED = 20263;
const DOSAGES = [4, 6, 8, 10, 12, 14, 17, 20];
const WEIGH_UPS = 4;
const WHITES = 3;

/** The truth: strength rises as a parabola to `plateau` percent of the reference, reached at `optimum` % on pigment. */
export const TRUTH = { D: { plateau: 109, optimum: 12.5, curvature: 0.42 } };

/** Strength in percent of the reference at a dosage. */
export const strengthAt = ({ plateau, optimum, curvature }, dosage) =>
  plateau - curvature * Math.max(0, optimum - dosage) ** 2;

const AMOUNT = 0.8;

export function generate() {
  const noise = seededNoise(SEED);
  const rows = [];
  const unit = unitsFrom(noise);
  const read = (name, strength) => {
    const amount = AMOUNT * (strength / 100) * unit('weighing') * unit('drawdown') * unit('spot');
    const percents = filmReadings({ colorants: [{ pigment: PIGMENTS.violet, amount }] });
    rows.push({ name, percents: withInstrumentNoise(percents, noise) });
  };
  for (let i = 1; i <= WHITES; i++) read(`white ${i}`, 0);
  for (let i = 1; i <= WEIGH_UPS; i++) read(`in use ${i}`, 100);
  for (const dosage of DOSAGES) {
    for (let i = 1; i <= WEIGH_UPS; i++) read(`D ${dosage} % ${i}`, strengthAt(TRUTH.D, dosage));
  }
  return { 'readings.csv': delimitedText(rows), 'truth.json': `${JSON.stringify(TRUTH, null, 2)}\n` };
}

writeWhenRun(import.meta.url, generate);
