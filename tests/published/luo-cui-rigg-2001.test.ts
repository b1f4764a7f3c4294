// The pairs with which CIEDE2000 was published, through CIELAB: Luo, Cui & Rigg (2001), Color Res. Appl. 26.
import { expect, test } from 'vitest';
import { deltaE2000, labFromXyz } from '../../src/colorimetry/index.js';
import { LUO_CUI_RIGG_PAIRS, LUO_CUI_RIGG_WHITE, luoCuiRiggTolerance } from './luo-cui-rigg-2001.js';

test.each(LUO_CUI_RIGG_PAIRS)('pair $row from XYZ through CIELAB', ({ row, reference, sample, difference }) => {
  const from = (xyz: typeof reference) => labFromXyz(xyz, LUO_CUI_RIGG_WHITE);
  expect(Math.abs(deltaE2000(from(reference), from(sample)) - difference)).toBeLessThan(luoCuiRiggTolerance(row));
  expect(Math.abs(deltaE2000(from(sample), from(reference)) - difference)).toBeLessThan(luoCuiRiggTolerance(row));
});

test('pair 1 has the printed CIELAB values', () => {
  const [{ reference, sample }] = LUO_CUI_RIGG_PAIRS;
  const printed = [
    [labFromXyz(reference, LUO_CUI_RIGG_WHITE), { L: 60.2574, a: -34.0099, b: 36.2677 }],
    [labFromXyz(sample, LUO_CUI_RIGG_WHITE), { L: 60.4626, a: -34.1751, b: 39.4387 }],
  ];
  for (const [computed, expected] of printed) {
    for (const axis of ['L', 'a', 'b'] as const) {
      expect(Math.abs(computed[axis] - expected[axis])).toBeLessThan(0.5e-4);
    }
  }
});
