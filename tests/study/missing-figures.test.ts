import { expect, test } from 'vitest';
import { evaluateStudy, type Study } from '../../src/study/index.js';
import { film, measurement, STUDY } from './invented-study.js';
import { seededNormal } from './seeded-normal.js';

const study: Study = { ...STUDY, paints: [...STUDY.paints, { id: 'E', name: 'Enamel' }] };

/** Three films of each area in both paints, but for the areas left out. */
function readings(leftOut: readonly string[] = []) {
  const noise = seededNormal(5);
  return ['W', 'E'].flatMap((paint) => [
    ...[1, 2, 3].map((i) => measurement(`${paint} white ${i}`, film(0, noise))),
    ...['R', 'A'].flatMap((id) =>
      ['unrubbed', 'rubbed'].flatMap((area) =>
        [1, 2, 3].flatMap((i) => {
          const spectrum = film((id === 'A' ? 0.56 : 0.5) * (1 + 0.003 * noise()), noise);
          return leftOut.includes(`${paint} ${id} ${area}`)
            ? []
            : [measurement(`${paint} ${id} ${area} ${i}`, spectrum)];
        }),
      ),
    ),
  ]);
}

const outcomes = (result: Awaited<ReturnType<typeof evaluateStudy>>) =>
  Object.fromEntries(result.packages.map(({ package: { id }, outcome }) => [id, outcome]));

test('what was read for nobody in a paint is missing for all of them, and never counts as met', async () => {
  const result = await evaluateStudy(study, readings(['E R rubbed', 'E A rubbed']));
  expect(outcomes(result)).toEqual({ R: 'undecided', A: 'undecided' });
  expect(result.packages.map(({ missing }) => missing)).toEqual([
    [{ quantity: 'rub-out', paint: 'E' }],
    [{ quantity: 'rub-out', paint: 'E' }],
  ]);
  expect(result.recommendation.package).toBeUndefined();
  expect(result.recommendation.statement).toContain('rub-out difference in Enamel');
  expect(result.warnings).toContainEqual(expect.objectContaining({ code: 'figure-missing', path: 'A in E' }));
});

test('a criterion that names its paints or packages asks no others', async () => {
  const scoped = (scope: Partial<Study['criteria'][number]>): Study => ({
    ...study,
    criteria: study.criteria.map((criterion) =>
      criterion.quantity === 'rub-out' ? { ...criterion, ...scope } : criterion,
    ),
  });
  const some = readings(['E R rubbed', 'E A rubbed']);
  expect(outcomes(await evaluateStudy(scoped({ paints: ['W'] }), some))).toEqual({ R: 'meets', A: 'meets' });
  const ofA = await evaluateStudy(scoped({ packages: ['A'] }), readings(['E R rubbed']));
  expect(outcomes(ofA)).toEqual({ R: 'meets', A: 'meets' });
  const judged = ofA.cells.filter(({ judgements }) => judgements.some(({ quantity }) => quantity === 'rub-out'));
  expect(judged.map(({ package: id }) => id)).toEqual(['A', 'A']);
});

test('a package that fails stays failing, whatever it lacks', async () => {
  const strict: Study = {
    ...study,
    criteria: study.criteria.map((criterion) =>
      criterion.quantity === 'strength' ? { ...criterion, lower: 105 } : criterion,
    ),
  };
  const result = await evaluateStudy(strict, readings(['E R rubbed', 'E A rubbed']));
  expect(outcomes(result)).toEqual({ R: 'fails', A: 'undecided' });
});

test('a quantity that ranks the packages is asked for like one that is judged', async () => {
  const gloss = (paint: string) => ({ quantity: 'gloss', value: 80, unit: 'GU', paint });
  const ranked: Study = {
    ...study,
    rankBy: { quantity: 'gloss', best: 'highest' },
    packages: [
      { ...STUDY.packages[0], supplied: [gloss('W'), gloss('E')] },
      { ...STUDY.packages[1], supplied: [gloss('W')] },
    ],
  };
  const result = await evaluateStudy(ranked, readings());
  expect(outcomes(result)).toEqual({ R: 'meets', A: 'undecided' });
  expect(result.packages[1].missing).toEqual([{ quantity: 'gloss', paint: 'E' }]);
});

test('one unit for a quantity: 3 Pa·s is judged and ranked as 3000 mPa·s', async () => {
  const viscosity = (value: number, unit: string) => ({ quantity: 'viscosity', value, unit, uncertainty: value / 100 });
  const thick: Study = {
    ...study,
    packages: [
      { ...STUDY.packages[0], supplied: [viscosity(900, 'mPa·s')] },
      { ...STUDY.packages[1], supplied: [viscosity(3, 'Pa·s')] },
    ],
    criteria: [{ quantity: 'viscosity', upper: 1000, unit: 'mPa·s', reason: 'pump' }],
    rankBy: { quantity: 'viscosity', best: 'lowest' },
  };
  const result = await evaluateStudy(thick, readings());
  expect(result.ranking).toMatchObject({ meeting: ['R'], failing: ['A'] });
  expect(result.packages[1].judgements[0]).toMatchObject({ value: 3000, interval: { low: 2970, high: 3030 } });
});

test('an export that was given twice under two names is refused, a copied reading noted', async () => {
  const once = readings();
  const [again] = once.filter(({ name }) => name === 'W A unrubbed 1');
  await expect(evaluateStudy(study, [...once, { ...again, line: 7 }])).rejects.toMatchObject({
    code: 'reading-repeated',
    path: 'measurement W A unrubbed 1 (line 7)',
  });
  const copied = await evaluateStudy(study, [...once, { ...again, name: 'W A unrubbed 9' }]);
  expect(copied.warnings).toContainEqual(expect.objectContaining({ code: 'readings-equal', path: 'W A unrubbed 9' }));
});
