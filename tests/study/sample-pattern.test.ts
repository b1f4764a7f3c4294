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

test('a pattern reads package, paint, area and replicate', () => {
  const read = compilePattern('{paint} {package} {area} {replicate}', study);
  expect(read('W A rubbed 3')).toMatchObject({ paint: 'W', package: 'A', area: 'rubbed', replicate: '3' });
  expect(read('W A1 unrubbed 12 b')).toMatchObject({ package: 'A1', area: 'unrubbed', replicate: '12 b' });
});

test('the longest id wins, and literal signs are literal', () => {
  expect(compilePattern('{package}{replicate}', study)('A12')).toMatchObject({ package: 'A1', replicate: '2' });
  expect(compilePattern('{package}.{replicate}', study)('C++ (new).2')).toMatchObject({ package: 'C++ (new)' });
  expect(compilePattern('{package}.{replicate}', study)('Ax2')).toBeUndefined();
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
