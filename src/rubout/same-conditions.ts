import { describeViewing } from '../colorimetry/index.js';
import { TintladderError } from '../core/index.js';
import type { RubOutResult } from './rub-out-result.js';

/**
 * Refuses results that were found in different ways: a difference between them would mean nothing.
 *
 * @param places - what messages call each result
 * @throws TintladderError `conditions-mismatch`
 */
export function assertSameConditions(results: readonly RubOutResult[], places: readonly string[]): void {
  const [first, ...others] = results.map(conditionsOf);
  others.forEach((conditions, i) => {
    for (const [name, value] of Object.entries(conditions)) {
      if (value === first[name]) continue;
      throw new TintladderError('conditions-mismatch', {
        path: `${name} of ${places[i + 1]}`,
        received: value,
        expected: `that of ${places[0]}, ${first[name]}`,
        hint: 'Assess both in the same way.',
      });
    }
  });
}

function conditionsOf({
  viewing,
  surface,
  limit,
  measure,
  readings,
}: RubOutResult): Readonly<Record<string, string | number>> {
  return {
    viewing: describeViewing(viewing),
    surface:
      surface === 'none'
        ? surface
        : `k1 ${surface.external}, k2 ${surface.internal}, specular ${surface.specular}, ${surface.geometry ?? 'd:8°'}`,
    measure,
    limit,
    readings,
  };
}
