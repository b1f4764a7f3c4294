import { expect, test } from 'vitest';
import * as library from '../../src/index.js';

// A part of scripts/rubout-simulation.mjs with few films. Its films are made by Kubelka-Munk from invented K and S, so what is wrong with each
// is known. Limits are those the assessment has to reach, less what so few films may miss by chance.

interface Row {
  readonly films: number;
  readonly covered: number;
  readonly intervals: number;
  readonly direction: number;
  readonly nothing: number;
  readonly uneven: number;
  readonly only: Readonly<Record<string, number>>;
  readonly possible: Readonly<Record<string, number>>;
  readonly excluded: Readonly<Record<string, number>>;
}

interface ChartRow {
  readonly absorption: number;
  readonly scattering: number;
  readonly coloured: Readonly<Record<string, number>>;
  readonly white: Readonly<Record<string, number>>;
}

type Scenario = readonly [name: string, fault: string, options: object];

const { SCENARIOS, PIGMENTS, diagnose, diagnoseChart } = (await import(
  /* @vite-ignore */ new URL('../../scripts/rubout-simulation.mjs', import.meta.url).href
)) as {
  readonly SCENARIOS: readonly Scenario[];
  readonly PIGMENTS: readonly string[];
  diagnose(library: unknown, scenario: Scenario, options: { readonly films: number; readonly seed: number }): Row;
  diagnoseChart(library: unknown, fault: string, options: { readonly films: number; readonly seed: number }): ChartRow;
};

const SEED = 5;
const FILMS = 60;
const rowOf = (name: string): Row => {
  const scenario = SCENARIOS.find(([known]) => known === name);
  if (!scenario) throw new Error(`no scenario ${name}`);
  return diagnose(library, scenario, { films: FILMS, seed: SEED });
};
const of = (list: Readonly<Record<string, number>>, cause: string) => (list[cause] ?? 0) / FILMS;
const onlyPigment = ({ only }: Row) => PIGMENTS.reduce((sum, cause) => sum + of(only, cause), 0);

test.each(['sound, 1 drawdown', 'sound, 3 drawdowns', 'sound, noise 0.30, 3 spots', 'sound, one spot outlying'])(
  `%s: hardly ever anything is named (seed ${SEED})`,
  (name) => {
    const row = rowOf(name);
    // at most 1 % and 2.5 %; two of 60 are within chance
    expect(
      Object.keys(row.possible).reduce((most, cause) => Math.max(most, row.possible[cause]), 0),
    ).toBeLessThanOrEqual(2);
    expect(row.uneven).toBeLessThanOrEqual(2);
  },
);

test.each([
  ['coloured flocculated, mid', 'coloured-pigment-flocculated'],
  ['coloured flocculated, 3 drawdowns', 'coloured-pigment-flocculated'],
  ['coloured flocculated, pale', 'coloured-pigment-flocculated'],
  ['coloured flocculated, mass tone', 'coloured-pigment-flocculated'],
  ['white flocculated, mid', 'white-pigment-flocculated'],
  ['both flocculated', 'both-flocculated'],
  ['floating', 'pigments-separated'],
  ['gloss, mid', 'surface-changed'],
  ['card, film over black read', 'thickness-changed'],
])(`%s: %s stays in question and no pigment stands alone (seed ${SEED})`, (name, cause) => {
  const row = rowOf(name);
  // 95 % wanted; four standard deviations of such a count below
  expect(of(row.possible, cause)).toBeGreaterThanOrEqual(0.84);
  expect(onlyPigment(row)).toBeLessThanOrEqual(0.02);
  expect(row.nothing / FILMS).toBeLessThanOrEqual(0.1);
});

test(`and it decides: the surface is ruled out for most flocculated films, both pigments for most of another gloss (seed ${SEED})`, () => {
  expect(of(rowOf('coloured flocculated, mid').excluded, 'surface-changed')).toBeGreaterThanOrEqual(0.6);
  const gloss = rowOf('gloss, mid, 5 spots');
  for (const cause of ['coloured-pigment-flocculated', 'white-pigment-flocculated']) {
    expect(of(gloss.excluded, cause)).toBeGreaterThanOrEqual(0.5);
  }
});

test(`the direction of a flocculated film holds from Lab too, where nothing is ruled out (seed ${SEED})`, () => {
  const row = rowOf('coloured flocculated, Lab');
  expect(row.direction / FILMS).toBeGreaterThanOrEqual(0.9);
  expect(row.excluded).toEqual({});
});

test(`95 % intervals of ΔE*ab hold the truth in 93 to 97 % (seed ${SEED})`, () => {
  const rows = [
    'sound, 1 drawdown',
    'coloured flocculated, mid',
    'coloured flocculated, 3 drawdowns',
    'floating, Lab',
  ].map(rowOf);
  const [covered, all] = [
    rows.reduce((sum, row) => sum + row.covered, 0),
    rows.reduce((sum, row) => sum + row.intervals, 0),
  ];
  // 240 films: three standard deviations are 4 %
  expect(covered / all).toBeGreaterThan(0.91);
  expect(covered / all).toBeLessThan(0.99);
});

test(`over a chart both pigments are named where both were freed, and the ratios of K and S hold the truth (seed ${SEED})`, () => {
  const row = diagnoseChart(library, 'chart: both freed', { films: FILMS, seed: SEED });
  expect(row.coloured.freed).toBeGreaterThanOrEqual(0.9 * FILMS);
  expect(row.white.freed).toBeGreaterThanOrEqual(0.9 * FILMS);
  // 93 to 97 % wanted; three standard deviations of such a count below
  expect(row.absorption).toBeGreaterThanOrEqual(0.85 * FILMS);
  expect(row.scattering).toBeGreaterThanOrEqual(0.85 * FILMS);
});
