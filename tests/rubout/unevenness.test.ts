import { describe, expect, test } from 'vitest';
import { evennessOf, noteEvenness } from '../../src/rubout/unevenness.js';

const areaOf = (...lightness: readonly number[]) => ({
  name: 'unrubbed',
  labs: lightness.map((L) => ({ L, a: 0, b: 0 })),
  paths: lightness.map((_, i) => `unrubbed.spot[${i}]`),
  units: [lightness.map((_, i) => i)],
  readings: [],
  warnings: [],
  repetition: { units: [], count: lightness.length, noun: '', claim: 'film' as const },
});

describe('an area is uneven', () => {
  test('where its squares are beyond chi-squared of the threshold', () => {
    // squares 2; over 0.16 that is 12.5, and chi-squared of 2 degrees of freedom passes 9.21 in 1 % (any table)
    const { deviation, probability } = evennessOf(areaOf(59, 60, 61), 0.4);
    expect(deviation).toBeCloseTo(1, 12);
    expect(probability).toBeCloseTo(Math.exp(-12.5 / 2), 4);
  });

  test('only if it stays so without its furthest spot, which is named otherwise', () => {
    expect(evennessOf(areaOf(60, 60.1, 59.9, 63), 0.4)).toMatchObject({ uneven: false, fault: 'unrubbed.spot[3]' });
    expect(evennessOf(areaOf(58, 60, 62, 64), 0.4)).toMatchObject({ uneven: true });
  });

  test('not at a scatter within the threshold, nor of one spot', () => {
    expect(evennessOf(areaOf(59.7, 60, 60.3), 0.4).uneven).toBe(false);
    expect(evennessOf(areaOf(60), 0.4)).toEqual({ spots: 1, uneven: false });
  });
});

test('the rubbed area is noted as rubbed unevenly, a spot that stands out by its place', () => {
  expect(noteEvenness('rubbed', { spots: 3, uneven: true, deviation: 1 })).toMatchObject([
    { code: 'rubbed-uneven', path: 'rubbed' },
  ]);
  expect(noteEvenness('unrubbed', { spots: 3, uneven: true, deviation: 1 })).toEqual([]);
  expect(noteEvenness('unrubbed', { spots: 3, uneven: false, fault: 'unrubbed.spot[0]' })).toMatchObject([
    { code: 'spot-stands-out', path: 'unrubbed.spot[0]' },
  ]);
});
