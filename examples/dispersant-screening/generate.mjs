// Writes readings.csv and truth.json. Invented scenario: four additive packages for one green pigment, each let down in two
// white paints, three drawdowns each, read once where they were left alone and once where they were rubbed.
// Run it with `node examples/dispersant-screening/generate.mjs`; the same seed gives the same files.
import {
  delimitedText,
  filmReadings,
  PIGMENTS,
  seededNoise,
  withInstrumentNoise,
  writeWhenRun,
} from '../simulation.mjs';

export const SEED = 20261;
const REPLICATES = 3;
/** Film-to-film scatter of the tinting strength: weighing, mixing, drawing down. Standard deviation, relative. */
const FILM_SCATTER = 0.006;

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
  const rows = [];
  for (const paint of Object.keys(AMOUNT)) {
    for (let replicate = 1; replicate <= REPLICATES; replicate++) {
      rows.push({
        name: `${paint} white ${replicate}`,
        percents: withInstrumentNoise(filmReadings({ colorants: [] }), noise),
      });
    }
    for (const [id, { strength, flocculated }] of Object.entries(TRUTH)) {
      for (let replicate = 1; replicate <= REPLICATES; replicate++) {
        const full = AMOUNT[paint] * (strength / 100) * (1 + FILM_SCATTER * noise());
        for (const [area, amount] of [
          ['unrubbed', full * (1 - flocculated[paint])],
          ['rubbed', full],
        ]) {
          const percents = filmReadings({ colorants: [{ pigment: PIGMENTS.green, amount }] });
          rows.push({ name: `${paint} ${id} ${area} ${replicate}`, percents: withInstrumentNoise(percents, noise) });
        }
      }
    }
  }
  return { 'readings.csv': delimitedText(rows), 'truth.json': `${JSON.stringify(TRUTH, null, 2)}\n` };
}

writeWhenRun(import.meta.url, generate);
