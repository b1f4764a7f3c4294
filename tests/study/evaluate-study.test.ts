import { expect, test } from 'vitest';
import { evaluateStudy, type Study } from '../../src/study/index.js';
import { film, measurement, STUDY } from './invented-study.js';
import { seededNormal } from './seeded-normal.js';

/** Three replicates of every film: amounts of colorant for the unrubbed and the rubbed area of each package. */
function readings(amounts: Record<string, readonly [unrubbed: number, rubbed: number]>, seed: number, paint = 'W') {
  const noise = seededNormal(seed);
  const scatter = () => 1 + 0.004 * noise();
  const whites = [1, 2, 3].map((i) => measurement(`${paint} white ${i}`, film(0, noise)));
  const tints = Object.entries(amounts).flatMap(([id, [unrubbed, rubbed]]) =>
    [1, 2, 3].flatMap((i) => {
      const factor = scatter();
      return [
        measurement(`${paint} ${id} unrubbed ${i}`, film(unrubbed * factor, noise)),
        measurement(`${paint} ${id} rubbed ${i}`, film(rubbed * factor, noise)),
      ];
    }),
  );
  return [...whites, ...tints];
}

test('a package that is stronger and rubs out well is recommended, with its figures', async () => {
  const result = await evaluateStudy(STUDY, readings({ R: [0.5, 0.5], A: [0.56, 0.56] }, 1));
  expect(result.recommendation).toMatchObject({ package: 'A', leadProven: true });
  expect(result.ranking.meeting).toEqual(['A', 'R']);
  expect(result.outcome).toBe('meets');
  const cell = result.cells.find(({ package: id }) => id === 'A');
  expect(cell?.strength?.percent).toBeGreaterThan(110);
  expect(cell?.strength?.percent).toBeLessThan(114);
  expect(cell?.strength?.interval?.low).toBeLessThan(112);
  expect(cell?.strength?.interval?.high).toBeGreaterThan(112);
  expect(cell?.strength?.residualInterval?.low).toBeLessThan(0.2);
});

test('a package that flocculates fails, and the answer says where and by how much', async () => {
  const result = await evaluateStudy(STUDY, readings({ R: [0.5, 0.5], A: [0.56, 0.68] }, 2));
  expect(result.ranking.failing).toEqual(['A']);
  expect(result.recommendation.package).toBe('R');
  expect(result.recommendation.headline).toMatch(/^Stay with Reference[^.]*\.$/);
  expect(result.recommendation.statement).toMatch(
    /Stay with Reference.*Package A fails: .*rub-out difference in Wall paint is .* at most 1\.00\u00a0ΔE\*ab/,
  );
  expect(result.cells.find(({ package: id }) => id === 'A')?.rubOut?.direction?.towards).toBe('more-colour');
  expect(result.outcome).toBe('fails');
});

test('a package within the noise is undecided and gets the number of readings that would decide it', async () => {
  const result = await evaluateStudy(STUDY, readings({ R: [0.5, 0.5], A: [0.502, 0.502] }, 33));
  const own = result.packages.find(({ package: item }) => item.id === 'A');
  expect(own?.outcome).toBe('undecided');
  expect(own?.readingsNeeded).toBeGreaterThan(3);
  expect(result.ranking.undecided).toEqual(['A']);
});

test('a package must work in every paint: the worst one counts', async () => {
  const study: Study = { ...STUDY, paints: [...STUDY.paints, { id: 'E', name: 'Enamel' }] };
  const both = [
    ...readings({ R: [0.5, 0.5], A: [0.56, 0.56] }, 4),
    ...readings({ R: [0.5, 0.5], A: [0.47, 0.47] }, 5, 'E'),
  ];
  const result = await evaluateStudy(study, both);
  expect(result.packages.find(({ package: item }) => item.id === 'A')?.outcome).toBe('fails');
  expect(result.cells.map(({ package: id, paint, outcome }) => [id, paint, outcome])).toContainEqual([
    'A',
    'W',
    'meets',
  ]);
});

test('a package that was not read in one paint stays undecided', async () => {
  const study: Study = { ...STUDY, paints: [...STUDY.paints, { id: 'E', name: 'Enamel' }] };
  const both = [...readings({ R: [0.5, 0.5], A: [0.56, 0.56] }, 6), ...readings({ R: [0.5, 0.5] }, 7, 'E')];
  const result = await evaluateStudy(study, both);
  expect(result.ranking.undecided).toEqual(['A']);
  expect(result.warnings).toContainEqual(expect.objectContaining({ code: 'not-read', path: 'A in E' }));
});

