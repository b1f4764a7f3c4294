import { describeViewing } from '../colorimetry/index.js';
import type { StudyConditions } from './check-conditions.js';
import type { Study } from './study.js';

/** How the figures came about, in sentences for the report. */
export function methodStatements(study: Study, { specularFrom }: StudyConditions): string[] {
  const {
    viewing,
    surface,
    strengthCriterion,
    precision,
    tint = 'single-pigment',
    decision = { rule: 'interval' },
  } = study;
  return [
    `Colours and differences are CIELAB (ISO/CIE 11664-4) and CIEDE2000 (ISO/CIE 11664-6) under ${describeViewing(viewing)}; differences are sample minus reference.`,
    surface !== 'none'
      ? `Readings are corrected for the surface (Saunderson 1942; k1 = ${surface.external}, k2 = ${surface.internal}, specular reflection ${surface.specular}, stated by ${specularFrom === 'files' ? 'the files and the study' : 'the study only'}).`
      : 'Readings are not corrected for the reflection at the surface.',
    `Relative tinting strength is by the criterion ${strengthCriterion}, from Kubelka-Munk K/S with the white base subtracted where it was read; the residual difference is that of the trial brought to the strength of the reference.`,
    'An interval of a strength comes from units that were made anew (grinds, weigh-ups or drawdowns), pooled over the packages of a paint; repeats within one only average. It is a 95 % interval; a joint interval holds together with those of all packages in all paints at one rate of 5 % (Dunnett 1955), and findings and outcomes rest on it.',
    ...(precision?.strength
      ? [
          `The laboratory's history of scatter (${precision.strength.source ?? 'source not stated'}) is a floor: the larger of it and of today's scatter counts, and it stands in for what was not made anew.`,
        ]
      : []),
    decision.rule === 'interval'
      ? 'A figure meets or fails its limit only if its whole interval lies on one side of it; otherwise it is undecided (guard band after JCGM 106:2012). That leaves a risk of at most 2.5 % at each limit.'
      : `A figure meets its limit if it conforms with a probability of at least 1 less its share of the risk of ${decision.risk}, which all packages share (JCGM 106:2012).`,
    `Rub-out is the difference between the rubbed and the unrubbed area, read as for a tint of ${tint === 'single-pigment' ? 'a single pigment' : 'several pigments'}; its direction is read by ASTM D5326, and the causes that fit are indications, to be confirmed under the microscope or by flow-point tests.`,
    'A package counts as good only if every paint does. The order is by one quantity among the packages that meet every criterion; nothing is weighted.',
  ];
}
