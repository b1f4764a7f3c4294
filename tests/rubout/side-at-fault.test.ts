import { expect, test } from 'vitest';
import type { CompatibilityCell } from '../../src/rubout/compatibility-cell.js';
import { sidesAtFault } from '../../src/rubout/side-at-fault.js';

const cell = (colorant: string, paint: string, towards?: 'more-colour' | 'more-white'): CompatibilityCell => ({
  colorant,
  paint,
  outcome: 'fails',
  dEab: 2,
  causes: [],
  ...(towards && { direction: { towards, certainty: 'proven' } }),
});
const named = (...cells: CompatibilityCell[]) => sidesAtFault(cells).map(({ side, name }) => `${side} ${name}`);

test('a colorant that gains by rubbing in every paint is at fault (ASTM D5326, 5.1)', () => {
  const found = named(
    cell('blue', 'A', 'more-colour'),
    cell('blue', 'B', 'more-colour'),
    cell('red', 'A'),
    cell('red', 'B'),
  );
  expect(found).toEqual(['colorant blue']);
});

test('a base in which every colorant pales is at fault', () => {
  const found = named(
    cell('blue', 'A', 'more-white'),
    cell('red', 'A', 'more-white'),
    cell('blue', 'B'),
    cell('red', 'B'),
  );
  expect(found).toEqual(['base A']);
});

test('one test, or one that goes the other way, names nobody', () => {
  expect(named(cell('blue', 'A', 'more-colour'))).toEqual([]);
  expect(named(cell('blue', 'A', 'more-colour'), cell('blue', 'B', 'more-white'))).toEqual([]);
});
