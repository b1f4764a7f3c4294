import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { judge, worstOutcome } from '../../src/index.js';

const SEED = 106;

describe('a figure against a limit with a guard band (JCGM 106:2012)', () => {
  test.each([
    ['the whole interval within an upper limit', 0.8, [0.6, 0.99], { upper: 1 }, 'meets'],
    ['an end on the limit, which is still allowed', 0.8, [0.6, 1], { upper: 1 }, 'meets'],
    ['a value within but an interval that reaches over', 0.8, [0.5, 1.1], { upper: 1 }, 'undecided'],
    ['a value beyond but an interval that reaches back', 1.2, [0.9, 1.5], { upper: 1 }, 'undecided'],
    ['the whole interval beyond', 1.5, [1.01, 2], { upper: 1 }, 'fails'],
    ['the whole interval above a lower limit', 99, [96, 102], { lower: 95 }, 'meets'],
    ['the whole interval below a lower limit', 90, [88, 92], { lower: 95 }, 'fails'],
    ['both limits kept', 100, [96, 104], { lower: 95, upper: 105 }, 'meets'],
    ['an interval wider than both limits', 100, [90, 110], { lower: 95, upper: 105 }, 'undecided'],
    ['beyond the upper of both', 110, [106, 114], { lower: 95, upper: 105 }, 'fails'],
    ['an exact figure, whose interval has no width', 2, [2, 2], { upper: 2 }, 'meets'],
    ['an exact figure beyond', 2.1, [2.1, 2.1], { upper: 2 }, 'fails'],
    ['a limit of zero', -1, [-2, -0.5], { upper: 0 }, 'meets'],
  ] as const)('%s', (_name, value, [low, high], limit, outcome) => {
    expect(judge(value, { low, high }, limit)).toBe(outcome);
  });

  test('a figure of unknown uncertainty decides nothing', () => {
    expect(judge(0.1, undefined, { upper: 1 })).toBe('undecided');
  });

  test(`a wider interval never turns undecided into a decision (seed ${SEED})`, () => {
    const number = fc.double({ min: -10, max: 10, noNaN: true });
    const width = fc.double({ min: 0, max: 5, noNaN: true });
    fc.assert(
      fc.property(number, width, width, number, (value, half, more, upper) => {
        const narrow = judge(value, { low: value - half, high: value + half }, { upper });
        const wide = judge(value, { low: value - half - more, high: value + half + more }, { upper });
        return wide === narrow || wide === 'undecided';
      }),
      { seed: SEED },
    );
  });

  test.each([
    ['no bound', {}, 'limit'],
    ['a bound that is no number', { upper: Number.NaN }, 'limit.upper'],
    ['an infinite bound', { lower: Number.NEGATIVE_INFINITY }, 'limit.lower'],
    ['crossed bounds', { lower: 2, upper: 1 }, 'limit.lower'],
  ])('refuses a limit with %s', (_name, limit, path) => {
    expect(() => judge(1, { low: 1, high: 1 }, limit)).toThrow(
      expect.objectContaining({ code: 'invalid-limit', path }),
    );
  });

  test.each([
    ['of negative width', 1, { low: 1.5, high: 0.5 }, 'interval.high'],
    ['with an end that is no number', 1, { low: Number.NaN, high: 2 }, 'interval.low'],
    ['that does not hold its value', 3, { low: 1, high: 2 }, 'value'],
  ])('refuses an interval %s', (_name, value, interval, path) => {
    expect(() => judge(value, interval, { upper: 1 })).toThrow(
      expect.objectContaining({ code: 'invalid-interval', path }),
    );
  });

  test('refuses a value that is no number', () => {
    expect(() => judge(Number.NaN, undefined, { upper: 1 })).toThrow(
      expect.objectContaining({ code: 'not-finite', path: 'value' }),
    );
  });
});

describe('the worst of several outcomes', () => {
  test('one that fails decides', () => expect(worstOutcome(['meets', 'undecided', 'fails'])).toBe('fails'));
  test('one that is undecided keeps the whole undecided', () =>
    expect(worstOutcome(['meets', 'undecided'])).toBe('undecided'));
  test('all have to meet', () => expect(worstOutcome(['meets', 'meets'])).toBe('meets'));
  test('none at all is a fault', () => {
    expect(() => worstOutcome([])).toThrow(expect.objectContaining({ code: 'empty', path: 'outcomes' }));
  });
});

describe('an end of the interval on the limit', () => {
  test('is on the side that is allowed', () => {
    expect(judge(6, { low: 5, high: 7 }, { lower: 5 })).toBe('meets');
    expect(judge(6, { low: 5, high: 7 }, { upper: 7 })).toBe('meets');
    expect(judge(5, { low: 5, high: 5 }, { lower: 5, upper: 5 })).toBe('meets');
  });

  test('keeps what lies beyond it undecided', () => {
    expect(judge(4, { low: 3, high: 5 }, { lower: 5 })).toBe('undecided');
    expect(judge(6, { low: 5, high: 7 }, { upper: 5 })).toBe('undecided');
  });
});

test('a figure below its interval is refused as one above it is', () => {
  for (const value of [2.9, 5.1]) {
    expect(() => judge(value, { low: 3, high: 5 }, { upper: 5 })).toThrow(
      expect.objectContaining({ code: 'invalid-interval', path: 'value' }),
    );
  }
});
