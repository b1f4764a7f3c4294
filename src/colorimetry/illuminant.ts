import { TintladderError } from '../errors.js';
import { parseColumns } from './columns.js';
import { daylightIlluminant } from './daylight.js';
import { LONGEST_WAVELENGTH, SHORTEST_WAVELENGTH } from './grid.js';
import { FLUORESCENT_LAMPS } from './tables/fluorescent-lamps.js';
import { ILLUMINANT_C } from './tables/illuminant-c.js';
import { ILLUMINANT_D65 } from './tables/illuminant-d65.js';
import type { Illuminant, IlluminantName } from './viewing.js';

/** Relative power inside 360-830 nm at the whole nanometres at which it is to be summed, `interval` nm apart. */
export interface SummedPower {
  readonly start: number;
  readonly interval: number;
  readonly values: Float64Array;
}

const NAMED: Record<IlluminantName, () => Illuminant> = {
  A: () => everyNanometre('A', planck),
  C: () => ({ ...fromTable('C', ILLUMINANT_C), kind: 'lines' }),
  D50: () => nominalDaylight(5000),
  D55: () => nominalDaylight(5500),
  D65: () => fromTable('D65', ILLUMINANT_D65),
  D75: () => nominalDaylight(7500),
  E: () => everyNanometre('E', () => 100),
  FL1: () => fluorescent(1),
  FL2: () => fluorescent(2),
  FL3: () => fluorescent(3),
  FL4: () => fluorescent(4),
  FL5: () => fluorescent(5),
  FL6: () => fluorescent(6),
  FL7: () => fluorescent(7),
  FL8: () => fluorescent(8),
  FL9: () => fluorescent(9),
  FL10: () => fluorescent(10),
  FL11: () => fluorescent(11),
  FL12: () => fluorescent(12),
};

/**
 * Relative spectral power of an illuminant at its summation step.
 *
 * Continuous illuminants are interpolated linearly to 1 nm; those printed at 5 nm with line spectra are summed as they
 * stand, since interpolating them moves the white.
 *
 * @throws TintladderError `unknown-illuminant` naming those that exist; `grid-invalid`, `not-finite` or
 * `out-of-range` for a caller's table that can't be summed
 * @see CIE 015:2018, 7.1
 */
export function summedPower(illuminant: IlluminantName | Illuminant): SummedPower {
  if (typeof illuminant === 'object' && illuminant !== null) return sum(checked(illuminant));
  const named = Object.hasOwn(NAMED, illuminant) ? NAMED[illuminant] : undefined;
  if (!named) {
    throw new TintladderError('unknown-illuminant', {
      place: 'viewing.illuminant',
      seen: illuminant,
      expected: `one of ${Object.keys(NAMED).join(', ')}, or a table of your own,`,
    });
  }
  return sum(named());
}

function sum({ start, interval, values, kind = 'continuous' }: Illuminant): SummedPower {
  const end = start + (values.length - 1) * interval;
  const step = kind === 'lines' ? interval : 1;
  const origin = kind === 'lines' ? start : Math.ceil(start);
  const first = origin + step * Math.max(0, Math.ceil((SHORTEST_WAVELENGTH - origin) / step));
  const count = Math.floor((Math.min(end, LONGEST_WAVELENGTH) - first) / step) + 1;
  const power = new Float64Array(Math.max(0, count));
  for (let i = 0; i < power.length; i++) {
    const position = (first + i * step - start) / interval;
    const left = Math.min(Math.floor(position), values.length - 2);
    power[i] = values[left] + (position - left) * (values[left + 1] - values[left]);
  }
  return { start: first, interval: step, values: power };
}

function checked(illuminant: Illuminant): Illuminant {
  const { start, interval, values, kind = 'continuous' } = illuminant;
  const whole = kind === 'continuous' || (Number.isInteger(start) && Number.isInteger(interval));
  if (!(Number.isFinite(start) && interval > 0 && values.length >= 2 && whole)) {
    throw new TintladderError('grid-invalid', {
      place: 'viewing.illuminant',
      seen: `${values.length} values from ${start} nm every ${interval} nm`,
      expected: 'an even grid of two values or more (in whole nanometres for a spectrum of lines)',
    });
  }
  let total = 0;
  for (let i = 0; i < values.length; i++) {
    const place = `viewing.illuminant at ${start + i * interval} nm`;
    if (!Number.isFinite(values[i])) {
      throw new TintladderError('not-finite', { place, seen: values[i], expected: 'a finite power' });
    }
    if (values[i] < 0) {
      throw new TintladderError('out-of-range', { place, seen: values[i], expected: 'a power of 0 or more' });
    }
    total += values[i];
  }
  if (total === 0) {
    throw new TintladderError('out-of-range', { place: 'viewing.illuminant', seen: 0, expected: 'some power' });
  }
  return illuminant;
}

function fromTable(name: string, table: string, column = 1): Illuminant {
  const columns = parseColumns(table);
  const [wavelengths] = columns;
  return { name, start: wavelengths[0], interval: wavelengths[1] - wavelengths[0], values: columns[column] };
}

function fluorescent(number: number): Illuminant {
  return { ...fromTable(`FL${number}`, FLUORESCENT_LAMPS, number), kind: 'lines' };
}

/** The nominal names of the daylights date from c2 = 1.4380e-2 m K; today's is 1.4388e-2. */
function nominalDaylight(nominal: number): Illuminant {
  return daylightIlluminant((nominal * 1.4388) / 1.438);
}

function everyNanometre(name: string, power: (wavelength: number) => number): Illuminant {
  const values = Float64Array.from({ length: LONGEST_WAVELENGTH - SHORTEST_WAVELENGTH + 1 }, (_, i) =>
    power(SHORTEST_WAVELENGTH + i),
  );
  return { name, start: SHORTEST_WAVELENGTH, interval: 1, values };
}

/**
 * CIE standard illuminant A: Planck's form with c2 = 1.435e-2 m K and T = 2848 K, 100 at 560 nm.
 *
 * @see CIE 015:2018, equation for illuminant A; ISO/CIE 11664-2
 */
function planck(wavelength: number): number {
  const exponent = 1.435e7 / 2848;
  return 100 * (560 / wavelength) ** 5 * (Math.expm1(exponent / 560) / Math.expm1(exponent / wavelength));
}
