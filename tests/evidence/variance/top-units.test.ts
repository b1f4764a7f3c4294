import { describe, expect, test } from 'vitest';
import type { Repeated } from '../../../src/evidence/index.js';
import { readRepeated } from '../../../src/evidence/internal.js';
import { topUnitMeans } from '../../../src/evidence/variance/top-units.js';

/** The means of the top units of readings that are their own figures. */
const meansOf = (given: Repeated<number>) => {
  const read = readRepeated(given, 'trial');
  return topUnitMeans(
    read,
    read.readings.map(({ reading }) => reading),
  );
};

describe('the means of the outermost units that were repeated', () => {
  test.each<[string, Repeated<number>, number[]]>([
    ['one reading is one unit', 5, [5]],
    ['spots of one film are units of their own', { spot: [1, 2, 4] }, [1, 2, 4]],
    ['spots average within their weigh-up', { weighing: [{ spot: [1, 3] }, { spot: [5] }, 8] }, [2, 5, 8]],
    [
      'a drawdown counts as much as its neighbour, however often it was read',
      { weighing: [{ drawdown: [{ spot: [1, 2, 3] }, 6] }, 10] },
      [4, 10],
    ],
    ['levels of which one unit was made are passed over', { grind: [{ weighing: [{ spot: [1, 3] }, 4] }] }, [2, 4]],
  ])('%s', (_, given, expected) => {
    expect(meansOf(given)).toEqual(expected);
  });
});
