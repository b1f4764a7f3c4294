import { describe, expect, test } from 'vitest';
import { createSpectrum, D65_10 } from '../../src/colorimetry/index.js';
import { relativeTintingStrength, STRENGTH_CRITERIA } from '../../src/strength/index.js';
import { strengthsAgainst } from '../../src/strength/internal.js';
import { bell, COLORANTS, GRID, PAINT_SURFACE, reduction } from './simulated-reductions.js';

const { red } = COLORANTS;
const made = { surface: PAINT_SURFACE };
const reference = reduction(red, 1, made);
const white = reduction(red, 0, made);
const options = { viewing: D65_10, surface: PAINT_SURFACE };

describe.each(STRENGTH_CRITERIA)('against one reference by %s', (criterion) => {
  test.each([
    ['over its white', white],
    ['without a white', undefined],
  ])('trials have the strength and the match of the whole comparison, %s', (_, base) => {
    const { percentOf, matchedOf } = strengthsAgainst(reference, base, { ...options, criterion });
    for (const trial of [reduction(red, 0.8, made), reduction(bell(525, 52, 1, 0.012), 1.1, made)]) {
      const whole = relativeTintingStrength(reference, trial, { ...options, criterion, white: base });
      expect(percentOf(trial)).toBe(whole.percent);
      expect(Array.from(matchedOf(trial).values)).toEqual(Array.from(whole.matched.values));
    }
  });
});

function faultOf(ask: () => unknown): unknown {
  try {
    ask();
  } catch (fault) {
    return fault;
  }
  return undefined;
}

test('a trial has the fault that the whole comparison finds in it, and spoils no other', () => {
  const criterion = 'absorption-maximum';
  const { percentOf } = strengthsAgainst(reference, white, { ...options, criterion });
  const faulty = [
    white,
    createSpectrum({ start: GRID.start, step: GRID.step, values: Array(GRID.count).fill(0.03), scale: 'fraction' }),
    reduction(red, 1, { ...made, grid: { start: 400, step: 20, count: 16 } }),
  ];
  for (const trial of faulty) {
    const whole = faultOf(() => relativeTintingStrength(reference, trial, { ...options, criterion, white }));
    expect(whole).toBeDefined();
    expect(faultOf(() => percentOf(trial))).toEqual(whole);
  }
  expect(percentOf(reference)).toBe(100);
});

test('a reference without absorption is refused at once, as by the whole comparison', () => {
  const criterion = 'absorption-maximum';
  expect(() => strengthsAgainst(white, white, { ...options, criterion })).toThrow(
    expect.objectContaining({ code: 'no-absorption', path: expect.stringContaining('reference at') }),
  );
});
