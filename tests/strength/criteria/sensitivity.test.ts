import { describe, expect, test } from 'vitest';
import { PAINT_SURFACE } from '../simulated-reductions.js';
import { flat, noteOf, strengthOf } from '../strength-of.js';

describe('a reading at the end of what can be read', () => {
  test('dark: R = 0.02 has K/S 24.01, whose slope (1 - R²)/2R² moves it by 5.2 % for 0.1 % of reflectance', () => {
    expect(noteOf(strengthOf(flat(0.02), flat(0.2)), 'absorption-saturated')).toMatchObject({
      path: 'reference at 400 nm',
      figures: { reflectance: expect.closeTo(0.02, 12), step: 0.001, effectPercent: expect.closeTo(5.2, 1) },
    });
  });

  test('pale: R = 0.99 has K/S 5.05e-5, moved by 20 %', () => {
    expect(noteOf(strengthOf(flat(0.99), flat(0.9)), 'absorption-weak')).toMatchObject({
      path: 'reference at 400 nm',
      figures: { reflectance: expect.closeTo(0.99, 12), effectPercent: expect.closeTo(20.1, 1) },
    });
  });

  test('neither between them', () => {
    for (const [reference, trial] of [
      [0.021, 0.3],
      [0.955, 0.5],
    ]) {
      const codes = strengthOf(flat(reference), flat(trial)).warnings.map(({ code }) => code);
      expect(codes).not.toContain('absorption-saturated');
      expect(codes).not.toContain('absorption-weak');
    }
  });

  test('through the surface the step is larger inside: with k1 0.04 and k2 0.6 R = 0.055 measured is 0.038 inside', () => {
    // inside 0.015 / (0.96 · 0.4 + 0.6 · 0.015) = 0.03817, K/S 12.12, slope 342.7; a step of 0.001 is 0.00248 inside: 7 %
    expect(
      noteOf(strengthOf(flat(0.055), flat(0.3), { surface: PAINT_SURFACE }), 'absorption-saturated'),
    ).toMatchObject({
      path: 'reference at 400 nm',
      figures: { reflectance: expect.closeTo(0.055, 12), effectPercent: expect.closeTo(7.0, 1) },
    });
  });
});
