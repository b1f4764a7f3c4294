import { expect, test } from 'vitest';
import type { Conditions } from '../../src/colorimetry/index.js';
import type { Surface } from '../../src/kubelka-munk/index.js';
import { assertOnSurface, conditionsOnSurface } from '../../src/kubelka-munk/internal.js';

const SPHERE: Surface = { external: 0.04, internal: 0.6, specular: 'included' };
const ANGLED: Surface = { ...SPHERE, specular: 'excluded', geometry: '45°:0°' };
const placed = (...given: Conditions[]) =>
  given.map((conditions, i) => ({ reading: { conditions }, path: `side[${i}]` }));

test.each<[Surface, Conditions, string]>([
  [SPHERE, { specular: 'excluded' }, 'specular'],
  [SPHERE, { geometry: '45°a:0°' }, 'geometry'],
  [ANGLED, { geometry: 'di:8°' }, 'geometry'],
])('a reading that the surface does not fit is refused with its path: %j, %j', (surface, conditions, condition) => {
  const fault = { code: 'conditions-mismatch', path: `side[1].conditions.${condition}` };
  expect(() => conditionsOnSurface(placed({}, conditions), surface)).toThrow(expect.objectContaining(fault));
  expect(() => conditionsOnSurface(placed({}, conditions), 'none')).not.toThrow();
});

test('what readings leave open is the surface to state, and it says nothing of their instrument', () => {
  const { warnings, conditions } = conditionsOnSurface(placed({ instrument: 'A' }, { instrument: 'A' }), ANGLED);
  expect(warnings).toEqual([]);
  expect(conditions).toEqual({ instrument: 'A' });
  expect(() =>
    assertOnSurface([{ name: 'a', conditions: { geometry: 'de:8°' } }], SPHERE, 'the surface'),
  ).not.toThrow();
});
