// CIEDE2000 pairs of Sharma, Wu & Dalal (2005), Color Res. Appl. 30, Table 1.
import { diff } from 'color-diff';
import { differenceCiede2000 } from 'culori';
import { describe, expect, test } from 'vitest';
import { deltaE2000 } from '../../src/colorimetry/index.js';
import { SHARMA_PAIRS } from './sharma-2005.js';

const HALF_A_UNIT = 0.5e-4;
const culori = differenceCiede2000();

describe('Sharma, Wu & Dalal (2005), Table 1', () => {
  test('has 34 pairs', () => expect(SHARMA_PAIRS).toHaveLength(34));

  test.each(SHARMA_PAIRS.map((pair, i) => ({ row: i + 1, ...pair })))('pair $row, both orders', (pair) => {
    const { reference, sample, difference } = pair;
    expect(Math.abs(deltaE2000(reference, sample) - difference)).toBeLessThan(HALF_A_UNIT);
    expect(Math.abs(deltaE2000(sample, reference) - difference)).toBeLessThan(HALF_A_UNIT);
  });

  test.each(SHARMA_PAIRS.map((pair, i) => ({ row: i + 1, ...pair })))(
    'pair $row is as printed in two libraries',
    (pair) => {
      const { reference, sample, difference } = pair;
      const lab65 = ({ L, a, b }: typeof reference) => ({ mode: 'lab65' as const, l: L, a, b });
      expect(Math.abs(culori(lab65(reference), lab65(sample)) - difference)).toBeLessThan(HALF_A_UNIT);
      const asColorDiff = ({ L, a, b }: typeof reference) => ({ L, a, b });
      expect(Math.abs(diff(asColorDiff(reference), asColorDiff(sample)) - difference)).toBeLessThan(HALF_A_UNIT);
    },
  );
});
