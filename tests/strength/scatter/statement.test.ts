import { describe, expect, test } from 'vitest';
import { COLORANTS, reduction } from '../simulated-reductions.js';
import { strengthOf } from '../strength-of.js';

const film = (amount: number) => reduction(COLORANTS.blue, amount);
const [a, b, c] = [0.99, 1, 1.01].map(film);

describe('what a strength speaks of', () => {
  test.each([
    ['one reading per side', a, b, 'film'],
    ['spots of one film per side', { spot: [a, b] }, { spot: [b, c] }, 'film'],
    ['drawdowns of one weigh-up per side', { drawdown: [a, b] }, { drawdown: [b, c] }, 'film'],
    ['weigh-ups per side', { weighing: [a, b] }, { weighing: [b, c] }, 'mill-base'],
    ['weigh-ups on one side only', { weighing: [a, b] }, c, 'film'],
    ['grinds per side', { grind: [a, b] }, { grind: [b, c] }, 'package'],
    ['grinds of the trial, weigh-ups of the reference', { weighing: [a, b] }, { grind: [b, c] }, 'mill-base'],
  ] as const)('%s', (_, reference, trial, claim) => {
    expect(strengthOf(reference, trial).claim).toBe(claim);
  });

  test('is said with its noun, its interval and what it rests on', () => {
    const spots = strengthOf({ spot: [a, b] }, { spot: [b, c] });
    expect(spots.statement).toMatch(/^On this film: 101\.0 % \(95 % interval .*\), 2 spots of one film on each side\./);
    const weighed = strengthOf({ weighing: [a, b, c] }, b, { white: film(0) });
    expect(weighed.statement).toContain('the trial one reading, the reference 3 weigh-ups, the white taken as exact');
    const whites = { spot: [film(0), film(0.001)] };
    expect(strengthOf(a, b, { white: whites }).statement).not.toContain('exact');
  });
});

test('more spots in a weigh-up leave the figure of the weigh-up and the degrees of freedom alone', () => {
  const once = strengthOf({ weighing: [a, b, c] }, { weighing: [b, c, a] });
  const spots = strengthOf(
    { weighing: [a, b, c].map((reading) => ({ spot: [reading, reading, reading] })) },
    { weighing: [b, { spot: [c, c] }, a] },
  );
  expect(spots.percent).toBeCloseTo(once.percent, 10);
  expect(spots.interval?.low).toBeCloseTo(once.interval?.low ?? 0, 8);
  expect(spots.interval?.degreesOfFreedom).toBeCloseTo(once.interval?.degreesOfFreedom ?? 0, 8);
});
