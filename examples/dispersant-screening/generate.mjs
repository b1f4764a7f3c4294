// Writes readings.csv and truth.json. Invented scenario: four additive packages for one green pigment, one mill base each, let
// down in two white paints: four weigh-ups, one drawdown of each, two spots where it was left alone and two where it was rubbed.
// Run it with `node examples/dispersant-screening/generate.mjs`; the same seed gives the same files.
import {
  delimitedText,
  filmReadings,
  PIGMENTS,
  seededNoise,
  unitsFrom,
  withInstrumentNoise,
  writeWhenRun,
} from '../simulation.mjs';

export const SEED = 20261;
const WEIGH_UPS = 4;
const SPOTS = 2;
const WHITES = 3;

/**
 * The truth. `strength`: of the rubbed, well dispersed film against the reference, percent. `flocculated`: share of the
 * colour that the unrubbed film of that paint doesn't show.
 */
export const TRUTH = {
  R: { strength: 100, flocculated: { WB: 0, SB: 0 } },
  A: { strength: 112, flocculated: { WB: 0, SB: 0.002 } },
  B: { strength: 106, flocculated: { WB: 0.004, SB: 0.13 } },
  C: { strength: 100.3, flocculated: { WB: 0.002, SB: 0 } },
};

/** Amount of colorant in each paint; the solvent-borne one is tinted a little deeper. */
const AMOUNT = { WB: 0.9, SB: 1.1 };

export function generate() {
  const noise = seededNoise(SEED);
  const unit = unitsFrom(noise);
  const rows = [];
  for (const paint of Object.keys(AMOUNT)) {
    for (let drawdown = 1; drawdown <= WHITES; drawdown++) {
      const percents = withInstrumentNoise(filmReadings({ colorants: [] }), noise);
      rows.push({ name: `${paint} white ${drawdown}`, percents });
    }
    for (const [id, { strength, flocculated }] of Object.entries(TRUTH)) {
      for (let weighing = 1; weighing <= WEIGH_UPS; weighing++) {
        const full = AMOUNT[paint] * (strength / 100) * unit('weighing') * unit('drawdown');
        for (const [area, amount] of [
          ['unrubbed', full * (1 - flocculated[paint])],
          ['rubbed', full],
        ]) {
          for (let spot = 1; spot <= SPOTS; spot++) {
            const colorants = [{ pigment: PIGMENTS.green, amount: amount * unit('spot') }];
            const percents = withInstrumentNoise(filmReadings({ colorants }), noise);
            rows.push({ name: `${paint} ${id} ${area} ${weighing}-${spot}`, percents });
          }
        }
      }
    }
  }
  return { 'readings.csv': delimitedText(rows), 'truth.json': `${JSON.stringify(TRUTH, null, 2)}\n` };
}

writeWhenRun(import.meta.url, generate);
