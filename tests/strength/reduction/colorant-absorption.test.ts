import { describe, expect, test } from 'vitest';
import { createSpectrum } from '../../../src/colorimetry/index.js';
import { noteDarkerWhite } from '../../../src/strength/reduction/colorant-absorption.js';
import { BANDS, flatBands } from '../grey-dilution.js';
import { bell, COLORANTS, type Curve, PAINT_SURFACE, reduction } from '../simulated-reductions.js';
import { flat, strengthOf } from '../strength-of.js';

const { blue } = COLORANTS;

test.each([
  ['a billionth of the largest is rounding', 100, [-0.9e-7], undefined],
  ['more than that is none', 100, [-1.1e-7], '480 nm'],
  ['a small colorant has a small limit', 1e-3, [-1.1e-12], '480 nm'],
  ['of the BANDS darker than the white the worst is named', 1, [-0.1, -0.2, -0.1], '490 nm'],
  ['of equally dark ones the first', 1, [-0.1, -0.1], '480 nm'],
])('a darker white: %s', (_, largest, negative, path) => {
  const added = flatBands(largest);
  added.set(negative, 10);
  expect(noteDarkerWhite(added, BANDS, 'trial').map((note) => note.path)).toEqual(path ? [`trial at ${path}`] : []);
});

describe('a white that is darker than a reduction', () => {
  const base = () => 0.1;
  const made = { white: base };
  const bleached: Curve = (wavelength) => {
    if (wavelength === 450) return -0.05;
    if (wavelength === 460) return -0.08;
    return wavelength === 500 ? -0.01 : bell(610, 40, 0.8)(wavelength);
  };

  test('is told with its bands, the worst of them and its share of the maximum', () => {
    const result = strengthOf(reduction(blue, 1, made), reduction(bleached, 1, made), {
      white: reduction(blue, 0, made),
    });
    const note = result.warnings.find(({ code }) => code === 'white-darker');
    expect(note?.path).toBe('trial at 460 nm');
    // 0.08 of 0.8
    expect(note?.figures).toEqual({
      bands: ['450 nm', '460 nm', '500 nm'],
      largestPercent: expect.closeTo(10, 6),
    });
  });

  test('is no finding where it is rounding', () => {
    expect(
      strengthOf(reduction(blue, 1, made), reduction(blue, 1.2, made), { white: reduction(blue, 0, made) }).warnings,
    ).toEqual([]);
  });
});

describe('a reading brighter than a film can be', () => {
  const startingAt = (first: number) =>
    createSpectrum({ start: 400, step: 10, values: [first, ...Array(30).fill(0.4)], scale: 'fraction' });
  const bright = startingAt(1.05);

  test('is refused with its place and a way to mend it', () => {
    expect(() => strengthOf(flat(0.4), bright)).toThrow(
      expect.objectContaining({
        path: 'trial at 400 nm',
        received: 1.05,
        hint: expect.stringContaining('Is the reading calibrated, free of fluorescence'),
      }),
    );
    expect(() => strengthOf(flat(0.4), bright, { surface: PAINT_SURFACE })).toThrow(
      expect.objectContaining({
        path: 'trial at 400 nm, corrected for the surface',
        hint: expect.stringContaining('Is the reading calibrated'),
      }),
    );
  });

  test('one that reflects nothing is told to be a lighter reduction instead', () => {
    const dark = startingAt(0);
    expect(() => strengthOf(flat(0.4), dark)).toThrow(/measure a lighter reduction\.$/);
    const excluded = { ...PAINT_SURFACE, specular: 'excluded' } as const;
    expect(() => strengthOf(flat(0.4), dark, { surface: excluded })).toThrow(
      expect.objectContaining({ code: 'zero-reflectance' }),
    );
    expect(() => strengthOf(flat(0.4), dark, { surface: PAINT_SURFACE })).toThrow(
      expect.objectContaining({ code: 'no-internal-reflectance' }),
    );
  });

  test('a perfect white is the last that passes', () => {
    expect(strengthOf(flat(0.4), startingAt(1), { criterion: 'kubelka-munk-sum' }).percent).toBeLessThan(100);
  });
});
