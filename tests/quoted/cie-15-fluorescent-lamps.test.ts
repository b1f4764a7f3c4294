// Chromaticities x, y of illuminants FL1 to FL12 for the 2 degree observer, CIE 015, table of fluorescent lamps. Typed from memory of
// the printed table; since each follows from 81 tabulated powers, a slip in either would show.
import { expect, test } from 'vitest';
import { type IlluminantName, whitePoint } from '../../src/colorimetry/index.js';

const CHROMATICITIES = `
FL1 0.3131 0.3371
FL2 0.3721 0.3751
FL3 0.4091 0.3941
FL4 0.4402 0.4031
FL5 0.3138 0.3452
FL6 0.3779 0.3882
FL7 0.3129 0.3292
FL8 0.3458 0.3586
FL9 0.3741 0.3727
FL10 0.3458 0.3588
FL11 0.3805 0.3769
FL12 0.4370 0.4042
`
  .trim()
  .split('\n')
  .map((line) => line.split(' '));

test.each(CHROMATICITIES)('%s', (name, x, y) => {
  const { X, Y, Z } = whitePoint({ illuminant: name as IlluminantName, observer: '2' });
  expect(Math.abs(X / (X + Y + Z) - Number(x))).toBeLessThanOrEqual(0.00006);
  expect(Math.abs(Y / (X + Y + Z) - Number(y))).toBeLessThanOrEqual(0.00006);
});
