import { describe, expect, test } from 'vitest';
import type { Conditions } from '../../src/colorimetry/index.js';
import type { Measurement } from '../../src/exchange/index.js';
import { evaluateStudy, type Study } from '../../src/study/index.js';
import { film, measurement, STUDY } from './invented-study.js';
import { seededNormal } from './seeded-normal.js';

const study: Study = {
  ...STUDY,
  criteria: [{ quantity: 'strength-after-storage', lower: 95, unit: '%', reason: 'shelf life' }],
  readings: [STUDY.readings[0], { pattern: '{paint} {package} {storage} {area} {weighing}' }],
};

/** Films of both packages, fresh and stored, each with the conditions that a function states for its name. */
function readings(conditionsOf: (name: string) => Conditions): Measurement[] {
  const noise = seededNormal(6);
  const names = ['R', 'A'].flatMap((id) =>
    ['fresh', 'stored'].flatMap((storage) => [1, 2, 3].map((i) => `W ${id} ${storage} unrubbed ${i}`)),
  );
  const tints = names.map((name) => measurement(name, film(0.5 * (1 + 0.003 * noise()), noise)));
  const whites = [1, 2].map((i) => measurement(`W white ${i}`, film(0, noise)));
  return [...whites, ...tints].map((one) => ({ ...one, conditions: conditionsOf(one.name) }));
}

const evaluate = (conditionsOf: (name: string) => Conditions, change: Partial<Study> = {}) =>
  evaluateStudy({ ...study, ...change }, readings(conditionsOf));

describe('conditions are kept to the end of a study', () => {
  test('a film read specular excluded after storage is no match for one read included', async () => {
    const mixed = (name: string): Conditions => ({ specular: name.includes('stored') ? 'excluded' : 'included' });
    await expect(evaluate(mixed)).rejects.toMatchObject({
      code: 'conditions-mismatch',
      path: 'W R stored unrubbed 1.conditions.specular',
    });
  });

  test('files that all state another mode than the surface of the study are refused', async () => {
    await expect(evaluate(() => ({ specular: 'excluded' }))).rejects.toMatchObject({ code: 'conditions-mismatch' });
    await expect(evaluate(() => ({ geometry: '45°a:0°' }))).rejects.toMatchObject({ code: 'conditions-mismatch' });
    const surface = { ...(study.surface === 'none' ? {} : study.surface), specular: 'excluded' } as Study['surface'];
    await expect(evaluate(() => ({ specular: 'excluded' }), { surface })).resolves.toBeDefined();
    await expect(evaluate(() => ({ geometry: 'di:8°' }))).resolves.toBeDefined();
  });

  test('another instrument after storage is a warning with the paint in its path', async () => {
    const moved = (name: string): Conditions => ({ instrument: name.includes('stored') ? 'second' : 'first' });
    const { warnings } = await evaluate(moved);
    expect(warnings).toContainEqual(expect.objectContaining({ code: 'instruments-differ', path: 'instrument in W' }));
  });

  test('what only some files state is one warning, what none does is nothing', async () => {
    const some = await evaluate((name) => (name.endsWith('1') ? { specular: 'included' } : {}));
    expect(some.warnings.filter(({ code }) => code === 'condition-not-stated')).toHaveLength(1);
    const none = await evaluate(() => ({}));
    expect(none.warnings.filter(({ code }) => code === 'condition-not-stated')).toEqual([]);
  });

  test('the method says who stated the specular mode', async () => {
    const saying = async (conditions: Conditions) => (await evaluate(() => conditions)).method.statements.join(' ');
    expect(await saying({})).toContain('stated by the study only');
    expect(await saying({ specular: 'included' })).toContain('stated by the files');
  });

  test('packages whose sessions never meet are told apart by a warning', async () => {
    const apart = await evaluate((name) => ({ session: name.includes(' A ') ? '2' : '1' }));
    expect(apart.warnings.map(({ code }) => code)).toContain('never-in-one-session');
  });
});
