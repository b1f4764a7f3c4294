import { describe, expect, test } from 'vitest';
import { groupReadings, mapRepeated } from '../../../src/evidence/index.js';

const named = (...names: string[]) => names.map((name) => ({ name }));
const namesIn = (groups: ReturnType<typeof groupReadings>['groups']) =>
  groups.map(({ key, readings }) => ({ key, readings: mapRepeated(readings, ({ name }) => name) }));

describe('groupReadings', () => {
  test('nests by the levels of the pattern, unbalanced as the names come', () => {
    const measurements = named('W A 1-1-1', 'W A 1-1-2', 'W A 2-1-1', 'W R 1-1-1', 'white tile');
    const { groups, unmatched } = groupReadings(measurements, '{paint} {package} {weighing}-{drawdown}-{spot}');
    expect(namesIn(groups)).toEqual([
      {
        key: { paint: 'W', package: 'A' },
        readings: {
          weighing: [{ drawdown: [{ spot: ['W A 1-1-1', 'W A 1-1-2'] }] }, { drawdown: [{ spot: ['W A 2-1-1'] }] }],
        },
      },
      { key: { paint: 'W', package: 'R' }, readings: { weighing: [{ drawdown: [{ spot: ['W R 1-1-1'] }] }] } },
    ]);
    expect(unmatched).toEqual(['white tile']);
  });

  test('levels nest in their own order, whatever the order in the name', () => {
    const { groups } = groupReadings(named('s1 w1 A', 's2 w1 A', 's1 w2 A'), 's{spot} w{weighing} {package}');
    expect(namesIn(groups)[0].readings).toEqual({
      weighing: [{ spot: ['s1 w1 A', 's2 w1 A'] }, { spot: ['s1 w2 A'] }],
    });
  });

  test('words rule what a placeholder takes', () => {
    const words = { package: ['A', 'A-1'] };
    const { groups } = groupReadings(named('A-1-1', 'A-1-2', 'A-2'), '{package}-{weighing}', { words });
    expect(groups.map(({ key }) => key)).toEqual([{ package: 'A-1' }, { package: 'A' }]);
  });

  test('a day stands beside the outermost units that lie in one day each', () => {
    const whole = groupReadings(named('A 1 Mo', 'A 2 Tu'), '{package} {weighing} {day}').groups[0].readings;
    expect(whole).toMatchObject({ day: ['Mo', 'Tu'] });
    const split = groupReadings(named('A 1-1 Mo', 'A 1-2 Tu'), '{package} {weighing}-{drawdown} {day}').groups[0];
    expect(split.readings).toEqual({
      weighing: [{ drawdown: [{ name: 'A 1-1 Mo' }, { name: 'A 1-2 Tu' }], day: ['Mo', 'Tu'] }],
    });
  });

  test('readings of one name are what the caller says they are', () => {
    const twice = named('A 1', 'A 1', 'A 2');
    expect(namesIn(groupReadings(twice, '{package} {weighing}', { sameName: 'spot' }).groups)[0].readings).toEqual({
      weighing: [{ spot: ['A 1', 'A 1'] }, 'A 2'],
    });
    expect(() => groupReadings(twice, '{package} {weighing}')).toThrow(
      expect.objectContaining({ code: 'repetition-unstated', path: 'measurements[1]' }),
    );
  });

  test.each([
    ['{package} {weighing} {weighing}', {}, 'pattern-invalid', 'pattern'],
    ['{package} {weigh-up}', {}, 'pattern-invalid', 'pattern'],
    ['{package} {spot}', { sameName: 'weighing' as const }, 'level-misplaced', 'options.sameName'],
  ])('%s is refused', (pattern, options, code, path) => {
    expect(() => groupReadings(named('A 1'), pattern, options)).toThrow(expect.objectContaining({ code, path }));
  });

  test('a unit of the lowest level lies in one day', () => {
    expect(() => groupReadings(named('A 1 Mo', 'A 1 Tu'), '{package} {weighing} {day}')).toThrow(
      expect.objectContaining({ code: 'level-misplaced', path: 'measurements[0]' }),
    );
  });
});
