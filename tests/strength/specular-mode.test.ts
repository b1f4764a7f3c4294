import { describe, expect, test } from 'vitest';
import type { Spectrum } from '../../src/colorimetry/index.js';
import type { StrengthOptions } from '../../src/strength/index.js';
import { bell, COLORANTS, PAINT_SURFACE, reduction } from './simulated-reductions.js';
import { codesOf, noteOf, strengthOf } from './strength-of.js';

const { blue } = COLORANTS;

test('a reading in the other mode is noted, whichever it is', () => {
  const surface = PAINT_SURFACE;
  const made = { surface };
  const options = { surface, white: reduction(blue, 0, made) };
  const excluded = reduction(blue, 1.2, { ...made, shift: () => -0.04 });
  expect(codesOf(reduction(blue, 1, made), excluded, options)).toContain('specular-modes-differ');
  const included = reduction(blue, 1.2, { surface: { ...surface, specular: 'excluded' }, shift: () => 0.04 });
  const asExcluded = { ...surface, specular: 'excluded' as const };
  const plain = reduction(blue, 1, { surface: asExcluded });
  expect(
    codesOf(plain, included, { surface: asExcluded, white: reduction(blue, 0, { surface: asExcluded }) }),
  ).toContain('specular-modes-differ');
  expect(codesOf(reduction(blue, 1, made), reduction(blue, 1.2, made), options)).toEqual([]);
});

describe('readings in different specular modes', () => {
  const made = { surface: PAINT_SURFACE };
  const options = { surface: PAINT_SURFACE, white: reduction(blue, 0, made) };
  const modesOf = (trial: Spectrum, more: Partial<StrengthOptions> = options) =>
    noteOf(strengthOf(reduction(blue, 1, made), trial, more), 'specular-modes-differ')?.figures;

  test('are told by the mode that the trial seems to have been read in', () => {
    expect(modesOf(reduction(blue, 1.2, { ...made, shift: () => -0.04 }))).toEqual({
      trialMode: 'excluded',
      referenceMode: 'included',
    });
    expect(modesOf(reduction(blue, 1.2, { ...made, shift: () => 0.04 }))).toEqual({
      trialMode: 'included',
      referenceMode: 'excluded',
    });
  });

  test('are told by k1 0.04 where no surface is stated', () => {
    const plain = { white: reduction(blue, 0, made) };
    expect(modesOf(reduction(blue, 1, { ...made, shift: () => -0.04 }), plain)).toEqual({
      trialMode: 'excluded',
      referenceMode: 'included',
    });
  });

  test.each([
    // with a k1 of 0.01 the two modes lie too close together to leave a residual above 0.5
    ['the residual is no cause for doubt', 0.01, 1, { read: [0.4, 0.5], corrected: [0, 0.001] }],
    // a trial that lacks only 0.7 k1 fits better with k1 added, but not four times
    ['k1 makes the fit less than four times better', 0.04, 0.7, { read: [1, 1.5], corrected: [1 / 3, 0.5] }],
  ])('are not where %s', (_, external, share, { read, corrected }) => {
    const surface = { ...PAINT_SURFACE, external };
    const more = { surface, white: reduction(blue, 0, { surface }) };
    const shifted = (shift: number) =>
      strengthOf(reduction(blue, 1, { surface }), reduction(blue, 1.2, { surface, shift: () => shift }), more);
    const found = shifted(-share * external);
    expect(noteOf(found, 'specular-modes-differ')).toBeUndefined();
    // that the two cases are what they say; residuals are regression values to about a tenth
    for (const [{ dE2000 }, [least, most]] of [
      [found.residual, read],
      [shifted((1 - share) * external).residual, corrected],
    ] as const) {
      expect(dE2000).toBeGreaterThanOrEqual(least);
      expect(dE2000).toBeLessThan(most);
    }
  });

  test('are not where another shade explains the residual', () => {
    const other = bell(570, 60, 0.8, 0.03);
    const result = strengthOf(reduction(blue, 1, made), reduction(other, 1, made), options);
    expect(result.residual.dE2000).toBeGreaterThan(2);
    expect(noteOf(result, 'specular-modes-differ')).toBeUndefined();
  });
});
