import type { Grid } from '../../colorimetry/index.js';
import { TintladderError } from '../../core/index.js';
import type { Notes } from '../text/notes.js';
import { type BandWeights, resampleTo } from './resampling.js';

/** A wavelength as a file gives it. */
export interface PlacedWavelength {
  readonly wavelength: number;
  readonly decimals: number;
  readonly path: string;
}

/** The grid of a file's wavelengths, and what its readings are made from. */
export interface OrderedGrid {
  readonly grid: Grid;
  /** Index among the given wavelengths of each reading that is used, in the order of wavelength. */
  readonly order: readonly number[];
  /** How the readings of the grid are made from those of `order`; absent where they are the same. */
  readonly resampling?: readonly BandWeights[];
}

/** What is asked of wavelengths that stand outside 360-830 nm, or are fine or unevenly spaced. */
export interface GridOptions {
  readonly outsideRange: 'refuse' | 'drop';
  /** Step in nm to bring the readings to. */
  readonly resample?: number | undefined;
}

const SHORTEST = 360;
const LONGEST = 830;

/**
 * The evenly spaced grid that a file's wavelengths stand on. Descending wavelengths are turned and noted.
 *
 * Whole nanometres that only an uneven step could have been rounded to, such as 350, 353, 357, 360, are read as the evenly spaced
 * grid that they round, and noted.
 *
 * @throws TintladderError `grid-invalid` for fewer than two wavelengths, a step outside 1-20 nm, or (unless they are to be dropped)
 * wavelengths outside 360-830 nm; `wavelength-repeated`; `wavelengths-uneven`
 */
export function orderWavelengths(
  given: readonly PlacedWavelength[],
  { outsideRange, resample }: GridOptions,
  notes: Notes,
): OrderedGrid {
  const order = given.map((_, i) => i);
  if (resample !== undefined) order.sort((i, j) => given[i].wavelength - given[j].wavelength);
  else if (given.length > 1 && given[0].wavelength > given[given.length - 1].wavelength) {
    order.reverse();
    notes.add('wavelengths-descending', 'The wavelengths descend; they were put in ascending order.', given[0].path);
  }
  refuseRepeated(given);
  const kept = order.filter((i) => inRange(given[i], outsideRange, notes));
  if (kept.length < 2) {
    throw new TintladderError('grid-invalid', {
      path: given[0]?.path ?? 'line 1, column 1',
      received: kept.length,
      expected: 'at least two wavelengths within 360-830 nm',
    });
  }
  const wavelengths = kept.map((i) => given[i].wavelength);
  if (resample !== undefined) return { ...resampleTo(wavelengths, resample, given[kept[0]].path, notes), order: kept };
  const start = wavelengths[0];
  const count = wavelengths.length;
  const step = exactStep(
    (wavelengths[count - 1] - start) / (count - 1),
    count,
    Math.max(...given.map(({ decimals }) => decimals)),
  );
  kept.forEach((index, i) => {
    const { wavelength, decimals, path } = given[index];
    const off = Math.abs(wavelength - (start + i * step));
    if (off > (isSimpleFraction(step) ? 0.51 * 10 ** -decimals : 1e-6)) throw uneven(given, kept, path, wavelength);
    if (off > 0.01) {
      const message = `The wavelengths are rounded; a constant step of ${step.toPrecision(5)} nm fits them all and was taken.`;
      notes.add('wavelengths-rounded', message, path);
    }
  });
  if (!(step >= 1 && step <= 20)) {
    const path = given[kept[0]].path;
    throw new TintladderError('grid-invalid', {
      path,
      received: step,
      expected: 'wavelengths 1 to 20 nm apart',
      ...(step < 1 ? { hint: 'Pass resample with a step in nm to have the readings brought to it.' } : {}),
    });
  }
  return { grid: { start, step, count }, order: kept };
}

/**
 * The step that labels stand for: whole sixths of a nanometre, such as 10/3 nm, in full where the decimals printed allow it; else without the
 * noise of the division.
 */
function exactStep(step: number, count: number, decimals: number): number {
  const sixths = Math.round(step * 6);
  const rounding = count >= 4 && decimals >= 1 ? (0.51 * 10 ** -decimals) / (count - 1) : 0;
  return Math.abs(step - sixths / 6) <= Math.max(1e-7, rounding) ? sixths / 6 : Math.round(step * 1e9) / 1e9;
}

/**
 * Whether a step is one that labels have to be rounded for, such as 10/3 or 3.5 nm. Anything else comes from a label that is
 * missing or mistyped; and below 2 nm rounding to whole nanometres would hide those.
 */
function isSimpleFraction(step: number): boolean {
  return step > 2 && !Number.isInteger(step) && Math.abs(6 * step - Math.round(6 * step)) < 0.01;
}

function refuseRepeated(given: readonly PlacedWavelength[]): void {
  const received = new Map<number, string>();
  for (const { wavelength, path } of given) {
    const before = received.get(wavelength);
    if (before !== undefined) {
      throw new TintladderError('wavelength-repeated', {
        path,
        received: wavelength,
        expected: `each wavelength once (${before} has it already)`,
        hint: 'Keep one set of readings per table, and repeats of a sample apart.',
      });
    }
    received.set(wavelength, path);
  }
}

function inRange({ wavelength, path }: PlacedWavelength, outsideRange: 'refuse' | 'drop', notes: Notes): boolean {
  if (wavelength >= SHORTEST && wavelength <= LONGEST) return true;
  if (outsideRange === 'refuse') {
    throw new TintladderError('grid-invalid', {
      path,
      received: wavelength,
      expected: 'a wavelength from 360 to 830 nm',
      hint: "Leave such readings out, or pass outsideRange: 'drop'.",
    });
  }
  notes.add('wavelengths-dropped', 'Readings outside 360-830 nm were left out.', path);
  return false;
}

function uneven(
  given: readonly PlacedWavelength[],
  kept: readonly number[],
  path: string,
  wavelength: number,
): TintladderError {
  const steps = kept.slice(1).map((index, i) => given[index].wavelength - given[kept[i]].wavelength);
  const odd = steps.findIndex((step) => Math.abs(step - median(steps)) > 1e-6);
  const at = odd < 0 ? { path, wavelength } : given[kept[odd + 1]];
  return new TintladderError('wavelengths-uneven', {
    path: at.path,
    received: at.wavelength,
    expected: `${Number((at.wavelength - (odd < 0 ? 0 : steps[odd] - median(steps))).toFixed(3))} nm, so that the wavelengths are evenly spaced`,
    hint: 'Pass resample with a step in nm to have the readings interpolated, or export an evenly spaced grid.',
  });
}

function median(values: readonly number[]): number {
  return [...values].sort((a, b) => a - b)[Math.floor((values.length - 1) / 2)];
}
