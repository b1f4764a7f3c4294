// The published colour differences once more, against the built package in whatever runs this: a browser or Deno.
import { deltaE2000, deltaE2000Rows, labFromXyz, whitePoint } from 'tintladder/colorimetry';
import { LUO_CUI_RIGG_PAIRS, LUO_CUI_RIGG_WHITE, luoCuiRiggTolerance } from '../published/luo-cui-rigg-2001.js';
import { SHARMA_PAIRS } from '../quoted/sharma-2005.js';

const HALF_A_UNIT = 0.5e-4;

/** How many pairs were checked, and a sentence for each that doesn't come out as printed. */
export function checkPublished() {
  const faults = [];
  const check = (place, computed, printed, tolerance) => {
    if (!(Math.abs(computed - printed) < tolerance)) faults.push(`${place}: ${computed}, printed ${printed}`);
  };
  for (const { row, reference, sample, difference } of LUO_CUI_RIGG_PAIRS) {
    const [from, to] = [reference, sample].map((xyz) => labFromXyz(xyz, LUO_CUI_RIGG_WHITE));
    check(`Luo, Cui & Rigg ${row}`, deltaE2000(from, to), difference, luoCuiRiggTolerance(row));
    check(`Luo, Cui & Rigg ${row}, turned round`, deltaE2000(to, from), difference, luoCuiRiggTolerance(row));
  }
  const flat = (side) => Float64Array.from(SHARMA_PAIRS.flatMap((pair) => [pair[side].L, pair[side].a, pair[side].b]));
  const batch = deltaE2000Rows(flat('reference'), flat('sample'));
  SHARMA_PAIRS.forEach(({ reference, sample, difference }, i) => {
    check(`Sharma ${i + 1}`, deltaE2000(reference, sample), difference, HALF_A_UNIT);
    check(`Sharma ${i + 1}, turned round`, deltaE2000(sample, reference), difference, HALF_A_UNIT);
    check(`Sharma ${i + 1}, batch`, batch[i], difference, HALF_A_UNIT);
  });
  // ASTM E308, D65 with the 10 degree observer
  const white = whitePoint({ illuminant: 'D65', observer: '10' });
  check('white X', white.X, 94.811, 0.002);
  check('white Z', white.Z, 107.304, 0.002);
  return { pairs: LUO_CUI_RIGG_PAIRS.length + SHARMA_PAIRS.length, faults };
}
