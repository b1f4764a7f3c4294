import { describeViewing } from '../colorimetry/index.js';
import type { Study } from './study.js';

/** How the figures came about, in sentences for the report. */
export function methodStatements({ viewing, surface, strengthCriterion, tint = 'single-pigment' }: Study): string[] {
  return [
    `Colours and differences are CIELAB (ISO/CIE 11664-4) and CIEDE2000 (ISO/CIE 11664-6) under ${describeViewing(viewing)}; differences are sample minus reference.`,
    surface
      ? `Readings are corrected for the surface (Saunderson 1942; k1 = ${surface.external}, k2 = ${surface.internal}, specular reflection ${surface.specular}).`
      : 'Readings are not corrected for the reflection at the surface.',
    `Relative tinting strength is by the criterion ${strengthCriterion}, from Kubelka-Munk K/S with the white base subtracted where it was read; the residual difference is that of the trial brought to the strength of the reference.`,
    'Intervals are 95 % intervals from the replicate readings. A figure meets or fails its limit only if its whole interval lies on one side of it; otherwise it is undecided (guard band after JCGM 106:2012).',
    `Rub-out is the difference between the rubbed and the unrubbed area, read as for a tint of ${tint === 'single-pigment' ? 'a single pigment' : 'several pigments'}; its direction is read by ASTM D5326, and the causes that fit are indications, to be confirmed under the microscope or by flow-point tests.`,
    'A package counts as good only if every paint does. The order is by one quantity among the packages that meet every criterion; nothing is weighted.',
  ];
}
