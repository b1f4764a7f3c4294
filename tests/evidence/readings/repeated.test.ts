import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { mapRepeated, type Repeated, repetitionOf } from '../../../src/evidence/index.js';
import { readRepeated } from '../../../src/evidence/readings/read-repeated.js';

const nested: Repeated<number> = { weighing: [{ spot: [1, 2] }, { drawdown: [3, { spot: [4, 5] }] }, 6] };

/** What a caller without types may pass. */
const untyped = (given: unknown) => given as Repeated<number>;

describe('the shape of repeated readings', () => {
  test('one reading is one reading', () => {
    expect(readRepeated(7, 'trial')).toEqual({
      levels: [],
      tree: { reading: 7, path: 'trial', blocks: {} },
      readings: [{ reading: 7, path: 'trial', blocks: {} }],
      counts: [],
      top: -1,
    });
  });

  test('a level that a branch leaves out counts as one unit there', () => {
    const { levels, counts, top, readings } = readRepeated(nested, 'trial');
    expect(levels).toEqual(['weighing', 'drawdown', 'spot']);
    expect(counts).toEqual([3, 4, 6]);
    expect(top).toBe(0);
    expect(readings.map(({ reading }) => reading)).toEqual([1, 2, 3, 4, 5, 6]);
    expect(readings[3].path).toBe('trial.weighing[1].drawdown[1].spot[0]');
  });

  test('the top unit is the outermost one of which there are two', () => {
    expect(readRepeated({ weighing: [{ spot: [1, 2] }] }, 'trial')).toMatchObject({ counts: [1, 2], top: 1 });
    expect(readRepeated({ grind: [{ weighing: [1, 2] }, 3] }, 'trial')).toMatchObject({ counts: [2, 3], top: 0 });
  });

  test('days and sessions reach every reading below', () => {
    const { readings } = readRepeated(
      { weighing: [{ spot: [1, 2], session: ['a', 'b'] }, 3], day: ['Monday', 'Tuesday'] },
      'trial',
    );
    expect(readings.map(({ blocks }) => blocks)).toEqual([
      { day: 'Monday', session: 'a' },
      { day: 'Monday', session: 'b' },
      { day: 'Tuesday' },
    ]);
  });

  test('an object without a level is a reading, whatever it holds', () => {
    const lab = { L: 50, a: 0, b: 0, session: 'morning' };
    expect(readRepeated({ spot: [lab] }, 'trial').readings).toEqual([
      { reading: lab, path: 'trial.spot[0]', blocks: {} },
    ]);
  });
});

describe('what was repeated must be stated', () => {
  test.each([
    [[1, 2, 3], 'repetition-unstated', 'trial'],
    [{ weighing: [[1, 2]] }, 'repetition-unstated', 'trial.weighing[0]'],
    [{ spot: [1, [2, 3]] }, 'repetition-unstated', 'trial.spot[1]'],
    [{ weighing: [{ weighing: [1, 2] }] }, 'level-misplaced', 'trial.weighing[0]'],
    [{ spot: [{ weighing: [1, 2] }] }, 'level-misplaced', 'trial.spot[0]'],
    [{ weighing: [1], spot: [2] }, 'level-misplaced', 'trial'],
    [{ weighing: [1], L: 50 }, 'level-misplaced', 'trial'],
    [{ weighing: 3 }, 'level-misplaced', 'trial.weighing'],
    [{ weighing: [] }, 'empty', 'trial.weighing'],
    [{ weighing: [1, 2], day: ['Monday'] }, 'wrong-length', 'trial.day'],
    [{ weighing: [1, 2], day: [1, 2] }, 'wrong-length', 'trial.day'],
  ])('%j', (given, code, path) => {
    expect(() => readRepeated(untyped(given), 'trial')).toThrow(expect.objectContaining({ code, path }));
  });
});

describe('what was repeated, in words', () => {
  test.each([
    [7, 'one reading', 'film'],
    [{ spot: [1, 2, 3, 4, 5] }, '5 spots of one film', 'film'],
    [{ weighing: [{ spot: [1, 2] }] }, '2 spots of one film', 'film'],
    [{ drawdown: [1, 2] }, '2 drawdowns of one weigh-up', 'film'],
    [{ weighing: [1, 2, 3] }, '3 weigh-ups', 'mill-base'],
    [{ grind: [{ weighing: [1, 2] }] }, '2 weigh-ups of one grind', 'mill-base'],
    [{ grind: [1, 2] }, '2 grinds', 'package'],
    [nested, '3 weigh-ups', 'mill-base'],
  ])('%j', (given, noun, claim) => {
    expect(repetitionOf(untyped(given))).toMatchObject({ noun, claim });
  });

  test('units are counted level by level', () => {
    expect(repetitionOf(nested).units).toEqual([
      { level: 'weighing', count: 3 },
      { level: 'drawdown', count: 4 },
      { level: 'spot', count: 6 },
    ]);
  });
});

describe('mapRepeated', () => {
  test('keeps shape and labels', () => {
    const given: Repeated<number> = { weighing: [1, { spot: [2, 3] }], day: ['x', 'y'] };
    expect(mapRepeated(given, (value, path) => `${path}: ${value}`, 'w')).toEqual({
      weighing: ['w.weighing[0]: 1', { spot: ['w.weighing[1].spot[0]: 2', 'w.weighing[1].spot[1]: 3'] }],
      day: ['x', 'y'],
    });
    expect(mapRepeated(2, (value) => value + 1)).toBe(3);
  });

  test('composes, whatever the nest', () => {
    const spots = fc.oneof(fc.integer(), fc.record({ spot: fc.array(fc.integer(), { minLength: 1, maxLength: 3 }) }));
    const weighings = fc.record({ weighing: fc.array(spots, { minLength: 1, maxLength: 4 }) });
    fc.assert(
      fc.property(fc.oneof(spots, weighings), (given) => {
        const tenfold = mapRepeated<number, number>(given, (value) => 10 * value);
        expect(mapRepeated(tenfold, (value) => value / 10)).toEqual(given);
        expect(repetitionOf(tenfold)).toEqual(repetitionOf(given));
      }),
      { seed: 11 },
    );
  });
});
