import fc from 'fast-check';
import { expect, test } from 'vitest';
import { compilePattern } from '../../src/study/sample-pattern.js';
import { STUDY } from './invented-study.js';

const study = {
  ...STUDY,
  packages: [
    { id: 'A', name: 'A' },
    { id: 'A1', name: 'A1' },
    { id: 'C++ (new)', name: 'with signs that mean something in a regular expression' },
  ],
};

test('a pattern reads package, paint, area and what was made anew', () => {
  const read = compilePattern('{paint} {package} {area} {weighing}-{spot}', study);
  expect(read('W A rubbed 3-1')).toEqual({ paint: 'W', package: 'A', area: 'rubbed', weighing: '3', spot: '1' });
  expect(read('W A1 unrubbed b-12')).toMatchObject({ package: 'A1', area: 'unrubbed', weighing: 'b', spot: '12' });
});

test('a day or session may be any text', () => {
  const read = compilePattern('{day} {package} {weighing}', study);
  expect(read('7 March A 2')).toEqual({ day: '7 March', package: 'A', weighing: '2' });
});

test('the longest id wins, and literal signs are literal', () => {
  expect(compilePattern('{package}{weighing}', study)('A12')).toMatchObject({ package: 'A1', weighing: '2' });
  expect(compilePattern('{package}.{weighing}', study)('C++ (new).2')).toMatchObject({ package: 'C++ (new)' });
  expect(compilePattern('{package}.{weighing}', study)('Ax2')).toBeUndefined();
});

test('dosages and times are numbers', () => {
  const read = compilePattern('{package} {dosage} % {grindTime} min', study);
  expect(read('A 7.5 % 30 min')).toMatchObject({ dosage: 7.5, grindTime: 30 });
  expect(read('A seven % 30 min')).toBeUndefined();
});

test('the words for areas and storage are the lab’s own', () => {
  const read = compilePattern('{package}{area}{storage}', {
    ...study,
    words: { rubbed: 'R', unrubbed: 'U', fresh: '0', stored: '4' },
  });
  expect(read('AR4')).toMatchObject({ area: 'rubbed', storage: 'stored' });
  expect(read('AU0')).toMatchObject({ area: 'unrubbed', storage: 'fresh' });
});

test('what a pattern is filled with is what it reads', () => {
  const word = fc.stringMatching(/^[A-Za-z0-9]{1,6}$/);
  fc.assert(
    fc.property(fc.uniqueArray(word, { minLength: 1, maxLength: 5 }), fc.nat({ max: 999 }), (ids, dosage) => {
      const packages = ids.map((id) => ({ id, name: id }));
      const read = compilePattern('{package}|{paint}|{dosage}', { ...study, packages });
      for (const id of ids) expect(read(`${id}|W|${dosage}`)).toMatchObject({ package: id, paint: 'W', dosage });
    }),
    { seed: 7 },
  );
});
