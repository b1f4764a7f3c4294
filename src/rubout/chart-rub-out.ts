import { createSpectrum, gridOf, type Spectrum, type Viewing } from '../colorimetry/index.js';
import { assertSameGrid } from '../colorimetry/internal.js';
import { TintladderError, type Warning } from '../core/index.js';
import { assertObject, assertOptions } from '../core/internal.js';
import type { Interval } from '../decision/index.js';
import type { Repeated } from '../evidence/index.js';
import { readRepeated } from '../evidence/internal.js';
import { type ChartDrawdown, type DrawdownFilm, drawdownFilm, type SurfaceCorrection } from '../kubelka-munk/index.js';
import { assertSurface } from '../kubelka-munk/internal.js';
import { meanRow } from '../numeric/internal.js';
import { type ChartArea, coefficientRatios } from './coefficient-ratios.js';

/** One area of a film that does not quite hide, read over both fields of a chart. */
export interface ChartRubOutArea {
  readonly overBlack: Repeated<Spectrum>;
  readonly overWhite: Repeated<Spectrum>;
  /** Thickness from a gauge, or mass of the film for an area, in any unit that both areas share. */
  readonly thickness?: number | undefined;
}

/** Options of {@link assessChartRubOut}. */
export interface ChartRubOutOptions {
  /** Of the contrast ratio. */
  readonly viewing: Viewing;
  readonly surface: SurfaceCorrection;
  /** The bare fields of the chart. */
  readonly black: Spectrum;
  readonly white: Spectrum;
  /** Standard uncertainty of one thickness, as a share: 0.01 is 1 %. @default 0.02 */
  readonly thicknessUncertainty?: number | undefined;
  /** Change of K or S that counts as none, as a share. Common practice, no source. @default 0.05 */
  readonly margin?: number | undefined;
}

/** What a rub-out over a chart says of a pigment: its clusters came apart, they did not, it went the other way, or neither is shown. */
export const FREED_FINDINGS = ['freed', 'not-freed', 'less', 'open'] as const;

/** One of {@link FREED_FINDINGS}. */
export type FreedFinding = (typeof FREED_FINDINGS)[number];

/** A ratio, rubbed over unrubbed, at equal thickness. */
export interface CoefficientRatio {
  readonly value: number;
  /** 95 %; absent where nothing shows the scatter. */
  readonly interval?: Interval;
}

/** Absorption and scattering of a film before and after rubbing, read apart. */
export interface ChartRubOutResult {
  readonly kind: 'chart-rub-out';
  readonly version: 1;
  /** K and S of the rubbed area over those of the unrubbed one; absent where every band hides or no film reads so. */
  readonly absorption?: CoefficientRatio;
  readonly scattering?: CoefficientRatio;
  /** What that says of the coloured pigments (K) and of the white (S). */
  readonly coloured: FreedFinding;
  readonly white: FreedFinding;
  /** Whether a pigment was flocculated: true where one was freed, false where both were not; absent otherwise. */
  readonly flocculated?: boolean;
  readonly films: { readonly unrubbed: DrawdownFilm; readonly rubbed: DrawdownFilm };
  /** Wavelengths at which both areas let the chart show through, nm. */
  readonly wavelengths: readonly number[];
  readonly thicknessKnown: boolean;
  readonly next: readonly string[];
  readonly warnings: readonly Warning[];
}

/** Common practice, no source. */
const USUAL_UNCERTAINTY = 0.02;
const USUAL_MARGIN = 0.05;

/**
 * A rub-out over a chart: absorption K and scattering S of both areas apart, which one opaque reading can't give.
 *
 * Each area is read over black and over white where the film does not quite hide (contrast ratio below about 0.99); the two readings and the bare
 * fields give K X and S X (Kubelka 1948). Clusters of the coloured pigment that come apart raise K, clusters of the white raise S, both raise both,
 * and pigments that only trade places within the film raise neither. Rubbing also thins the film, which lowers K X and S X alike: without a
 * thickness of both areas nothing is said of a pigment. Bands that hide carry no S and are left out.
 *
 * @param unrubbed - spectra over both fields, one reading or `{ spot: [...] }`, and the thickness
 * @param rubbed - the same of the rubbed area
 * @param options - viewing, surface, bare fields, uncertainty of the thickness, margin
 * @returns ratios of K and S with 95 % intervals, what they say of coloured pigment and white, both films. Warning codes `film-hides`,
 * `thickness-missing`, `no-interval`, and those of `drawdownFilm`
 * @throws TintladderError `wrong-type`; `invalid-option`; `out-of-range` for a thickness that is not positive; `grid-mismatch`;
 * `repetition-unstated`, `level-misplaced`, `empty`; `zero-reflectance`
 * @example
 * const wavelengths = Array.from({ length: 31 }, (_, i) => 400 + 10 * i);
 * const flat = (R) => createSpectrum({ start: 400, step: 10, values: wavelengths.map(() => R), scale: 'fraction' });
 * const over = (substrate, S) => flat(filmReflectance({ absorption: 0.1, scattering: S, thickness: 3, substrate }));
 * const area = (S) => ({ overBlack: over(0.05, S), overWhite: over(0.8, S), thickness: 60 });
 * const options = { viewing: D65_10, surface: 'none', black: flat(0.05), white: flat(0.8) };
 * assessChartRubOut(area(1), area(1.2), options).scattering.value // 1.2
 * @see Kubelka (1948), J. Opt. Soc. Am. 38, 448-457; ASTM D5326 for the rub-out, ASTM D2805 for the chart
 */
