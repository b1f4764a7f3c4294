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

describe('a finding', () => {
  const readings = { reference: [0.999, 1, 1.001].map(film), trial: [1.199, 1.2, 1.201].map(film) };

  test('is none from spots of one film each, however far apart, unless it is asked for of the film', () => {
    const spots = [{ spot: readings.reference }, { spot: readings.trial }] as const;
    expect(strengthOf(...spots)).toMatchObject({ claim: 'film', finding: 'undecided', interval: expect.anything() });
    expect(strengthOf(...spots, { claim: 'film' }).finding).toBe('stronger');
    expect(strengthOf(...spots, { claim: 'mill-base' }).finding).toBe('undecided');
  });

  test('reaches as high as what was made anew', () => {
    const weighUps = [{ weighing: readings.reference }, { weighing: readings.trial }] as const;
    expect(strengthOf(...weighUps).finding).toBe('stronger');
    expect(strengthOf(...weighUps, { claim: 'package' }).finding).toBe('undecided');
  });

  test('from spots and a repeatability rests on that, and spots average nothing of it', () => {
    const spots = [{ spot: readings.reference }, { spot: readings.trial }] as const;
    const found = strengthOf(...spots, { repeatability: 2 });
    expect(found).toMatchObject({ claim: 'mill-base', finding: 'stronger', interval: { basis: 'repeatability' } });
    // 2 % for each side
    expect((found.interval?.standardDeviation ?? 0) / found.percent).toBeCloseTo(0.02 * Math.SQRT2, 9);
  });

  test('from weigh-ups that agree by chance rests on no less than the repeatability', () => {
    const weighUps = [{ weighing: readings.reference }, { weighing: readings.trial }] as const;
    const found = strengthOf(...weighUps, { repeatability: 2 });
    expect((found.interval?.standardDeviation ?? 0) / found.percent).toBeCloseTo(0.02 * Math.sqrt(2 / 3), 9);
  });
});
