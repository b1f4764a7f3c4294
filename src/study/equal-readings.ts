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
  const first = new Map<string | number, Measurement[]>();
  return readings.flatMap(({ reading }): Warning[] => {
    const key = checksumOf(reading);
    const alike = first.get(key);
    const other = alike?.find((one) => areEqual(one, reading));
    if (!other) {
      if (alike) alike.push(reading);
      else first.set(key, [reading]);
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

/** The same for equal readings, and hardly ever for others: texts of all values would take most of the time. */
function checksumOf({ spectrum, lab, xyz }: Measurement): string | number {
  return spectrum ? spectrum.values.reduce((sum, value, i) => sum + (i + 1) * value, 0) : JSON.stringify([lab, xyz]);
}

function areEqual({ spectrum: one, lab, xyz }: Measurement, { spectrum: other, ...reading }: Measurement): boolean {
  if (!one || !other)
    return !one && !other && JSON.stringify([lab, xyz]) === JSON.stringify([reading.lab, reading.xyz]);
  return (
    one.start === other.start &&
    one.step === other.step &&
    one.values.length === other.values.length &&
    one.values.every((value, i) => value === other.values[i])
  );
}
