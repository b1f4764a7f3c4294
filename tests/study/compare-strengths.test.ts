import { describe, expect, test } from 'vitest';
import { evaluateStudy, type Study } from '../../src/study/index.js';
import { film, measurement, STUDY } from './invented-study.js';
import { seededNormal } from './seeded-normal.js';

// Simulated laboratories whose scatter is known: 1.5 % from weigh-up to weigh-up, 0.3 % from spot to spot (evidence.md of the design: where spots of
// one film are taken for weigh-ups, a truly equal package is called different in most comparisons).

const strength = STUDY.criteria.slice(0, 1);

interface Design {
  readonly pattern: string;
  /** Names of the readings of one package, each with its unit at every level that scatters. */
  readonly names: readonly (readonly [name: string, units: readonly string[]])[];
}

const SCATTER = [0.015, 0.003];

function readings({ names }: Design, strengths: Readonly<Record<string, number>>, seed: number) {
  const noise = seededNormal(seed);
  const whites = [1, 2, 3].map((i) => measurement(`W white ${i}`, film(0, noise)));
  const tints = Object.entries(strengths).flatMap(([id, percent]) => {
    const factors = new Map<string, number>();
    const factorOf = (unit: string, level: number) => {
      const found = factors.get(unit) ?? 1 + SCATTER[level] * noise();
      factors.set(unit, found);
      return found;
    };
    return names.map(([name, units]) => {
      const factor = units.reduce((product, unit, level) => product * factorOf(unit, level), 1);
      return measurement(`W ${id} ${name}`, film((0.5 * percent * factor) / 100, noise));
    });
  });
  return [...whites, ...tints];
}

const studyOf = ({ pattern }: Design, change: Partial<Study> = {}): Study => ({
  ...STUDY,
  criteria: strength,
  readings: [STUDY.readings[0], { pattern: `{paint} {package} ${pattern}` }],
  ...change,
});

const SPOTS: Design = { pattern: '{spot}', names: ['1', '2', '3'].map((spot) => [spot, ['film', spot]] as const) };
const WEIGH_UPS: Design = { pattern: '{weighing}', names: ['1', '2', '3'].map((n) => [n, [n, `${n} a`]] as const) };
const GRINDS: Design = { pattern: '{grind}', names: ['1', '2'].map((n) => [n, [n, `${n} a`]] as const) };
const STRENGTHS = { R: 100, A: 108 };

const claimed = async (
  design: Design,
  change: Partial<Study> = {},
  strengths: Readonly<Record<string, number>> = STRENGTHS,
  seed = 7,
) => evaluateStudy(studyOf(design, change), readings(design, strengths, seed));

describe('what was made anew decides what is claimed', () => {
  test('spots of one film: the figure of the film is shown, nothing is decided, and the remedy is named', async () => {
    const result = await claimed(SPOTS);
    const [comparison] = result.evidence.paints[0].againstReference;
    expect(comparison).toMatchObject({ claim: 'film', finding: 'undecided', shortfall: { level: 'weighing' } });
    expect(comparison.interval).toBeDefined();
    const [judgement] = result.cells[1].judgements;
    expect(judgement).toMatchObject({ outcome: 'undecided', claim: 'film', remedy: comparison.shortfall?.remedy });
    expect(result.recommendation.statement).toContain('weigh-up');
  });

  test('weigh-ups of one grind carry a claim about the mill base', async () => {
    const result = await claimed(WEIGH_UPS);
    const [comparison] = result.evidence.paints[0].againstReference;
    expect(comparison).toMatchObject({ claim: 'mill-base', finding: 'stronger' });
    expect(comparison.statement).toContain('This mill base of Package A');
    expect(comparison.statement).toContain('3 weigh-ups');
    expect(result.recommendation.statement).toContain('this mill base');
  });

  test('a package takes grinds, or a history of them', async () => {
    const wanted = { claim: 'package' } as const;
    const fromWeighUps = await claimed(WEIGH_UPS, wanted);
    expect(fromWeighUps.evidence.paints[0].againstReference[0]).toMatchObject({
      claim: 'mill-base',
      finding: 'undecided',
      shortfall: { wanted: 'package', level: 'grind' },
    });
    const ofGrinds = await claimed(GRINDS, wanted, { R: 100, A: 125 });
    expect(ofGrinds.evidence.paints[0].againstReference[0]).toMatchObject({ claim: 'package', finding: 'stronger' });
    const precision = { strength: { grind: 1, unit: '%', degreesOfFreedom: 20 } } as const;
    const known = await claimed(WEIGH_UPS, { ...wanted, precision });
    expect(known.evidence.paints[0].againstReference[0]).toMatchObject({ claim: 'package', fromHistory: ['grind'] });
  });

  test('a study that claims no more than films judges them', async () => {
    const result = await claimed(SPOTS, { claim: 'film' });
    expect(result.cells[1].judgements[0]).toMatchObject({ outcome: 'meets', claim: 'film' });
  });
});

