import { readFileSync } from 'node:fs';
import { resolve } from 'node:path';
import { describe, expect, test } from 'vitest';
import { parse } from 'yaml';
import { readMeasurements } from '../../src/exchange/index.js';
import { renderMarkdown } from '../../src/report/index.js';
import { evaluateStudy, parseStudy, type StudyResult } from '../../src/study/index.js';

// The examples are simulated, so what they must come to is known. Each report is held against the truth stated in its generator.

interface Generator {
  readonly TRUTH: Record<string, Record<string, never>>;
  readonly generate: () => Record<string, string>;
  readonly strengthAt: (truth: unknown, at: number) => number;
}

const generatorOf = (example: string): Promise<Generator> => import(resolve(`examples/${example}/generate.mjs`));

async function evaluate(example: string, file: string): Promise<StudyResult> {
  const study = parseStudy(parse(readFileSync(`examples/${example}/${file}`, 'utf8')));
  const { measurements } = readMeasurements(readFileSync(`examples/${example}/readings.csv`, 'utf8'));
  return evaluateStudy(study, measurements);
}

const cellOf = (result: StudyResult, id: string, paint: string) => {
  const cell = result.cells.find((candidate) => candidate.package === id && candidate.paint === paint);
  if (!cell) throw new Error(`no cell for ${id} in ${paint}`);
  return cell;
};

/** One in twenty intervals misses by design, so a truth may lie outside by a third of the width. */
function expectCovered(interval: { low: number; high: number } | undefined, truth: number): void {
  const slack = interval ? (interval.high - interval.low) / 3 : 0;
  expect(interval?.low).toBeLessThanOrEqual(truth + slack);
  expect(interval?.high).toBeGreaterThanOrEqual(truth - slack);
}

test.each(['dispersant-screening', 'grind-study', 'dosage-ladder', 'universal-colorant'])(
  'the files of %s are what its seeded generator writes',
  async (example) => {
    const { generate } = await generatorOf(example);
    for (const [name, text] of Object.entries(generate())) {
      expect(readFileSync(`examples/${example}/${name}`, 'utf8')).toBe(text);
    }
  },
);

describe('dispersant screening', async () => {
  const result = await evaluate('dispersant-screening', 'study.json');
  const { TRUTH } = await generatorOf('dispersant-screening');

  test('every strength interval agrees with the truth', () => {
    for (const [id, { strength, flocculated }] of Object.entries(TRUTH)) {
      if (id === 'R') continue;
      for (const [paint, share] of Object.entries(flocculated as Record<string, number>)) {
        expectCovered(cellOf(result, id, paint).strength?.interval, strength * (1 - share));
      }
    }
  });

  test('the stronger package is recommended, the flocculating one fails, the equal one stays undecided', () => {
    expect(result.recommendation.package).toBe('A');
    expect(result.ranking.failing).toEqual(['B']);
    expect(result.ranking.undecided).toEqual(['C']);
    expect(cellOf(result, 'B', 'SB').rubOut).toMatchObject({
      finding: 'difference',
      direction: { towards: 'more-colour' },
      outcome: 'fails',
    });
    expect(cellOf(result, 'B', 'WB').rubOut?.finding).toBe('none-visible');
  });

  test('the strength that rubbing gives back is the share that was flocculated', () => {
    const change = cellOf(result, 'B', 'SB').rubOut?.strengthChange;
    // 13 % of the colour was flocculated, so the rubbed film is 1 / 0.87 as strong
    expectCovered(change?.interval, 100 * (1 / 0.87 - 1));
  });

  test('the report says so', () => {
    const report = renderMarkdown(result);
    expect(report).toContain('Package A is recommended');
    expect(report).toContain('coloured pigment flocculated');
    expect(report).toContain('Invented scenario');
  });
});

describe('grind study', async () => {
  const result = await evaluate('grind-study', 'study.yaml');
  const { TRUTH, strengthAt } = await generatorOf('grind-study');
  const curves = result.series.find(({ kind }) => kind === 'grind')?.curves ?? [];
  const figureOf = (id: string, quantity: string) =>
    curves.find((curve) => curve.package === id)?.figures.find((figure) => figure.quantity === quantity);
  // strengths are quoted against the reference at the end of its grind, not at its plateau
  const unit = strengthAt(TRUTH.R, 120) / 100;

  test.each(['R', 'G'])('final strength and time to 95 %% of %s come back', (id) => {
    const { final, start, tau } = TRUTH[id];
    const to95 = tau * Math.log((final - start) / (0.05 * final));
    expect(curves.find((curve) => curve.package === id)?.fit).toMatchObject({ form: 'exponential' });
    expect((figureOf(id, 'final-strength')?.value ?? 0) / (final / unit)).toBeCloseTo(1, 1);
    // a share of an end that was never read: about right, and without an interval
    expect((figureOf(id, 'time-to-95')?.value ?? 0) / to95).toBeCloseTo(1, 0);
    expect(figureOf(id, 'time-to-95')?.interval).toBeUndefined();
  });

  test('the aid is recommended and its saving reported', () => {
    expect(result.recommendation.package).toBe('G');
    // three runs each: the time saved has an interval between runs
    expect(figureOf('G', 'grinding-time-saved')?.interval?.low).toBeGreaterThan(0);
    expect(renderMarkdown(result)).toMatch(/grinding time saved/i);
  });
});

describe('dosage ladder', async () => {
  const result = await evaluate('dosage-ladder', 'study.yaml');
  const { TRUTH } = await generatorOf('dosage-ladder');

  test('the dosage shown to suffice gives away no more than 2 %', () => {
    const [optimum] = result.series[0].curves[0].figures;
    expect(optimum.quantity).toBe('optimum-dosage');
    expect(optimum.value).toBeGreaterThanOrEqual(TRUTH.D.optimum - 4);
    expect(optimum.value).toBeLessThanOrEqual(20);
  });
});

describe('universal colorant', async () => {
  const result = await evaluate('universal-colorant', 'study.yaml');

  test('the package that works in all four paints is recommended', () => {
    expect(result.recommendation.package).toBe('Q');
    expect(result.ranking.failing).toContain('S');
  });

  test('the one that flocculates in the facade paint fails there, and lets too much water in', () => {
    const cell = cellOf(result, 'S', 'facade');
    expect(cell.rubOut?.direction?.towards).toBe('more-colour');
    expect(cell.judgements).toContainEqual(
      expect.objectContaining({ quantity: 'water permeability', outcome: 'fails', value: 0.14 }),
    );
    for (const paint of ['interior', 'alkyd', 'primer']) expect(cellOf(result, 'S', paint).outcome).toBe('meets');
  });

  test('let-down: a mill base of 55 % brought to 40 % gives 1.375 times its mass', () => {
    const dilution = result.packages.find(({ package: item }) => item.id === 'Q')?.letDown;
    expect(dilution?.letDownFactor).toBeCloseTo(1.375, 12);
    expect(dilution?.additiveShare).toBeCloseTo(3.2 / 1.375, 12);
  });
});
