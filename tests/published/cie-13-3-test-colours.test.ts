// Munsell values of the CIE 13.3-1995 test colours, as the publication names them, against the luminous reflectance that ASTM D1535
// gives for a value: Y = 1.1914 V - 0.22533 V^2 + 0.23352 V^3 - 0.020484 V^4 + 0.00081939 V^5 (illuminant C, 2 degrees, perfect diffuser).
import { expect, test } from 'vitest';
import { C_2, createSpectrum, xyzFromSpectrum } from '../../src/colorimetry/index.js';
import { TEST_COLOURS } from './cie-13-3-test-colours.js';

const NOTATIONS = `
7.5R 6/4
5Y 6/4
5GY 6/8
2.5G 6/6
10BG 6/4
5PB 6/8
2.5P 6/8
10P 6/8
4.5R 4/13
5Y 8/10
4.5G 5/8
3PB 3/11
5YR 8/4
5GY 4/4
`
  .trim()
  .split('\n');

test.each(NOTATIONS.map((notation, i) => [notation, i] as const))('test colour %s', (notation, i) => {
  const V = Number(notation.split(' ')[1].split('/')[0]);
  const luminous = 1.1914 * V - 0.22533 * V ** 2 + 0.23352 * V ** 3 - 0.020484 * V ** 4 + 0.00081939 * V ** 5;
  const { Y } = xyzFromSpectrum(
    createSpectrum({ start: 360, step: 5, values: TEST_COLOURS[i], scale: 'fraction' }),
    C_2,
  );
  // The colours were chosen near the notation, which is given to a whole value for most: 0.2 of a value is allowed.
  const slope = 1.1914 - 0.45066 * V + 0.70056 * V ** 2 - 0.081936 * V ** 3 + 0.00409695 * V ** 4;
  expect(Math.abs(Y - luminous)).toBeLessThan(0.2 * slope);
});
