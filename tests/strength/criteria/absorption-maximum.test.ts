import { expect, test } from 'vitest';
import { solveAbsorptionMaximum } from '../../../src/strength/criteria/absorption-maximum.js';
import { BANDS, flatBands, GREY } from '../grey-dilution.js';
import { bell, COLORANTS, type Curve, reduction } from '../simulated-reductions.js';
import { noteOf, strengthOf } from '../strength-of.js';

const white = reduction(COLORANTS.blue, 0);

test.each([
  [1.4, []],
  [1.41, ['near-neutral']],
])('with a maximum of 2 an even one is one whose least is above 1.4 (0.7 of it): %d', (least, expected) => {
  // wherever the least is, the ends of the range included
  for (const band of [BANDS.first, 10, BANDS.last]) {
    const reference = flatBands(1.5);
    reference[band] = least;
    // away from the ends, and neither dark nor pale
    reference[20] = 2;
    const { warnings } = solveAbsorptionMaximum({ ...GREY, reference });
    expect(warnings.map(({ code }) => code)).toEqual(expected);
  }
});

test('a reference that absorbs nearly evenly is said to, with the share of its least absorption', () => {
  const nearly: Curve = (wavelength) => (wavelength < 500 ? 0.46 : 0.5);
  const grid = { start: 400, step: 10, count: 31 };
  const result = strengthOf(
    reduction(nearly, 1, { grid, white: () => 0.01 }),
    reduction(nearly, 1.2, { grid, white: () => 0.01 }),
    {
      white: reduction(nearly, 0, { grid, white: () => 0.01 }),
    },
  );
  // (0.46 + 0.01 - 0.01) / 0.5: through the reflectances and back
  expect(noteOf(result, 'near-neutral')).toMatchObject({
    path: '500 nm',
    figures: { leastPercent: expect.closeTo(92, 6) },
  });
});

test('the maximum at the red end is noted too, and the end itself is looked at', () => {
  const red = bell(720, 60, 1, 0.01);
  const result = strengthOf(reduction(red, 1), reduction(red, 1.2), { white });
  expect(result.wavelength).toBe(700);
  expect(result.warnings).toContainEqual(
    expect.objectContaining({ code: 'absorption-maximum-at-end', path: '700 nm' }),
  );
});
