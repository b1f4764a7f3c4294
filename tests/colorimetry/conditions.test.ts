import { describe, expect, test } from 'vitest';
import type { Conditions } from '../../src/colorimetry/index.js';
import { commonConditions, sameViewing } from '../../src/colorimetry/internal.js';

const of = (...given: Conditions[]) => given.map((conditions, i) => ({ name: 'abc'[i], conditions }));

describe('the conditions of readings that are compared', () => {
  test.each([
    [{ specular: 'included' }, { specular: 'excluded' }],
    [{ geometry: 'd:8°' }, { geometry: '45°a:0°' }],
  ] as const)('%j against %j is a fault, wherever it stands', (one, other) => {
    const [condition] = Object.keys(one);
    const fault = { code: 'conditions-mismatch', kind: 'data', received: Object.values(other)[0] };
    expect(() => commonConditions(of(one, other))).toThrow(
      expect.objectContaining({ ...fault, path: `b.conditions.${condition}` }),
    );
    expect(() => commonConditions(of({}, one, other))).toThrow(
      expect.objectContaining({ ...fault, path: `c.conditions.${condition}` }),
    );
  });

  test.each([
    ['instruments-differ', { instrument: '1' }, { instrument: '2' }],
    ['sessions-differ', { session: '1' }, { session: '2' }],
    ['band-passes-differ', { bandPass: 'corrected' }, { bandPass: 'not-corrected' }],
  ] as const)('%s is a warning with names and values, and nothing they have in common', (code, one, other) => {
    const { conditions, warnings } = commonConditions(of(one, other));
    expect(warnings).toMatchObject([
      { code, figures: { names: ['a', 'b'], values: [...Object.values(one), ...Object.values(other)] } },
    ]);
    expect(conditions).toStrictEqual({});
  });

  test.each([
    { specular: 'included' },
    { geometry: 'd:8°' },
    { instrument: '1' },
    { session: '1' },
    { bandPass: 'corrected' },
  ] as const)('%j stated for one of three is one warning', (stated) => {
    const { conditions, warnings } = commonConditions(of({}, stated, {}));
    expect(warnings).toMatchObject([
      {
        code: 'condition-not-stated',
        path: Object.keys(stated)[0],
        figures: { stated: ['b'], notStated: ['a', 'c'] },
      },
    ]);
    expect(conditions).toStrictEqual({});
  });

  test('what all state alike is what they have in common, and what none states is nothing', () => {
    const stated = { specular: 'included', geometry: 'di:8°', session: '1' } as const;
    expect(commonConditions(of(stated, stated))).toStrictEqual({ conditions: stated, warnings: [] });
    expect(commonConditions(of({}, {}))).toStrictEqual({ conditions: {}, warnings: [] });
    expect(commonConditions([])).toStrictEqual({ conditions: {}, warnings: [] });
  });

  test('the viewing belongs to a colour and is not looked at', () => {
    const viewings = of(
      { viewing: { illuminant: 'A', observer: '2' } },
      { viewing: { illuminant: 'D65', observer: '10' } },
    );
    expect(commonConditions(viewings)).toStrictEqual({ conditions: {}, warnings: [] });
  });
});

describe('two viewings are one', () => {
  const lamp = { name: 'booth', start: 400, step: 10, values: [1, 2, 3] };

  test.each([
    ['by name', 'D65', 'D65', true],
    ['by name', 'D65', 'D50', false],
    ['by their figures, which JSON keeps', lamp, JSON.parse(JSON.stringify(lamp)), true],
    ['by their figures', lamp, { ...lamp, values: Float64Array.of(1, 2, 3) }, true],
    ['by their figures', lamp, { ...lamp, values: [1, 2, 4] }, false],
    ['by their figures', lamp, { ...lamp, kind: 'lines' as const }, false],
    ['never a name and a table', 'D65', { ...lamp, name: 'D65' }, false],
  ] as const)('%s: %j and %j', (_, one, other, expected) => {
    expect(sameViewing({ illuminant: one, observer: '2' }, { illuminant: other, observer: '2' })).toBe(expected);
    expect(sameViewing({ illuminant: one, observer: '2' }, { illuminant: other, observer: '10' })).toBe(false);
  });
});
