import { expect, test } from 'vitest';
import { assignReadings } from '../../src/study/assign-readings.js';
import { film, measurement, STUDY } from './invented-study.js';

const NAMES = ['W white 1', 'W R unrubbed 1', 'W R rubbed 1', 'W A unrubbed 1', 'W A rubbed 1'];
const measurements = NAMES.map((name, i) => measurement(name, film(0.5 + 0.01 * i)));

test('each reading gets its place', () => {
  const { readings, unused } = assignReadings(STUDY, measurements);
  expect(unused).toEqual([]);
  expect(readings.map(({ reading, role, area, paint }) => [reading.name, role, area, paint])).toEqual([
    ['W white 1', 'white', 'unrubbed', 'W'],
    ['W R unrubbed 1', 'tint', 'unrubbed', 'W'],
    ['W R rubbed 1', 'tint', 'rubbed', 'W'],
    ['W A unrubbed 1', 'tint', 'unrubbed', 'W'],
    ['W A rubbed 1', 'tint', 'rubbed', 'W'],
  ]);
});

test('a field of a rule that is undefined counts as left out and hides nothing of the pattern', () => {
  const readings = STUDY.readings.map((rule) => ({ package: undefined, area: undefined, ...rule }));
  expect(assignReadings({ ...STUDY, readings }, measurements)).toEqual(assignReadings(STUDY, measurements));
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
  for (const rule of [{ names: ['W B 1'] }, { pattern: 'tile {weighing}' }]) {
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
    expect.objectContaining({ code: 'kinds-mixed', path: 'spectrum of measurement "W A unrubbed 2"' }),
  );
});

const again = measurement('W A rubbed 1', film(0.51));

test('readings that names do not tell apart have to say what was made anew', () => {
  expect(() => assignReadings(STUDY, [...measurements, again])).toThrowError(
    expect.objectContaining({ code: 'repetition-unstated', path: 'readings[1]' }),
  );
  const [white, tints] = STUDY.readings;
  const readings = [white, { ...tints, repeated: 'spot' as const }];
  const spots = assignReadings({ ...STUDY, readings }, [...measurements, again]).readings;
  expect(spots.filter(({ reading }) => reading.name === 'W A rubbed 1').map(({ spot }) => spot)).toEqual(['4', '5']);
});

test('a rule on names says what they repeat', () => {
  const readings = [
    { names: ['W R unrubbed 1', 'W A unrubbed 1'], paint: 'W', package: 'R', repeated: 'weighing' as const },
  ];
  const { readings: found } = assignReadings({ ...STUDY, readings }, measurements);
  expect(found.map(({ weighing }) => weighing)).toEqual(['1', '2']);
});

test('an export that was given twice is refused', () => {
  const twice = [...measurements.slice(0, 1), ...measurements.slice(0, 1)];
  expect(() => assignReadings({ ...STUDY, readings: STUDY.readings.slice(0, 1) }, twice)).toThrowError(
    expect.objectContaining({ code: 'reading-repeated', received: 'W white 1' }),
  );
});
