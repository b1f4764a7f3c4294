/** Every code of a warning in the package. */
export const WARNING_CODES = [
  // colorimetry
  'condition-not-stated',
  'instruments-differ',
  'sessions-differ',
  'band-passes-differ',
  'narrow-features',
  'reflectance-above-one',
  'whiteness-out-of-limits',
  // films and surface
  'bronzing',
  'film-hides',
  'fluorescence',
  'readings-impossible',
  'readings-reversed',
  'substrate-unknown',
  'surface-not-told',
  // films and strength
  'amounts-far-apart',
  'absorption-maximum-at-end',
  'nearly-opaque',
  'negative-absorption',
  'negative-scattering',
  'several-solutions',
  'shade-change',
  'theories-differ',
  'white-darker',
  'absorption-saturated',
  'absorption-weak',
  'range-cut-short',
  // scatter and conditions of strength
  'no-interval',
  'replicates-identical',
  'scatter-borrowed',
  'specular-modes-differ',
  'near-neutral',
  'extrapolated',
  'criteria-unsolved',
  // evidence
  'blocks-not-separable',
  'never-in-one-session',
  'white-exact',
  // fits
  'falls-off',
  'form-not-compared',
  'forms-undecided',
  'interval-open',
  'lack-of-fit',
  'margin-not-shown',
  'no-fit',
  'reached-at-start',
  'runs-not-repeated',
  'white-not-separable',
  // rub-out
  'rubbed-uneven',
  'spot-stands-out',
  'thickness-missing',
  'white-missing',
  'no-strength-change',
  // files
  'cielab-assumed',
  'colour-disagrees',
  'condition-after-data',
  'condition-contradicted',
  'condition-not-understood',
  'dark-readings',
  'differences-left-out',
  'empty-bands-cut',
  'hunter-lab-left-out',
  'limits-differ',
  'mode-from-name',
  'name-column-guessed',
  'negative-noise',
  'other-quantities-left-out',
  'perhaps-cut-off',
  'readings-excluded',
  'statistics-left-out',
  'tristimulus-scaled',
  'turned-into-reflectance',
  'wavelengths-resampled',
  'colours-left-out',
  'decimal-comma',
  'lines-outside-tables',
  'names-numbered',
  'not-read',
  'several-grids',
  'tables-without-colour',
  'wavelengths-descending',
  'wavelengths-dropped',
  'wavelengths-reordered',
  'wavelengths-rounded',
  'windows-1252-assumed',
  'percent-assumed',
  'fraction-assumed',
  'reflectance-assumed',
  'name-missing',
  'viewing-not-stated',
  'columns-kept-as-text',
  // studies
  'readings-unused',
  // production
  'adjustment-limited',
  'adjustment-not-proven',
  'shade-not-strength',
  'strength-far-from-standard',
  'readings-equal',
  'figure-missing',
] as const;

/** One of {@link WARNING_CODES}. */
export type WarningCode = (typeof WARNING_CODES)[number];

/**
 * A fact that a reader of a result must know but that does not make the result wrong: an assumption a
 * reader made, a figure that is ill-posed, a legal oddity in the data.
 *
 * `code` is stable and for programs; `message` is a full sentence for people; `path` is a path, a wavelength
 * or a line where there is one; `figures` are those that the message names, for programs.
 */
export interface Warning {
  readonly code: WarningCode;
  readonly message: string;
  readonly path?: string;
  readonly figures?: Readonly<Record<string, number | string | readonly number[] | readonly string[]>>;
}
