import { expect, test } from 'vitest';
import type { Level } from '../../../src/evidence/index.js';
import { highestClaim } from '../../../src/evidence/readings/claim.js';
import { readRepeated } from '../../../src/evidence/readings/read-repeated.js';

const SIDES = {
  once: 1,
  spots: { spot: [1, 2, 3] },
  weighings: { weighing: [1, 2] },
  grinds: { grind: [{ weighing: [1, 2] }, 3] },
};
type Side = keyof typeof SIDES;

test.each<[Side, Side, Level[], string]>([
  ['spots', 'weighings', [], 'film'],
  ['weighings', 'weighings', [], 'mill-base'],
  ['weighings', 'grinds', [], 'mill-base'],
  ['grinds', 'grinds', [], 'package'],
  ['spots', 'weighings', ['weighing'], 'mill-base'],
  ['once', 'once', ['spot', 'drawdown'], 'film'],
  ['once', 'once', ['spot', 'drawdown', 'weighing'], 'mill-base'],
  ['once', 'grinds', ['grind'], 'package'],
])('%s against %s with a history of %j: %s', (reference, trial, known, claim) => {
  const sides = [reference, trial].map((name) => readRepeated<number>(SIDES[name], name));
  expect(highestClaim(sides, known)).toBe(claim);
});

test('of a batch, weigh-ups carry the claim', () => {
  const batch = (name: Side) => highestClaim([readRepeated<number>(SIDES[name], name)], [], 'batch');
  expect([batch('once'), batch('spots'), batch('weighings'), batch('grinds')]).toEqual([
    'film',
    'film',
    'batch',
    'batch',
  ]);
});
