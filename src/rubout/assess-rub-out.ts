import { colourDifference } from '../colorimetry/index.js';
import type { Warning } from '../core/index.js';
import { judge } from '../decision/index.js';
import type { Repeated } from '../evidence/index.js';
import { type Area, areaFrom, assertComparable, type RubOutReading } from './area.js';
import { changeOf, meansOf, measuredChange, noiseOf, strengthOf } from './area-change.js';
import { conditionsOfAreas } from './area-conditions.js';
import { differenceScatter } from './difference-interval.js';
import { differenceIsShown } from './difference-is-shown.js';
import { directionOf } from './direction.js';
import { evidenceOf } from './evidence.js';
import { filmOverBlack, surfaceShown } from './further-readings.js';
import { nextSteps } from './next-steps.js';
import { type RubOutOptions, type Settings, settingsFrom } from './rub-out-options.js';
import type { RubOutResult, Tint } from './rub-out-result.js';
import type { SpectralChange } from './spectral-change.js';
import { fitStrength, type StrengthFit } from './strength-change.js';
import { evennessOf, noteEvenness } from './unevenness.js';
import { weighCauses } from './weigh-causes.js';

/**
 * Assesses a rub-out: by how much the rubbed area of a film differs from the unrubbed one, whether that is more than the limit, which way the
 * colour moved, which causes account for it, and what to check next.
 *
 * Rubbing shears the wet film after flash-off, which takes clusters apart and mixes what had separated. The difference is compared with the limit
 * by its 95 % interval. Where a difference is shown, every cause is weighed by what it would change in the spectrum: more absorption of the
 * coloured pigments, more scattering of the white, both, an exchange of pigments at the surface, another gloss, another thickness. A cause whose
 * best curve leaves more than the noise accounts for is ruled out; all others stand, since equal K/S proves nothing about K and S. Separation
 * stands always beside flocculation. Lab values rule out nothing.
 *
 * The interval holds every true difference under which the one found is no surprise, so noise, which makes a length too large near zero, is
 * allowed for. Several drawdowns are paired by position and their differences carry the interval; spots of one film speak of that film only.
 *
 * @param unrubbed - one reading, `{ spot: [...] }`, or `{ drawdown: [{ spot: [...] }, ...] }`; all spectra or all Lab
 * @param rubbed - the same of the rubbed areas, drawdown by drawdown in the same order
 * @param options - viewing and surface, and what is known of white, limit, precision and pigments
 * @returns difference, interval, outcome, direction, causes with their standing, evidence and next steps. Warning codes:
 * `replicates-identical`, `scatter-borrowed`, `spot-stands-out`, `rubbed-uneven`, `no-strength-change`, `absorption-weak`, `white-missing`,
 * `condition-not-stated`, `instruments-differ`, `sessions-differ`, `band-passes-differ`
 * @throws TintladderError `repetition-unstated` for a bare list, `level-misplaced`; `empty` for a reading without a colour; `wrong-length` for
 * sides with unequal numbers of drawdowns; `kinds-mixed` for Lab beside spectra; `grid-mismatch`; `conditions-mismatch` for readings under
 * different conditions; `invalid-limit` for a limit of zero or less; `invalid-option`; `invalid-interval` for a colorant's; `not-finite`;
 * `unknown-illuminant`, `unknown-observer`
 * @example
 * const spots = (L, a, b) => ({ spot: [{ L, a, b }, { L: L + 0.1, a, b: b - 0.1 }, { L: L - 0.1, a: a + 0.1, b }] });
 * const options = { viewing: D65_10, surface: 'none' };
 * assessRubOut(spots(62, -8, -34), spots(59.5, -7.6, -36), options).direction.towards // 'more-colour'
 * @example assessRubOut([{ L: 60, a: 0, b: 0 }], { L: 60, a: 0, b: 0 }, { viewing: D65_10, surface: 'none' }) // throws repetition-unstated
 * @see ASTM D5326, 5.1 and 5.3: the direction tells which side is poorly developed, both may be, and finger rubbing varies widely between
 * operators. Limits are common practice, no source. Kubelka & Munk (1931), Z. tech. Phys. 12, for the forward models
 */
