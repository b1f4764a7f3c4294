import type { Spectrum } from '../colorimetry/index.js';
import { asSpectrum, assertSameGrid } from '../colorimetry/internal.js';
import { TintladderError } from '../core/index.js';
import { assertObject } from '../core/internal.js';

/**
 * A drawdown over a black-and-white chart, as measured: one kind of reading of a paint, beside the spectrum of a layer that hides.
 *
 * Spectra are reflectance factors as the instrument gave them, all on one grid; the surface is corrected by whoever evaluates them.
 */
export interface ChartDrawdown {
  readonly overBlack: Spectrum;
  readonly overWhite: Spectrum;
  /** The bare black field of the chart; given together with `white`, or neither */
  readonly black?: Spectrum | undefined;
  /** The bare white field of the chart */
  readonly white?: Spectrum | undefined;
  /** Thickness of the film, µm, > 0; without it K and S are those of the whole film (KX and SX) */
  readonly thickness?: number | undefined;
}

/** A paint as read: a spectrum of a layer that hides its substrate, or a drawdown over a chart, whether it hides or not. */
export type PaintReading = Spectrum | ChartDrawdown;

/**
 * Whether a reading is a drawdown over a chart.
 *
 * @param reading - anything that a function takes as the reading of a paint
 * @returns true for an object with a reading over black and one over white
 * @example isChartDrawdown({ overBlack: 1, overWhite: 2 }) // true
 * @see ISO 6504-3 and ASTM D2805 for drawdowns over a black-and-white chart
 */
export function isChartDrawdown(reading: unknown): reading is ChartDrawdown {
  return typeof reading === 'object' && reading !== null && 'overBlack' in reading && 'overWhite' in reading;
}

/**
 * The drawdown with its spectra checked: refused if they are not on one grid, if it has one bare field without the other, or no possible
 * thickness.
 *
 * @throws TintladderError `wrong-type`; `grid-mismatch`; `invalid-option` for one bare field alone; `out-of-range` for a thickness that is not
 * positive
 */
export function checkedDrawdown(given: ChartDrawdown, path: string): ChartDrawdown {
  assertObject(given, path, 'a drawdown: a reading over black and one over white');
  const { black, white, thickness } = given;
  const overBlack = asSpectrum(given.overBlack, `${path}.overBlack`);
  const onGrid = (spectrum: Spectrum, name: string) => {
    const checked = asSpectrum(spectrum, `${path}.${name}`);
    assertSameGrid(overBlack, checked, `${path}.${name}`);
    return checked;
  };
  const overWhite = onGrid(given.overWhite, 'overWhite');
  if (thickness !== undefined && !(typeof thickness === 'number' && thickness > 0 && thickness < Infinity)) {
    const expected = 'a finite thickness above 0 µm';
    throw new TintladderError('out-of-range', { path: `${path}.thickness`, received: thickness, expected });
  }
  if ((black === undefined) !== (white === undefined)) {
    throw new TintladderError('invalid-option', {
      path: `${path}.${black === undefined ? 'black' : 'white'}`,
      received: undefined,
      expected: 'a reading of this bare field too',
      hint: 'Read both fields of the bare chart, or leave both out.',
    });
  }
  return {
    overBlack,
    overWhite,
    ...(black && white && { black: onGrid(black, 'black'), white: onGrid(white, 'white') }),
    ...(thickness !== undefined && { thickness }),
  };
}
