// Writes readings.csv and truth.json. Invented scenario: three additive packages for a universal yellow colorant, one mill base each, let down in
// four white paints: four weigh-ups, one drawdown of each, read where left alone and where rubbed, fresh and after four weeks at 50 °C.
// Run it with `node examples/universal-colorant/generate.mjs`; the same seed gives the same files.
import {
  delimitedText,
  filmReadings,
  PIGMENTS,
  seededNoise,
  unitsFrom,
  withInstrumentNoise,
  writeWhenRun,
} from '../simulation.mjs';

export const SEED = 20264;
const WEIGH_UPS = 4;
const WHITES = 3;

/** Amount of colorant in each paint. */
const AMOUNT = { interior: 0.9, facade: 0.7, alkyd: 1, primer: 0.8 };

/**
 * The truth. `strength`: of the well dispersed film against the reference, percent; `flocculated`: share of the colour that
 * the unrubbed film of a paint doesn't show, none where no paint is named; `stored`: strength after storage, percent of the fresh
 * colorant.
 */
export const TRUTH = {
  P: { strength: 100, flocculated: {}, stored: 99.5 },
  Q: { strength: 104, flocculated: {}, stored: 100 },
  S: { strength: 107, flocculated: { facade: 0.16 }, stored: 99 },
};

export function generate() {
  const noise = seededNoise(SEED);
  const unit = unitsFrom(noise);
  const rows = [];
  const read = (name, amount) => {
    const percents = filmReadings({ colorants: [{ pigment: PIGMENTS.yellow, amount: amount * unit('spot') }] });
    rows.push({ name, percents: withInstrumentNoise(percents, noise) });
  };
  for (const [paint, amount] of Object.entries(AMOUNT)) {
    for (let i = 1; i <= WHITES; i++) read(`${paint}/white/${i}`, 0);
    for (const [id, { strength, flocculated, stored }] of Object.entries(TRUTH)) {
      for (const [storage, share] of [
        ['fresh', 100],
        ['stored', stored],
      ]) {
        for (let i = 1; i <= WEIGH_UPS; i++) {
          const full = amount * (strength / 100) * (share / 100) * unit('weighing') * unit('drawdown');
          read(`${paint}/${id}/${storage}/unrubbed/${i}`, full * (1 - (flocculated[paint] ?? 0)));
          read(`${paint}/${id}/${storage}/rubbed/${i}`, full);
        }
      }
    }
  }
  return { 'readings.csv': delimitedText(rows), 'truth.json': `${JSON.stringify(TRUTH, null, 2)}\n` };
}

writeWhenRun(import.meta.url, generate);
