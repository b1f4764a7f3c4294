import { TintladderError, type Warning } from '../core/index.js';
import type { Measurement } from '../exchange/index.js';
import { type AssignedReading, placeText } from './assigned-reading.js';

/**
 * Finds readings that are copies of one another: equal in every value of their spectra or colours.
 *
 * Two readings of one name that are equal come from one export that was read twice; they are refused, since they would count
 * twice. Equal readings of different names are noted: instruments round, and a film is rarely read equal at every wavelength.
 *
 * @throws TintladderError `reading-repeated` with the lines of both
 */
export function noteEqualReadings(readings: readonly AssignedReading[]): Warning[] {
  const first = new Map<string, Measurement>();
  return readings.flatMap(({ reading }): Warning[] => {
    const key = valuesOf(reading);
    const other = first.get(key);
    if (!other) {
      first.set(key, reading);
      return [];
    }
    if (other.name === reading.name) {
      throw new TintladderError('reading-repeated', {
        path: `measurement ${placeText(reading)}`,
        received: placeText(other),
        expected: 'each reading once',
        hint: 'Was one export given twice, under two names?',
      });
    }
    const message = `${placeText(reading)} equals ${placeText(other)} in every value; is it a copy?`;
    return [{ code: 'readings-equal', message, path: reading.name }];
  });
}

function valuesOf({ spectrum, lab, xyz }: Measurement): string {
  return spectrum
    ? `${spectrum.start} ${spectrum.step} ${Array.from(spectrum.values).join(' ')}`
    : JSON.stringify([lab, xyz]);
}