test('supplied figures are judged like computed ones, exact where no uncertainty is given', async () => {
  const supplied = (value: number, uncertainty?: number) => [
    { quantity: 'viscosity', value, unit: 'mPa·s', ...(uncertainty && { uncertainty }) },
  ];
  const study: Study = {
    ...STUDY,
    packages: [
      { ...STUDY.packages[0], supplied: supplied(900) },
      { ...STUDY.packages[1], supplied: supplied(990, 50) },
    ],
    criteria: [...STUDY.criteria, { quantity: 'viscosity', upper: 1000, unit: 'mPa·s', reason: 'pump' }],
  };
  const result = await evaluateStudy(study, readings({ R: [0.5, 0.5], A: [0.56, 0.56] }, 8));
  const outcomes = result.packages.map(({ judgements }) =>
    judgements.map(({ quantity, outcome }) => [quantity, outcome]),
  );
  expect(outcomes).toEqual([[['viscosity', 'meets']], [['viscosity', 'undecided']]]);
});

test('what is judged in one package and missing in another leaves the other undecided', async () => {
  const study: Study = {
    ...STUDY,
    packages: [
      { ...STUDY.packages[0], supplied: [{ quantity: 'viscosity', value: 900, unit: 'mPa·s' }] },
      STUDY.packages[1],
    ],
    criteria: [...STUDY.criteria, { quantity: 'viscosity', upper: 1000, unit: 'mPa·s', reason: 'pump' }],
  };
  const result = await evaluateStudy(study, readings({ R: [0.5, 0.5], A: [0.56, 0.56] }, 9));
  expect(result.ranking.undecided).toEqual(['A']);
});

test('a criterion on a quantity that nobody measured is refused', async () => {
  const study = { ...STUDY, criteria: [{ quantity: 'gloss', lower: 80, unit: 'GU', reason: 'shine' }] };
  await expect(evaluateStudy(study, readings({ R: [0.5, 0.5], A: [0.5, 0.5] }, 10))).rejects.toMatchObject({
    code: 'quantity-not-measured',
    path: 'criteria[0].quantity',
  });
});

test('a paint in which the reference was not read is refused', async () => {
  const measurements = readings({ A: [0.5, 0.5] }, 11);
  await expect(evaluateStudy(STUDY, measurements)).rejects.toMatchObject({ code: 'no-reference', path: 'paint W' });
});

test('one weigh-up of each decides nothing, unless the history of the laboratory tells how they scatter', async () => {
  const single = readings({ R: [0.5, 0.5], A: [0.56, 0.56] }, 12).filter(({ name }) => name.endsWith('1'));
  const strengthOnly: Study = { ...STUDY, criteria: STUDY.criteria.slice(0, 1) };
  const undecided = await evaluateStudy(strengthOnly, single);
  expect(undecided.ranking.undecided).toEqual(['A']);
  const [alone] = undecided.evidence.paints[0].againstReference;
  expect(alone).toMatchObject({ claim: 'film', finding: 'undecided', shortfall: { level: 'weighing' } });
  const strength = { weighing: 0.5, unit: '%', degreesOfFreedom: 20, source: 'control reductions' } as const;
  const known = await evaluateStudy({ ...strengthOnly, precision: { strength } }, single);
  expect(known.ranking.meeting).toEqual(['A', 'R']);
  expect(known.evidence.paints[0].againstReference[0]).toMatchObject({
    claim: 'mill-base',
    finding: 'stronger',
    fromHistory: ['weighing'],
  });
});

test('several dosages need the one at which the package is judged', async () => {
  const study: Study = {
    ...STUDY,
    readings: [STUDY.readings[0], { pattern: '{paint} {package} {area} {dosage} {weighing}' }],
  };
  const rows = readings({ R: [0.5, 0.5], A: [0.56, 0.56] }, 13);
  const measurements = rows.map((row, i) => ({
    ...row,
    name: row.name.replace(
      /(rubbed) (\d)/,
      (_, area, replicate) => `${area} ${row.name.includes(' A ') ? 8 + (i % 2) : 8} ${replicate}`,
    ),
  }));
  await expect(evaluateStudy(study, measurements)).rejects.toMatchObject({
    code: 'study-invalid',
    path: 'package A, dosage',
  });
});

test('the result is plain data: its JSON holds no typed array as an object, and nothing that JSON lacks', async () => {
  const result = await evaluateStudy(STUDY, readings({ R: [0.5, 0.5], A: [0.56, 0.56] }, 14));
  expect(JSON.stringify(result)).not.toMatch(/null|NaN|"0":/);
});

test('a drawdown that was left alone takes no part in the rub-out, and counts for the strength', async () => {
  const all = readings({ R: [0.5, 0.5], A: [0.56, 0.56] }, 15).filter(({ name }) => name !== 'W A rubbed 2');
  const cell = (await evaluateStudy(STUDY, all)).cells.find(({ package: id }) => id === 'A');
  expect(cell?.replicates).toEqual({ unrubbed: 3, rubbed: 2 });
  expect(cell?.rubOut?.interval?.basis).toBe('drawdowns');
});
