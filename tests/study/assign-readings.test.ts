import { expect, test } from 'vitest';
import { assignReadings } from '../../src/study/assign-readings.js';
import { film, measurement, STUDY } from './invented-study.js';

const NAMES = ['W white 1', 'W R unrubbed 1', 'W R rubbed 1', 'W A unrubbed 1', 'W A rubbed 1'];
const measurements = NAMES.map((name) => measurement(name, film(0.5)));

test('each reading gets its place', () => {
  const { readings, unused } = assignReadings(STUDY, measurements);
  expect(unused).toEqual([]);
  expect(readings.map(({ name, role, area, paint }) => [name, role, area, paint])).toEqual([
    ['W white 1', 'white', 'unrubbed', 'W'],
    ['W R unrubbed 1', 'tint', 'unrubbed', 'W'],
    ['W R rubbed 1', 'tint', 'rubbed', 'W'],
    ['W A unrubbed 1', 'tint', 'unrubbed', 'W'],
    ['W A rubbed 1', 'tint', 'rubbed', 'W'],
  ]);
});

test('readings that nothing claims are listed', () => {
  const { unused } = assignReadings(STUDY, [...measurements, measurement('tile', film(0))]);
  expect(unused).toEqual(['tile']);
});

test('readings that two rules claim are listed and refused', () => {
  const study = { ...STUDY, readings: [...STUDY.readings, { names: ['W A rubbed 1'], paint: 'W', package: 'R' }] };
  expect(() => assignReadings(study, measurements)).toThrowError(
    expect.objectContaining({
      code: 'reading-claimed-twice',
      received: ['W A rubbed 1'],
      path: 'readings[1] and readings[2]',
    }),
  );
});

test('a name or pattern that no reading has is refused, saying what there is', () => {
  for (const rule of [{ names: ['W B 1'] }, { pattern: 'tile {replicate}' }]) {
    const study = { ...STUDY, readings: [...STUDY.readings, { ...rule, paint: 'W', package: 'R' }] };
    expect(() => assignReadings(study, measurements)).toThrowError(
      expect.objectContaining({ code: 'unknown-sample', hint: expect.stringContaining('W white 1') }),
    );
  }
});

test('one unknown name among known ones is refused too', () => {
  const readings = [{ names: ['W R unrubbed 1', 'W R unrubbed 9'], paint: 'W', package: 'R' }];
  expect(() => assignReadings({ ...STUDY, readings }, measurements)).toThrowError(
    expect.objectContaining({ code: 'unknown-sample', received: 'W R unrubbed 9' }),
  );
});

test('a reading without a spectrum is refused by name', () => {
  const lab = { name: 'W A unrubbed 2', lab: { L: 50, a: 0, b: 0 }, conditions: {}, fields: {} };
  expect(() => assignReadings(STUDY, [...measurements, lab])).toThrowError(
    expect.objectContaining({ code: 'kinds-mixed', path: 'measurement "W A unrubbed 2"' }),
  );
});

test('samples of one name are replicates', () => {
  const { readings } = assignReadings(STUDY, [...measurements, measurement('W A rubbed 1', film(0.51))]);
  expect(readings.filter(({ name }) => name === 'W A rubbed 1')).toHaveLength(2);
});