export function assessRubOut(
  unrubbed: Repeated<RubOutReading>,
  rubbed: Repeated<RubOutReading>,
  options: RubOutOptions,
): RubOutResult {
  const settings = settingsFrom(options);
  const { viewing, surface, limit, measure, precision, tint, colorantChanges, lines } = settings;
  const areas = [areaFrom(unrubbed, 'unrubbed', viewing), areaFrom(rubbed, 'rubbed', viewing)] as const;
  const white = whiteOf(settings);
  assertComparable(areas, white);
  const conditions = conditionsOfAreas([...areas, ...(white ? [white] : [])], surface);

  const { from, to, spectra } = meansOf(areas, settings);
  const difference = colourDifference(from, to);
  const scatter = differenceScatter(areas, difference, precision);
  const { interval, covariance } = scatter;
  const outcome = judge(difference[measure], interval?.[measure], { upper: limit });
  const change = changeOf(areas, white, spectra, settings, [from, to]);
  const { spectral, deviations } = change;
  const strength: StrengthFit = spectral ? fitStrength(spectral, deviations) : { warnings: [NO_RATIO] };
  const strengthChange = strengthOf(strength.fitted, change, to, settings);
  const evenness = {
    unrubbed: evennessOf(areas[0], lines.unevenness),
    rubbed: evennessOf(areas[1], lines.unevenness),
  };

  const visible = difference.dE2000 >= lines.visible;
  const shown = interval !== undefined && differenceIsShown(difference, interval, covariance);
  const hidden = interval !== undefined && interval.dE2000.high <= lines.visible;
  const finding = hidden ? 'none-visible' : shown ? 'difference' : 'open';
  const relevant = visible || difference[measure] >= limit / 2;
  const noise = spectral && areas[0].spectra && areas[1].spectra ? noiseOf(areas, spectral, settings) : undefined;
  const wanted = relevant && (shown || interval === undefined);
  const causes = wanted
    ? weighCauses({
        tint,
        spectral: areas[0].spectra && spectral,
        noise,
        strength: strength.fitted?.change,
        specular: conditions.specular,
        surfaceShown: surfaceShown(settings, areas),
        film: filmOverBlack(settings, areas[0], spectral),
        colorantChanges,
        uneven: evenness.unrubbed,
      })
    : [];
  const warnings: Warning[] = [
    ...areas.flatMap((area) => area.warnings),
    ...conditions.warnings,
    ...scatter.warnings,
    ...strength.warnings,
    ...noteEvenness('unrubbed', evenness.unrubbed),
    ...noteEvenness('rubbed', evenness.rubbed),
    ...noteWhite(tint, white, spectral),
  ];
  const capped = evenness.unrubbed.uneven || warnings.some(({ code }) => code === 'absorption-weak');
  const direction =
    wanted && spectral
      ? directionOf({ spectral, strengthChange, difference, lines, causes, certain: shown && !capped })
      : undefined;
  const drawdowns = areas[0].units.length;
  return {
    kind: 'rub-out',
    version: 1,
    difference,
    ...(interval && { interval }),
    ...(scatter.readingDeviation !== undefined && { readingDeviation: scatter.readingDeviation }),
    ...(covariance && { covariance }),
    ...(strengthChange && { strengthChange }),
    limit,
    measure,
    outcome,
    finding,
    visible,
    ...(direction && { direction }),
    causes,
    ...(spectral && areas[0].spectra && { spectrum: measuredChange(spectral, noise) }),
    evenness,
    evidence: evidenceOf({
      difference,
      interval,
      limit,
      measure,
      outcome,
      finding,
      visible,
      direction,
      strengthChange,
      evenness,
      drawdowns,
      colorantChanges,
      causes,
      thresholds: lines,
    }),
    next: nextSteps({
      outcome,
      finding,
      causes,
      scatterKnown: interval !== undefined,
      whiteKnown: white !== undefined || tint === 'mass-tone' || tint === 'white',
      spots: Math.min(...areas.flatMap(({ units }) => units.map((unit) => unit.length))),
      drawdowns,
      unevenRubbed: evenness.rubbed.uneven,
      faults: [evenness.unrubbed.fault, evenness.rubbed.fault].filter((path) => path !== undefined),
    }),
    tint,
    ...(colorantChanges.length > 0 && { colorantChanges }),
    thresholds: lines,
    viewing,
    surface,
    whiteSubtracted: white !== undefined,
    readings: areas[0].spectra ? 'spectra' : 'lab',
    claim: drawdowns > 1 ? 'paint' : 'film',
    repetition: { unrubbed: areas[0].repetition, rubbed: areas[1].repetition },
    warnings,
  };
}

const NO_RATIO: Warning = {
  code: 'no-strength-change',
  message: 'The readings have no K/S over most of the spectrum, so the change has no direction.',
  path: 'unrubbed',
};

function whiteOf({ white, viewing }: Settings): Area | undefined {
  return white === undefined ? undefined : areaFrom(white, 'options.white', viewing);
}

/** K/S of a tint below which the white's own absorption makes much of it. */
const PALE = 0.15;

function noteWhite(tint: Tint, white: Area | undefined, spectral: SpectralChange | undefined): Warning[] {
  if (white || !spectral || tint === 'mass-tone' || tint === 'white' || Math.max(...spectral.ratio) > PALE) return [];
  const message =
    'A pale tint was read without its white base, whose own absorption then counts as that of the colorant.';
  return [{ code: 'white-missing', message, path: 'options.white' }];
}
