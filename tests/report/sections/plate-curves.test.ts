import { describe, expect, test } from 'vitest';
import { reflectanceFromKOverS } from '../../../src/kubelka-munk/index.js';
import { plateCurves, ratioDomain } from '../../../src/report/sections/plate-curves.js';
import type { Cell } from '../../../src/study/index.js';
import { inventedStudy } from '../fixture/invented-study.js';

const WHITE = 0.01;
const BAND = [0.02, 0.4, 0.8, 0.4, 0.02];
const reflectanceOf = (scale: number, band = BAND) => band.map((ratio) => reflectanceFromKOverS(WHITE + scale * ratio));

/** A cell whose tints are made from their K/S, so that their ratios are known. */
function cellOf(trial: readonly number[], rubbed: readonly number[]): Cell {
  const cell = inventedStudy({ curves: false }).cells.find(({ strength }) => strength);
  if (!cell) throw new Error('no trial');
  const spectra = {
    grid: { start: 500, step: 20, count: BAND.length },
    reference: reflectanceOf(1),
    unrubbed: trial,
    rubbed,
    white: BAND.map(() => reflectanceFromKOverS(WHITE)),
  };
  return { ...cell, spectra };
}

describe('the ratio of added K/S', () => {
  test('of a stronger tint of the same shade is flat at its strength', () => {
    const { ratios } = plateCurves(cellOf(reflectanceOf(1.1), reflectanceOf(1.21)), undefined);
    const [trial, rubbed] = ratios.map(({ values }) => values.slice(1, 4));
    for (const value of trial) expect(value).toBeCloseTo(110, 8);
    for (const value of rubbed) expect(value).toBeCloseTo(110, 8);
  });

  test('of a tint of another shade is sloped', () => {
    const shifted = reflectanceOf(1, [0.02, 0.5, 0.8, 0.3, 0.02]);
    const [{ values }] = plateCurves(cellOf(shifted, shifted), undefined).ratios;
    expect(values[1]).toBeCloseTo(125, 8);
    expect(values[2]).toBeCloseTo(100, 8);
    expect(values[3]).toBeCloseTo(75, 8);
  });

  test('is left out where the tint adds too little for a ratio', () => {
    const [{ values }] = plateCurves(cellOf(reflectanceOf(1), reflectanceOf(1)), undefined).ratios;
    expect([values[0], values[4]]).toEqual([undefined, undefined]);
  });

  test('shares a range that noise alone does not fill', () => {
    expect(ratioDomain([[{ label: '', tint: 'unrubbed', values: [99.9, undefined, 100.2] }]])).toEqual([95, 105]);
    expect(ratioDomain([])).toEqual([95, 105]);
  });
});
