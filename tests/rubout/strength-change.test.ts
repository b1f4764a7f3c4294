import { describe, expect, test } from 'vitest';
import { spectralChange } from '../../src/rubout/spectral-change.js';
import { fitStrength } from '../../src/rubout/strength-change.js';
import { filmRow, SURFACE, WAVELENGTHS } from './films.js';

const changeOf = (before: number[], after: number[], white?: number[]) => {
  const [unrubbed, rubbed] = [Float64Array.from(before), Float64Array.from(after)];
  const found = spectralChange(
    { wavelengths: WAVELENGTHS, unrubbed, rubbed, white: white && Float64Array.from(white) },
    SURFACE,
  );
  if (!found) throw new Error('these films have a K/S');
  return found;
};
const white = filmRow({ colour: 0 });

describe('the strength over the spectrum', () => {
  test.each([0.5, 0.9, 1.3])('finds the factor of the colorant, %d, by arithmetic of Kubelka-Munk', (colour) => {
    const { fitted } = fitStrength(changeOf(filmRow(), filmRow({ colour }), white), []);
    expect(fitted?.change).toBeCloseTo(colour - 1, 6);
  });

  test('a pale tint, whose maximum lies on the edge of its white, is read as surely: +36 %', () => {
    const found = changeOf(filmRow({ colour: 0.05 }), filmRow({ colour: 0.068 }), white);
    expect(fitStrength(found, []).fitted?.change).toBeCloseTo(0.36, 6);
  });

  test('has an interval from how readings scatter', () => {
    const found = changeOf(filmRow(), filmRow({ colour: 1.01 }), white);
    const residuals = [found.change.map((value) => 0.1 * value), found.change.map((value) => -0.1 * value)];
    const { fitted } = fitStrength(found, [{ residuals, degreesOfFreedom: 1, share: 1 }]);
    // both residuals are about a tenth of the change: √(2 · 0.001²) times Student's 12.706 at one degree of freedom
    expect(((fitted?.interval?.high ?? 0) - 0.01) / (12.706 * Math.SQRT2 * 0.001)).toBeCloseTo(1, 1);
  });

  test('there is none where the film is its own white, or the white the darker one', () => {
    const none = (found: ReturnType<typeof changeOf>) => fitStrength(found, []);
    expect(none(changeOf(white, white, white))).toMatchObject({ warnings: [{ code: 'no-strength-change' }] });
    const darker = none(changeOf(white, white, filmRow()));
    expect(darker.fitted).toBeUndefined();
    expect(darker.warnings.map(({ code }) => code)).toEqual(['no-strength-change']);
  });

  test('a weak one is noted', () => {
    const { warnings } = fitStrength(changeOf(filmRow({ colour: 0.0003 }), filmRow({ colour: 0.0006 }), white), []);
    expect(warnings.map(({ code }) => code)).toEqual(['absorption-weak']);
  });
});
