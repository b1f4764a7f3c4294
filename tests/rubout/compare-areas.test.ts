import { describe, expect, test } from 'vitest';
import { compareAreas, D65_10, type RubOutOptions } from '../../src/index.js';
import { SURFACE, spotsOf } from './films.js';

const options: RubOutOptions = { viewing: D65_10, surface: SURFACE, white: spotsOf({ colour: 0 }) };

describe('areas of one film', () => {
  test('that a brush develops only in part are sensitive to shear', () => {
    const areas = { drawn: spotsOf({ colour: 0.8 }), brushed: spotsOf({ colour: 0.9 }), rubbed: spotsOf() };
    const { pairs } = compareAreas(areas, options);
    expect(pairs.map(({ from, to, meaning }) => `${from} ${to} ${meaning}`)).toEqual([
      'drawn rubbed development',
      'drawn brushed development-by-brush',
      'brushed rubbed shear-sensitivity',
    ]);
    for (const { rubOut } of pairs) expect(rubOut.direction?.towards).toBe('more-colour');
  });

  test('poured and drawn show separation', () => {
    const [pair] = compareAreas({ poured: spotsOf({ colour: 0.8 }), drawn: spotsOf() }, options).pairs;
    expect(pair.meaning).toBe('separation');
    expect(pair.rubOut.causes.find(({ cause }) => cause === 'pigments-separated')?.standing).toBe('fits');
  });
});

test.each<[string, string, () => unknown]>([
  ['too-few-points', 'areas', () => compareAreas({ poured: spotsOf(), rubbed: spotsOf() }, options)],
  ['invalid-option', 'areas.scraped', () => compareAreas({ scraped: spotsOf() } as object, options)],
  ['wrong-type', 'areas', () => compareAreas(null as unknown as object, options)],
])('%s at %s', (code, path, act) => {
  expect(act).toThrow(expect.objectContaining({ code, path }));
});