test('the history is a floor: weigh-ups that agree by chance are not surer than it', async () => {
  const precision = { strength: { weighing: 6, unit: '%', degreesOfFreedom: 20 } } as const;
  const [own, floored] = await Promise.all([claimed(WEIGH_UPS), claimed(WEIGH_UPS, { precision })]);
  const width = ({ evidence }: typeof own) => {
    const { interval } = evidence.paints[0].againstReference[0];
    return interval ? interval.high - interval.low : 0;
  };
  expect(width(floored)).toBeGreaterThan(1.3 * width(own));
  expect(floored.evidence.paints[0].againstReference[0].basis).toBe('history');
});

test('the joint interval holds the single one, and those who may be the best are named', async () => {
  const packages = ['R', 'A', 'B', 'C'].map((id) => ({ id, name: id }));
  const result = await claimed(WEIGH_UPS, { packages }, { R: 100, A: 110, B: 110.5, C: 90 }, 4);
  for (const { interval, joint } of result.evidence.paints[0].againstReference) {
    expect(joint?.low).toBeLessThanOrEqual(interval?.low ?? 0);
    expect(joint?.high).toBeGreaterThanOrEqual(interval?.high ?? 0);
  }
  expect([...result.ranking.notProvenWorse].sort()).toEqual(['A', 'B']);
  expect(result.recommendation.leadProven).toBe(false);
  expect(result.ranking.failing).toEqual(['C']);
});

test('by the probability of conformance a figure is accepted within the stated risk, and the probability stands beside it', async () => {
  const decision = { rule: 'conformance-probability', risk: 0.05 } as const;
  const result = await claimed(WEIGH_UPS, { decision });
  const [judgement] = result.cells[1].judgements;
  expect(judgement.conformance).toBeGreaterThan(0.95);
  expect(judgement.outcome).toBe('meets');
});

test('a day that lifts all readings of both packages is taken out', async () => {
  const noise = seededNormal(11);
  const day = { mon: 1.04, tue: 0.97, wed: 1 };
  const names = Object.entries(day).flatMap(([label, lift]) =>
    ['R', 'A'].flatMap((id) =>
      [1, 2].map((n) => {
        const amount = (id === 'A' ? 0.515 : 0.5) * lift * (1 + 0.004 * noise());
        return measurement(`W ${id} ${label} ${label}${n}`, film(amount, noise));
      }),
    ),
  );
  const whites = [1, 2, 3].map((i) => measurement(`W white ${i}`, film(0, noise)));
  const evaluate = (pattern: string) => evaluateStudy(studyOf({ pattern, names: [] }), [...whites, ...names]);
  const [blocked, plain] = [await evaluate('{day} {weighing}'), await evaluate('{any} {weighing}')];
  const ends = ({ evidence }: typeof plain) => evidence.paints[0].againstReference[0];
  expect(blocked.evidence.paints[0].scatter[0].blocks).toBe(3);
  expect(ends(blocked).finding).toBe('stronger');
  expect(ends(plain).finding).toBe('undecided');
});
