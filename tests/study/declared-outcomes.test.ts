import { expect, test } from 'vitest';
import { D65_10, deltaEab, labFromSpectrum } from '../../src/colorimetry/index.js';
import { evaluateStudy, type Study } from '../../src/study/index.js';
import { film, measurement, STUDY } from './invented-study.js';
import { seededNormal } from './seeded-normal.js';

// 500 simulated studies with known truth: four packages against a reference, true strengths about 102 ± 4 %, some of them flocculated, three
// drawdowns each, film-to-film scatter 0.7 %. What the study declares is held against the truth.

const STUDIES = 500;
const FILM_SCATTER = 0.007;
const IDS = ['A', 'B', 'C', 'D'];

const study: Study = {
  ...STUDY,
  packages: [STUDY.packages[0], ...IDS.map((id) => ({ id, name: id }))],
};

interface Truth {
  readonly strength: number;
  readonly flocculated: number;
}

function simulate(seed: number) {
  const noise = seededNormal(seed);
  const truths: Record<string, Truth> = { R: { strength: 1, flocculated: 0 } };
  for (const id of IDS) {
    truths[id] = { strength: 1.02 + 0.04 * noise(), flocculated: Math.max(0, 0.03 * noise()) };
  }
  const white = [1, 2, 3].map((i) => measurement(`W white ${i}`, film(0, noise)));
  const tints = Object.entries(truths).flatMap(([id, { strength, flocculated }]) =>
    [1, 2, 3].flatMap((i) => {
      const amount = 0.5 * strength * (1 + FILM_SCATTER * noise());
      return [
        measurement(`W ${id} unrubbed ${i}`, film(amount, noise)),
        measurement(`W ${id} rubbed ${i}`, film(amount / (1 - flocculated), noise)),
      ];
    }),
  );
  return { truths, measurements: [...white, ...tints] };
}

/** ΔE*ab of the rub-out without noise: what truly meets the limit or does not. */
function trueRubOut({ strength, flocculated }: Truth): number {
  const lab = (amount: number) => labFromSpectrum(film(amount), D65_10);
  return deltaEab(lab(0.5 * strength), lab((0.5 * strength) / (1 - flocculated)));
}

test('what is declared is true, and what is recommended is the best or close to it', async () => {
  let meets = 0;
  let trulyMeets = 0;
  let recommended = 0;
  let good = 0;
  for (let seed = 1; seed <= STUDIES; seed++) {
    const { truths, measurements } = simulate(seed);
    const result = await evaluateStudy(study, measurements);
    const isTrue = (quantity: string, id: string) =>
      quantity === 'strength' ? truths[id].strength >= 1 : trueRubOut(truths[id]) <= 1;
    for (const cell of result.cells.filter(({ package: id }) => id !== 'R')) {
      for (const { quantity } of cell.judgements.filter(({ outcome }) => outcome === 'meets')) {
        meets++;
        trulyMeets += isTrue(quantity, cell.package) ? 1 : 0;
      }
    }
    const best = result.recommendation.package;
    if (best === undefined) continue;
    recommended++;
    const trulyGood = Object.keys(truths).filter((id) => isTrue('strength', id) && isTrue('rub-out', id));
    const strongest = Math.max(...trulyGood.map((id) => truths[id].strength));
    if (truths[best].strength >= strongest - 0.01) good++;
  }
  expect(meets).toBeGreaterThan(STUDIES);
  expect(trulyMeets / meets).toBeGreaterThanOrEqual(0.975);
  expect(recommended).toBeGreaterThan(STUDIES / 2);
  expect(good / recommended).toBeGreaterThanOrEqual(0.95);
}, 120_000);
