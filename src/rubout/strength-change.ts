import type { Viewing } from '../colorimetry/index.js';
import { type ErrorCode, TintladderError, type Warning } from '../core/index.js';
import type { Interval } from '../decision/index.js';
import type { Surface } from '../kubelka-munk/index.js';
import { relativeTintingStrength, relativeTintingStrengthFromLab, type StrengthFigure } from '../strength/index.js';
import type { Area } from './readings.js';
import { spotsOf } from './spots.js';

/** How much stronger the rubbed area is than the unrubbed one. */
export interface RubOutStrengthChange {
  /** At the absorption maximum, %: positive where rubbing made the area stronger. */
  readonly changePercent: number;
  /** 95 %; absent where the spots do not show the scatter. */
  readonly interval?: Interval;
  /** Whether it comes from Lab values and not from spectra. */
  readonly approximate: boolean;
  /** Absorption maximum of the unrubbed area: `610 nm` from spectra, `X`, `Y` or `Z` from Lab. */
  readonly at: string;
  /** ΔE*ab left when the rubbed area is brought to the strength of the unrubbed one: the part that is no strength. */
  readonly residualDEab: number;
}

/** Faults of K/S, not of the readings: a colour difference needs none. */
const WITHOUT_STRENGTH: readonly ErrorCode[] = [
  'no-absorption',
  'no-solution',
  'zero-reflectance',
  'no-internal-reflectance',
  'reflectance-out-of-range',
];

interface Found {
  readonly figure: StrengthFigure;
  readonly at: string;
}

/** How the messages of a strength are introduced, which speak of reference and trial. */
const ROLES = 'Strength of the rubbed area (trial) against the unrubbed one (reference)';

/** Already said of the rub-out itself. */
const SAID = ['scatter-borrowed', 'replicates-identical'];

/**
 * The strength of the rubbed area against the unrubbed one by the absorption maximum, the white's own absorption taken off
 * where it is known. Where the readings have no strength the change is absent and a warning says why.
 *
 * @throws TintladderError `invalid-option` for a surface that no film can have
 */
export function strengthChangeOf(
  [unrubbed, rubbed]: readonly [Area, Area],
  white: Area | undefined,
  { viewing, surface }: { readonly viewing: Viewing; readonly surface?: Surface },
): { strengthChange?: RubOutStrengthChange; warnings: readonly Warning[] } {
  const options = { viewing, surface: surface ?? 'none', criterion: 'absorption-maximum' } as const;
  const notes: Warning[] = [];
  const attempt = (find: () => Found, message: string): Found | undefined => {
    try {
      return find();
    } catch (error) {
      if (!(error instanceof TintladderError && WITHOUT_STRENGTH.includes(error.code))) throw error;
      notes.push({ code: 'no-strength-change', message: `${message}. ${ROLES}: ${error.message}`, path: error.path });
      return undefined;
    }
  };
  const { spectra: before } = unrubbed;
  const { spectra: after } = rubbed;
  const fromSpectra =
    before &&
    after &&
    attempt(() => {
      const figure = relativeTintingStrength(spotsOf(before), spotsOf(after), {
        ...options,
        white: white?.spectra && spotsOf(white.spectra),
      });
      return { figure, at: `${figure.wavelength} nm` };
    }, 'The spectra have no strength, so the change is estimated from their Lab values');
  const found =
    fromSpectra ??
    attempt(() => {
      const figure = relativeTintingStrengthFromLab(spotsOf(unrubbed.labs), spotsOf(rubbed.labs), {
        ...options,
        white: white && spotsOf(white.labs),
      });
      return { figure, at: `${figure.tristimulus}` };
    }, 'There is no strength change, since the readings have no strength');
  if (!found) return { warnings: notes };
  const { figure, at } = found;
  const { percent, interval, approximate, residual, warnings } = figure;
  return {
    strengthChange: {
      changePercent: percent - 100,
      ...(interval && { interval: { low: interval.low - 100, high: interval.high - 100 } }),
      approximate,
      at,
      residualDEab: residual.dEab,
    },
    warnings: [
      ...notes,
      ...warnings
        .filter(({ code }) => !SAID.includes(code))
        .map((warning) => ({ ...warning, message: `${ROLES}: ${warning.message}` })),
    ],
  };
}
