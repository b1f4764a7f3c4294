import { expect, test } from 'vitest';
import { parseStudy } from '../../src/study/index.js';
import { STUDY } from './invented-study.js';

const fault = (change: object) => {
  try {
    parseStudy({ ...STUDY, ...change });
  } catch (error) {
    return error;
  }
  return undefined;
};

test('a study that is right comes back unchanged', () => expect(parseStudy(STUDY)).toEqual(STUDY));

test.each([
  ['a missing field', { title: undefined }, 'title'],
  ['a field that no study has', { titel: 'x' }, 'titel'],
  ['an empty list of packages', { packages: [] }, 'packages'],
  ['a criterion that does not exist', { strengthCriterion: 'loudest' }, 'strengthCriterion'],
  ['an observer as a number', { viewing: { illuminant: 'D65', observer: 10 } }, 'viewing.observer'],
  ['an illuminant that does not exist', { viewing: { illuminant: 'D66', observer: '10' } }, 'viewing.illuminant'],
  ['a surface outside 0 to 1', { surface: { external: 4, internal: 0.6, specular: 'included' } }, 'surface.external'],
  ['two packages of one id', { packages: [STUDY.packages[0], STUDY.packages[0]] }, 'packages[1].id'],
  [
    'a level that the names tell already',
    { readings: [{ pattern: '{paint} {package} {spot}', repeated: 'spot' }] },
    'readings[0].repeated',
  ],
  [
    'a replicate of nobody knows what',
    { readings: [{ pattern: '{paint} {package} {replicate}' }] },
    'readings[0].pattern',
  ],
  ['a rule without names or pattern', { readings: [{ paint: 'W', package: 'R' }] }, 'readings[0]'],
  ['a rule with both', { readings: [{ paint: 'W', package: 'R', names: ['x'], pattern: 'x' }] }, 'readings[0]'],
  ['a rule that tells no package', { readings: [{ pattern: '{paint} {any}' }] }, 'readings[0]'],
  ['a rule that tells no paint', { readings: [{ pattern: '{package} {any}' }] }, 'readings[0]'],
  [
    'a rule on a paint that is not there',
    { readings: [{ names: ['x'], paint: 'Z', package: 'R' }] },
    'readings[0].paint',
  ],
])('%s is refused at its place', (_, change, path) => {
  expect(fault(change)).toMatchObject({ code: 'study-invalid', path });
});

test.each(['{paint} {packet}', '{paint} {package} {package}'])('the pattern %s is refused', (pattern) => {
  expect(fault({ readings: [{ pattern }] })).toMatchObject({ code: 'pattern-invalid', path: 'readings[0].pattern' });
});

test('a reference that is no package is refused, naming those that are', () => {
  expect(fault({ reference: 'Z' })).toMatchObject({ code: 'no-reference', path: 'reference', received: 'Z' });
  expect(String(fault({ reference: 'Z' }))).toContain('R, A');
});

test('a criterion needs a bound, and bounds that do not cross', () => {
  const criterion = { quantity: 'strength', unit: '%', reason: 'because' };
  expect(fault({ criteria: [criterion] })).toMatchObject({ code: 'invalid-limit', path: 'criteria[0]' });
  expect(fault({ criteria: [{ ...criterion, lower: 2, upper: 1 }] })).toMatchObject({ code: 'invalid-limit' });
});

test('units must be those of the quantity, computed or supplied', () => {
  const criterion = { lower: 1, reason: 'because' };
  expect(fault({ criteria: [{ ...criterion, quantity: 'strength', unit: 'kg' }] })).toMatchObject({
    code: 'unit-mismatch',
    path: 'criteria[0].unit',
    received: 'kg',
  });
  const packages = [
    STUDY.packages[0],
    { ...STUDY.packages[1], supplied: [{ quantity: 'viscosity', value: 900, unit: 'mPa·s' }] },
  ];
  const viscous = { ...criterion, quantity: 'viscosity' };
  expect(fault({ packages, criteria: [{ ...viscous, unit: 's' }] })).toMatchObject({
    code: 'unit-mismatch',
    path: 'packages[1].supplied[0].unit',
    received: 'mPa·s',
  });
  expect(fault({ packages, criteria: [{ ...viscous, unit: 'Pa·s' }] })).toBeUndefined();
});

test('a supplied figure can not take the place of a computed one', () => {
  const packages = [{ ...STUDY.packages[0], supplied: [{ quantity: 'strength', value: 130, unit: '%' }] }];
  expect(fault({ packages })).toMatchObject({ code: 'study-invalid', received: 'strength' });
});

const supplying = (...supplied: object[]) => ({ packages: [{ ...STUDY.packages[0], supplied }, STUDY.packages[1]] });
const gloss = { quantity: 'gloss', value: 80, unit: 'GU' };

test.each([
  ['a figure supplied twice', supplying(gloss, { ...gloss, value: 70 }), 'packages[0].supplied[1]'],
  ['a figure for a paint and for all of them', supplying({ ...gloss, paint: 'W' }, gloss), 'packages[0].supplied[1]'],
  ['an export that stands twice', { measurements: ['a.csv', 'b.csv', './a.csv'] }, 'measurements[2]'],
  [
    'a let-down that would concentrate',
    { targetLoading: 50, packages: [{ ...STUDY.packages[0], pigmentLoading: 40 }, STUDY.packages[1]] },
    'packages[0].pigmentLoading',
  ],
  ['a loading that is a fraction', { targetLoading: 0.4 }, 'targetLoading'],
  [
    'a loading of a package that is a fraction',
    { packages: [{ ...STUDY.packages[0], pigmentLoading: 0.5 }, STUDY.packages[1]] },
    'packages[0].pigmentLoading',
  ],
  [
    'a criterion for a paint that is not there',
    { criteria: [{ ...STUDY.criteria[0], paints: ['W', 'Z'] }] },
    'criteria[0].paints[1]',
  ],
  [
    'a criterion for a package that is not there',
    { criteria: [{ ...STUDY.criteria[0], packages: ['Z'] }] },
    'criteria[0].packages[0]',
  ],
])('%s is refused', (_, change, path) => {
  expect(fault(change)).toMatchObject({ code: 'study-invalid', path });
});

test('a figure for each paint is no figure supplied twice', () => {
  const paints = [...STUDY.paints, { id: 'E', name: 'Enamel' }];
  const both = supplying({ ...gloss, paint: 'W' }, { ...gloss, paint: 'E' });
  expect(fault({ ...both, paints })).toBeUndefined();
});

test.each([
  ['a surface that is not stated', { surface: undefined }, 'surface'],
  ['a surface of another name', { surface: 'matt' }, 'surface'],
  ['a surface without its specular mode', { surface: { external: 0.04, internal: 0.6 } }, 'surface.specular'],
  ['a repeatability of nobody knows what', { repeatability: { strength: 1 } }, 'repeatability'],
  ['a risk above a half', { decision: { rule: 'conformance-probability', risk: 0.7 } }, 'decision.risk'],
  [
    'a history in another unit',
    { precision: { strength: { weighing: 2, unit: 'fraction', degreesOfFreedom: 5 } } },
    'precision.strength.unit',
  ],
  [
    'a history without degrees of freedom',
    { precision: { strength: { weighing: 2, unit: '%' } } },
    'precision.strength.degreesOfFreedom',
  ],
])('%s is refused at its place', (_, change, path) => {
  expect(fault(change)).toMatchObject({ code: 'study-invalid', path });
});
