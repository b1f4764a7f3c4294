import { TintladderError } from '../core/index.js';
import { parseColumns } from './columns.js';
import type { Illuminant } from './illuminant.js';
import { DAYLIGHT_COMPONENTS } from './tables/daylight-components.js';

/**
 * CIE daylight illuminant of any correlated colour temperature.
 *
 * The nominal names date from c2 = 1.4380e-2 m K, so D50 is `daylightIlluminant(5000 * 1.4388 / 1.438)`, about 5003 K. Weights are kept
 * for as long as the illuminant lives: make it once and pass the same object.
 *
 * @param temperature - correlated colour temperature, K, 4000 to 25000
 * @returns relative spectral power, 300-830 nm every 5 nm, 100 at 560 nm
 * @throws TintladderError `out-of-range` for a temperature that the daylight series does not reach
 * @example whitePoint({ illuminant: daylightIlluminant(6504), observer: '2' }).X // 95.047
 * @see CIE 015:2018, calculation of daylight illuminants (M1 and M2 rounded to three decimals, as CIE prescribes); Judd,
 * MacAdam & Wyszecki (1964), J. Opt. Soc. Am. 54
 */
export function daylightIlluminant(temperature: number): Illuminant {
  if (!(Number.isFinite(temperature) && temperature >= 4000 && temperature <= 25000)) {
    throw new TintladderError('out-of-range', {
      path: 'temperature',
      received: temperature,
      expected: 'a colour temperature from 4000 to 25000 K',
    });
  }
  const t = 1000 / temperature;
  const x =
    temperature <= 7000
      ? 0.244063 + t * (0.09911 + t * (2.9678 - t * 4.607))
      : 0.23704 + t * (0.24748 + t * (1.9018 - t * 2.0064));
  const y = -3 * x * x + 2.87 * x - 0.275;
  const M = 0.0241 + 0.2562 * x - 0.7341 * y;
  const M1 = Math.round((1000 * (-1.3515 - 1.7703 * x + 5.9114 * y)) / M) / 1000;
  const M2 = Math.round((1000 * (0.03 - 31.4424 * x + 30.0717 * y)) / M) / 1000;
  const [wavelengths, S0, S1, S2] = parseColumns(DAYLIGHT_COMPONENTS);
  return {
    name: `daylight ${temperature} K`,
    start: wavelengths[0],
    step: 5,
    values: S0.map((s0, i) => s0 + M1 * S1[i] + M2 * S2[i]),
    source: 'CIE 015:2018, daylight components S0, S1, S2',
  };
}
