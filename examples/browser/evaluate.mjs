// From chosen readings to everything the page shows. Nothing here knows of the page, so it runs in Node as well.
import { labFromSpectrum, meanSpectrum } from 'tintladder/colorimetry';
import { assessRubOut } from 'tintladder/rubout';
import { compareStrengthCriteria } from 'tintladder/strength';

/** Surface reflection as the page offers it. The figures are those of a film with refractive index 1.5. */
export const SURFACES = {
  included: { external: 0.04, internal: 0.6, specular: 'included' },
  excluded: { external: 0.04, internal: 0.6, specular: 'excluded' },
  none: 'none',
};

/**
 * @param readings - spectra of each role: `reference` and `trial` unrubbed, and where they were chosen `referenceRubbed`,
 * `trialRubbed` and `white`; a role that was not chosen is an empty list
 * @param conditions - viewing, surface, criterion, what was repeated (`spot`, `drawdown` or `weighing`), and the largest accepted ΔE*ab of a rub-out
 * @returns strengths by every criterion, the chosen one or the reason that it has none, the rub-outs, and the mean colours
 */
export function evaluate(readings, { viewing, surface, criterion, repeated = 'spot', limit }) {
  const under = (spectra) => ({ [repeated]: spectra });
  const white = readings.white.length > 0 ? { white: under(readings.white) } : {};
  const comparison = compareStrengthCriteria(under(readings.reference), under(readings.trial), {
    viewing,
    surface,
    ...white,
  });
  // The page pairs no drawdowns, so a rub-out speaks of the films that were read.
  const ofWhite = readings.white.length > 0 ? { white: { spot: readings.white } } : {};
  const rubOutOptions = { viewing, surface, limit, ...ofWhite };
  const rubOut = (name, unrubbed, rubbed) =>
    rubbed.length > 0 ? [{ name, result: assessRubOut({ spot: unrubbed }, { spot: rubbed }, rubOutOptions) }] : [];
  const means = Object.entries(readings)
    .filter(([, spectra]) => spectra.length > 0)
    .map(([role, spectra]) => ({ role, count: spectra.length, spectrum: meanSpectrum(spectra) }));
  return {
    comparison,
    chosen: comparison.results.find((result) => result.criterion === criterion),
    unsolved: comparison.unsolved.find((one) => one.criterion === criterion),
    rubOuts: [
      ...rubOut('Reference', readings.reference, readings.referenceRubbed),
      ...rubOut('Trial', readings.trial, readings.trialRubbed),
    ],
    means: means.map((mean) => ({ ...mean, lab: labFromSpectrum(mean.spectrum, viewing) })),
  };
}
