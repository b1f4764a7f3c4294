import { TintladderError } from '../errors.js';
import { parseColumns } from './columns.js';
import { LONGEST_WAVELENGTH, SHORTEST_WAVELENGTH } from './grid.js';
import { DAYLIGHT_COMPONENTS } from './tables/daylight-components.js';
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
  A: () => ({
    name: 'A',
    start: 360,
    interval: 1,
    values: Float64Array.from({ length: 471 }, (_, i) => planck(360 + i)),
  }),
  C: () => ({ ...fromTable('C', ILLUMINANT_C), kind: 'lines' }),
  D50: () => daylight('D50', 5000),
  D65: () => fromTable('D65', ILLUMINANT_D65),
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
  if (typeof illuminant !== 'string') return sum(checked(illuminant));
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

function fromTable(name: string, table: string): Illuminant {
  const [wavelengths, values] = parseColumns(table);
  return { name, start: wavelengths[0], interval: wavelengths[1] - wavelengths[0], values };
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

/**
 * A daylight phase from its nominal temperature. The nominal names date from c2 = 1.4380e-2, so the correlated colour
 * temperature is the nominal one times 1.4388 / 1.4380; M1 and M2 are rounded to three decimals as CIE prescribes.
 *
 * @see CIE 015:2018, calculation of daylight illuminants; Judd, MacAdam & Wyszecki (1964)
 */
function daylight(name: string, nominal: number): Illuminant {
  const T = (nominal * 1.4388) / 1.438;
  const x =
    T <= 7000
      ? -4.607e9 / T ** 3 + 2.9678e6 / T ** 2 + 0.09911e3 / T + 0.244063
      : -2.0064e9 / T ** 3 + 1.9018e6 / T ** 2 + 0.24748e3 / T + 0.23704;
  const y = -3 * x * x + 2.87 * x - 0.275;
  const M = 0.0241 + 0.2562 * x - 0.7341 * y;
  const M1 = Math.round((1000 * (-1.3515 - 1.7703 * x + 5.9114 * y)) / M) / 1000;
  const M2 = Math.round((1000 * (0.03 - 31.4424 * x + 30.0717 * y)) / M) / 1000;
  const [wavelengths, S0, S1, S2] = parseColumns(DAYLIGHT_COMPONENTS);
  return { name, start: wavelengths[0], interval: 5, values: S0.map((s0, i) => s0 + M1 * S1[i] + M2 * S2[i]) };
}
