import { describe, expect, test } from 'vitest';
import * as library from '../../src/evidence/index.js';

// A small seeded part of scripts/simulate-evidence.mjs. Limits are those to be reached, wider by three standard errors of so few laboratories
// (an event of 5 % counted in 150 has a standard error of 1.8 points).

interface Simulation {
  readonly PARTS: Readonly<
    Record<string, (library: unknown, options: object) => readonly Readonly<Record<string, number>>[]>
  >;
}

const { PARTS } = (await import(
  /* @vite-ignore */ new URL('../../scripts/simulate-evidence.mjs', import.meta.url).href
)) as Simulation;

const SEED = 41;
const run = (part: string, laboratories: number) => PARTS[part](library, { laboratories, seed: SEED });
/** Three standard errors of a share. */
const slack = (share: number, count: number) => 3 * Math.sqrt((share * (1 - share)) / count);

describe(`laboratories drawn at random (seed ${SEED})`, () => {
  test('nothing is claimed that was not made anew', () => {
    for (const { claimedBeyond, verdictsBelowTheClaim } of run('claimsBeyondEvidence', 40)) {
      expect(claimedBeyond).toBe(0);
      expect(verdictsBelowTheClaim || 0).toBe(0);
    }
  });

  test('intervals hold the truth with a history', () => {
    for (const { covered, claimReached } of run('coverageWithHistory', 120)) {
      expect(claimReached).toBe(1);
      expect(covered).toBeGreaterThanOrEqual(0.94 - slack(0.94, 120));
    }
  });

  test('a true lead of 5 % is shown', () => {
    const [{ shown }] = run('trueLead', 150);
    expect(shown).toBeGreaterThanOrEqual(0.7 - slack(0.7, 150));
  });

  test('the best is kept, and a false lead is rare', () => {
    const [{ holdsTheBest, falseLead }] = run('bestSets', 150);
    expect(holdsTheBest).toBeGreaterThanOrEqual(0.95 - slack(0.95, 150));
    expect(falseLead).toBeLessThanOrEqual(0.05 + slack(0.05, 150));
  });

  test('advice that is followed decides', () => {
    for (const { decided } of run('advice', 150)) {
      expect(decided).toBeGreaterThanOrEqual(0.72 - slack(0.8, 150));
      expect(decided).toBeLessThanOrEqual(0.88 + slack(0.8, 150));
    }
  });

  test('outliers raise few false alarms', () => {
    const [{ alarms }] = run('outliers', 100);
    expect(alarms).toBeLessThanOrEqual(0.02 + slack(0.02, 100));
  });
});
