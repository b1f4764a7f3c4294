import { describe, expect, test } from 'vitest';
import { D65_10 } from '../../src/colorimetry/index.js';
import { relativeTintingStrength, STRENGTH_CRITERIA } from '../../src/strength/index.js';
import { COLORANTS, reduction } from './simulated-reductions.js';

describe('amounts', () => {
  const blue = COLORANTS.blue;
  const white = reduction(blue, 0);
  const amounts = { reference: { colorant: 2, white: 25 }, trial: { colorant: 3, white: 20 } };

  test('strength is per colorant and white: twice the colorant of half the strength is 50 %', () => {
    const perWhite = ({ colorant, white }: { colorant: number; white: number }) => colorant / white;
    const reference = reduction(blue, 10 * perWhite(amounts.reference));
    const trial = reduction(blue, 0.5 * 10 * perWhite(amounts.trial));
    for (const criterion of STRENGTH_CRITERIA) {
      const result = relativeTintingStrength(reference, trial, {
        criterion,
        viewing: D65_10,
        surface: 'none',
        white,
        amounts,
      });
      expect(result.percent).toBeCloseTo(50, 5);
    }
  });

  test.each([
    ['reference', 'colorant', 0],
    ['reference', 'white', -1],
    ['trial', 'colorant', Number.NaN],
    ['trial', 'white', 0],
    ['reference', 'colorant', Number.POSITIVE_INFINITY],
    ['reference', 'white', Number.POSITIVE_INFINITY],
  ] as const)('%s.%s of %d is refused', (side, part, received) => {
    const wrong = { ...amounts, [side]: { ...amounts[side], [part]: received } };
    const spectrum = reduction(blue, 1);
    expect(() =>
      relativeTintingStrength(spectrum, spectrum, {
        criterion: 'tristimulus-y',
        viewing: D65_10,
        surface: 'none',
        amounts: wrong,
      }),
    ).toThrow(expect.objectContaining({ code: 'invalid-option', path: `options.amounts.${side}.${part}`, received }));
  });
});
