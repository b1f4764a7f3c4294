import type { Grid } from '../colorimetry/index.js';
import { TintladderError } from '../core/index.js';
import type { Notes } from './notes.js';

/** A wavelength as a file gives it. */
export interface PlacedWavelength {
  readonly wavelength: number;
  readonly decimals: number;
  readonly place: string;
}

/** The grid of a file's wavelengths, and where each of its readings stands among them. */
export interface OrderedGrid {
  readonly grid: Grid;
  /** Index among the given wavelengths of each reading of the grid, in the order of wavelength. */
  readonly order: readonly number[];
}

const SHORTEST = 360;
const LONGEST = 830;

/**
 * The even grid that a file's wavelengths stand on. Descending wavelengths are turned and noted.
 *
 * Whole nanometres that only an uneven interval could have been rounded to, such as 350, 353, 357, 360, are read as the even grid they
 * round, and noted.
 *
 * @throws TintladderError `grid-invalid` for fewer than two wavelengths, an interval outside 1-20 nm, or (unless they are to be dropped)
 * wavelengths outside 360-830 nm; `wavelength-repeated`; `wavelengths-uneven`
 */
export function orderWavelengths(
  given: readonly PlacedWavelength[],
  outsideRange: 'refuse' | 'drop',
  notes: Notes,
): OrderedGrid {
  const order = given.map((_, i) => i);
  if (given.length > 1 && given[0].wavelength > given[given.length - 1].wavelength) {
    order.reverse();
    notes.add('wavelengths-descending', 'The wavelengths descend; they were put in ascending order.', given[0].place);
  }
  refuseRepeated(given);
  const kept = order.filter((i) => inRange(given[i], outsideRange, notes));
  if (kept.length < 2) {
    throw new TintladderError('grid-invalid', {
      place: given[0]?.place ?? 'line 1, column 1',
      seen: kept.length === 1 ? 'a single wavelength' : 'no wavelength',
      expected: 'two wavelengths or more within 360-830 nm',
    });
  }
  const wavelengths = kept.map((i) => given[i].wavelength);
  const start = wavelengths[0];
  const count = wavelengths.length;
  const interval = Math.round(((wavelengths[count - 1] - start) / (count - 1)) * 1e9) / 1e9;
  kept.forEach((index, i) => {
    const { wavelength, decimals, place } = given[index];
    const off = Math.abs(wavelength - (start + i * interval));
    if (off > (isSimpleFraction(interval) ? 0.51 * 10 ** -decimals : 1e-6))
      throw uneven(given, kept, place, wavelength);
    if (off > 0.01) {
      const message = `The wavelengths are rounded; an even interval of ${interval.toPrecision(5)} nm fits them all and was taken.`;
      notes.add('wavelengths-rounded', message, place);
    }
  });
  if (!(interval >= 1 && interval <= 20)) {
    const place = given[kept[0]].place;
    throw new TintladderError('grid-invalid', {
      place,
      seen: `the start of a grid of ${interval} nm`,
      expected: 'an interval from 1 to 20 nm',
    });
  }
  return { grid: { start, interval, count }, order: kept };
}

/**
 * Whether an interval is one that labels have to be rounded for, such as 10/3 or 3.5 nm. Anything else comes from a label that is
 * missing or mistyped; and below 2 nm rounding to whole nanometres would hide those.
 */
function isSimpleFraction(interval: number): boolean {
  return interval > 2 && !Number.isInteger(interval) && Math.abs(6 * interval - Math.round(6 * interval)) < 0.01;
}

function refuseRepeated(given: readonly PlacedWavelength[]): void {
  const seen = new Map<number, string>();
  for (const { wavelength, place } of given) {
    const before = seen.get(wavelength);
    if (before !== undefined) {
      throw new TintladderError('wavelength-repeated', {
        place,
        seen: `${wavelength} nm again`,
        expected: `each wavelength once (the first is at ${before})`,
        mend: 'Keep one set of readings a table, and repeats of a sample apart.',
      });
    }
    seen.set(wavelength, place);
  }
}

function inRange({ wavelength, place }: PlacedWavelength, outsideRange: 'refuse' | 'drop', notes: Notes): boolean {
  if (wavelength >= SHORTEST && wavelength <= LONGEST) return true;
  if (outsideRange === 'refuse') {
    throw new TintladderError('grid-invalid', {
      place,
      seen: `${wavelength} nm`,
      expected: 'a wavelength from 360 to 830 nm',
      mend: "Leave such readings out, or pass outsideRange: 'drop'.",
    });
  }
  notes.add('wavelengths-dropped', 'Readings outside 360-830 nm were left out.', place);
  return false;
}

function uneven(
  given: readonly PlacedWavelength[],
  kept: readonly number[],
  place: string,
  wavelength: number,
): TintladderError {
  const steps = kept.slice(1).map((index, i) => given[index].wavelength - given[kept[i]].wavelength);
  const odd = steps.findIndex((step) => Math.abs(step - median(steps)) > 1e-6);
  const at = odd < 0 ? { place, wavelength } : given[kept[odd + 1]];
  return new TintladderError('wavelengths-uneven', {
    place: at.place,
    seen: `${at.wavelength} nm`,
    expected: `${Number((at.wavelength - (odd < 0 ? 0 : steps[odd] - median(steps))).toFixed(3))} nm, one even interval throughout,`,
    mend: 'Bring the readings to an even grid first.',
  });
}

function median(values: readonly number[]): number {
  return [...values].sort((a, b) => a - b)[Math.floor((values.length - 1) / 2)];
}