export function assessChartRubOut(
  unrubbed: ChartRubOutArea,
  rubbed: ChartRubOutArea,
  options: ChartRubOutOptions,
): ChartRubOutResult {
  assertObject(options, 'options');
  assertOptions(options, ['viewing', 'surface', 'black', 'white', 'thicknessUncertainty', 'margin']);
  const { surface, black, white, margin = USUAL_MARGIN } = options;
  const { thicknessUncertainty = USUAL_UNCERTAINTY } = options;
  assertSurface(surface, 'options.surface');
  assertShare(thicknessUncertainty, 'options.thicknessUncertainty');
  assertShare(margin, 'options.margin');
  const areas = [readArea(unrubbed, 'unrubbed', black), readArea(rubbed, 'rubbed', black)] as const;
  assertSameGrid(black, white, 'options.white');
  const films = areas.map((area) => filmOf(area, options));
  const thickness = areas.map((area) => area.thickness);
  const thicknessKnown = thickness[0] !== undefined && thickness[1] !== undefined;
  const found = coefficientRatios(areas, {
    surface,
    black: black.values,
    white: white.values,
    ...(thicknessKnown && { thicknessUncertainty }),
  });
  const wavelengths = found ? found.bands.map((band) => black.start + band * black.step) : [];
  const coloured = thicknessKnown ? findingOf(found?.absorption, margin) : 'open';
  const ofWhite = thicknessKnown ? findingOf(found?.scattering, margin) : 'open';
  const freed = coloured === 'freed' || ofWhite === 'freed';
  const flocculated = freed ? true : coloured === 'not-freed' && ofWhite === 'not-freed' ? false : undefined;
  const notes: Warning[] = [
    ...(thicknessKnown ? [] : [THICKNESS_MISSING]),
    ...(found && !found.scattering.interval ? [NO_INTERVAL] : []),
  ];
  return {
    kind: 'chart-rub-out',
    version: 1,
    ...(found && { absorption: found.absorption, scattering: found.scattering }),
    coloured,
    white: ofWhite,
    ...(flocculated !== undefined && { flocculated }),
    films: { unrubbed: films[0], rubbed: films[1] },
    wavelengths,
    thicknessKnown,
    next: stepsOf(found !== undefined, thicknessKnown, [coloured, ofWhite]),
    warnings: [...films.flatMap(({ warnings }) => warnings), ...notes],
  };
}

const THICKNESS_MISSING: Warning = {
  code: 'thickness-missing',
  message:
    'Rubbing thins the film and moves K X and S X alike: without the thickness of both areas nothing is said of a pigment.',
  path: 'rubbed.thickness',
};
const NO_INTERVAL: Warning = {
  code: 'no-interval',
  message: 'Each area was read once over a field, so the scatter of the ratios is not known.',
  path: 'unrubbed',
};

function readArea(area: ChartRubOutArea, path: string, black: Spectrum): ChartArea {
  assertObject(area, path, 'readings { overBlack, overWhite, thickness }');
  const { thickness } = area;
  const gauged = typeof thickness === 'number' && thickness > 0 && thickness < Number.POSITIVE_INFINITY;
  if (thickness !== undefined && !gauged) {
    throw new TintladderError('out-of-range', {
      path: `${path}.thickness`,
      received: thickness,
      expected: 'a finite thickness above 0',
    });
  }
  const rowsOf = (given: Repeated<Spectrum>, name: string) =>
    readRepeated<Spectrum>(given, `${path}.${name}`).readings.map(({ reading, path: place }) => {
      assertSameGrid(black, reading, place);
      return reading.values;
    });
  return {
    overBlack: rowsOf(area.overBlack, 'overBlack'),
    overWhite: rowsOf(area.overWhite, 'overWhite'),
    ...(thickness !== undefined && { thickness }),
  };
}

function filmOf(
  { overBlack, overWhite }: ChartArea,
  { viewing, surface, black, white }: ChartRubOutOptions,
): DrawdownFilm {
  const { start, step } = gridOf(black);
  const mean = (rows: readonly Float64Array[]) =>
    createSpectrum({ start, step, values: meanRow(rows), scale: 'fraction' });
  const drawdown: ChartDrawdown = { overBlack: mean(overBlack), overWhite: mean(overWhite), black, white };
  return drawdownFilm(drawdown, { viewing, surface });
}

function findingOf(ratio: CoefficientRatio | undefined, margin: number): FreedFinding {
  if (!ratio?.interval) return 'open';
  const { low, high } = ratio.interval;
  if (low > 1 - margin && high < 1 + margin) return 'not-freed';
  return low > 1 ? 'freed' : high < 1 ? 'less' : 'open';
}

function stepsOf(shows: boolean, thicknessKnown: boolean, findings: readonly FreedFinding[]): string[] {
  if (!shows) return ['Draw down a thinner film: where it hides, absorption and scattering can’t be told apart.'];
  if (!thicknessKnown) return ['Gauge the thickness of both areas, or weigh an area of each.'];
  if (findings.includes('open')) {
    return ['Read more spots and gauge the thickness more closely: a change of K or S is neither shown nor excluded.'];
  }
  return findings.includes('freed')
    ? ['Confirm under the microscope: clusters come apart under a sheared cover glass.']
    : [];
}

function assertShare(value: number, path: string): void {
  if (typeof value === 'number' && value > 0 && value < 1) return;
  throw new TintladderError('invalid-option', { path, received: value, expected: 'a share between 0 and 1' });
}
