import { TintladderError } from '../core/index.js';
import { assertNumberList } from '../core/internal.js';
import { LONGEST_WAVELENGTH, SHORTEST_WAVELENGTH } from './grid.js';
import type { Illuminant } from './illuminant.js';
import { ILLUMINANTS, type IlluminantName } from './illuminants.js';

/** Relative power inside 360-830 nm at the whole nanometres at which it is to be summed, `step` nm apart. */
export interface SummedPower {
  readonly start: number;
  readonly step: number;
  readonly values: Float64Array;
}

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
  if (Object.hasOwn(ILLUMINANTS, illuminant)) return sum(ILLUMINANTS[illuminant].power());
  throw new TintladderError('unknown-illuminant', {
    path: 'viewing.illuminant',
    received: illuminant,
    expected: `one of ${Object.keys(ILLUMINANTS).join(', ')}, or a table of your own`,
  });
}

function sum({ start, step, values, kind = 'continuous' }: Illuminant): SummedPower {
  const end = start + (values.length - 1) * step;
  const summed = kind === 'lines' ? step : 1;
  const origin = Math.ceil(start);
  const first = origin + summed * Math.max(0, Math.ceil((SHORTEST_WAVELENGTH - origin) / summed));
  const count = Math.floor((Math.min(end, LONGEST_WAVELENGTH) - first) / summed) + 1;
  const power = new Float64Array(Math.max(0, count));
  for (let i = 0; i < power.length; i++) {
    const position = (first + i * summed - start) / step;
    const left = Math.min(Math.floor(position), values.length - 2);
    power[i] = values[left] + (position - left) * (values[left + 1] - values[left]);
  }
  return { start: first, step: summed, values: power };
}

function checked(illuminant: Illuminant): Illuminant {
  const { start, step, values, kind = 'continuous' } = illuminant;
  assertNumberList(values, 'viewing.illuminant.values');
  const whole = kind === 'continuous' || (Number.isInteger(start) && Number.isInteger(step));
  if (!(Number.isFinite(start) && Number.isFinite(step) && step > 0 && values.length >= 2 && whole)) {
    throw new TintladderError('grid-invalid', {
      path: 'viewing.illuminant',
      received: { start, step, count: values.length },
      expected: 'an evenly spaced grid of at least two values (in whole nanometres for a spectrum of lines)',
    });
  }
  let total = 0;
  for (let i = 0; i < values.length; i++) {
    const path = `viewing.illuminant at ${start + i * step} nm`;
    if (!Number.isFinite(values[i])) {
      throw new TintladderError('not-finite', { path, received: values[i], expected: 'a finite power' });
    }
    if (values[i] < 0) {
      throw new TintladderError('out-of-range', { path, received: values[i], expected: 'a power of 0 or more' });
    }
    total += values[i];
  }
  if (total === 0) {
    throw new TintladderError('out-of-range', { path: 'viewing.illuminant', received: 0, expected: 'some power' });
  }
  return illuminant;
}
