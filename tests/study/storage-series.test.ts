import { expect, test } from 'vitest';
import { evaluateStudy, parseStudy, type Study } from '../../src/study/index.js';
import { film, measurement, STUDY } from './invented-study.js';
import { seededNormal } from './seeded-normal.js';

const WEEKS = [0, 1, 2, 4, 8];

const study: Study = {
  ...STUDY,
  readings: [
    { pattern: '{paint} white {drawdown}', role: 'white' },
    { pattern: '{paint} {package} {storageWeeks} weeks {weighing}' },
  ],
  criteria: [{ quantity: 'strength-per-week', lower: -1, unit: '% per week', reason: 'a shelf life of some weeks' }],
};

/** Films of colorants that lose strength evenly, in percent of the fresh strength per week. */
function stored(losses: Record<string, number>, weeks = WEEKS) {
  const noise = seededNormal(3);
  const white = [1, 2].map((i) => measurement(`W white ${i}`, film(0, noise)));
  const tints = Object.entries(losses).flatMap(([id, loss]) =>
    weeks.flatMap((week) =>
      [1, 2].map((i) => {
        const amount = 0.5 * (1 - (loss * week) / 100) * (1 + 0.003 * noise());
        return measurement(`W ${id} ${week} weeks ${i}`, film(amount, noise));
      }),
    ),
  );
  return [...white, ...tints];
}

test('a series over weeks of storage gives the loss a week, with an interval that holds the true one', async () => {
  const result = await evaluateStudy(study, stored({ R: 0.2, A: 2 }));
  const [series] = result.series;
  expect(series).toMatchObject({ kind: 'storage', axis: { label: 'Storage', unit: 'weeks' } });
  expect(series.curves.map(({ points }) => points.map(({ at }) => at))).toEqual([
    [0, 0, 1, 1, 2, 2, 4, 4, 8, 8],
    [0, 0, 1, 1, 2, 2, 4, 4, 8, 8],
  ]);
  const [ofR, ofA] = series.curves.map(({ figures }) => figures[0]);
  for (const [{ interval, unit }, slope] of [
    [ofR, -0.2],
    [ofA, -2],
  ] as const) {
    expect(unit).toBe('% per week');
    expect(interval?.low).toBeLessThan(slope);
    expect(interval?.high).toBeGreaterThan(slope);
  }
});

test('a criterion judges the slope, and the strength against the reference is that of the fresh films', async () => {
  const result = await evaluateStudy(study, stored({ R: 0.2, A: 2 }));
  expect(result.ranking).toMatchObject({ meeting: ['R'], failing: ['A'] });
  const cell = result.cells.find(({ package: id }) => id === 'A');
  expect(cell?.replicates.unrubbed).toBe(2);
  expect(cell?.strength?.percent).toBeGreaterThan(98);
});

test('too few weeks carry no line, and the warning says so', async () => {
  const rankable = { ...study, criteria: [] };
  const result = await evaluateStudy(rankable, stored({ R: 0, A: 1 }, [0, 8]));
  expect(result.series[0].curves[0]).toMatchObject({ curve: [], figures: [] });
  expect(result.warnings).toContainEqual(expect.objectContaining({ code: 'no-fit', path: 'R in W' }));
});

test('fresh readings that state no week stand at week 0', async () => {
  const readings = [...study.readings, { pattern: '{paint} {package} fresh {weighing}' }];
  const extra = [measurement('W R fresh 1', film(0.5))];
  const result = await evaluateStudy({ ...study, readings }, [...stored({ R: 0, A: 1 }), ...extra]);
  expect(result.series[0].curves[0].points.filter(({ at }) => at === 0)).toHaveLength(3);
});

test('a rule states the storage or its weeks, not both', () => {
  const readings = [{ pattern: '{paint} {package} {storage} {storageWeeks} {weighing}' }];
  expect(() => parseStudy({ ...study, readings })).toThrowError(
    expect.objectContaining({ code: 'study-invalid', path: 'readings[0]' }),
  );
});
