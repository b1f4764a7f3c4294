import { describe, expect, test } from 'vitest';
import { assessRubOut, compareStorage, D65_2, D65_10, type RubOutOptions } from '../../src/index.js';

const base = { L: 60, a: -5, b: -30 };
/** A rub-out of so many ΔL*, read once with known precision. */
const rubOut = (dL: number, options: Partial<RubOutOptions> = {}) =>
  assessRubOut(
    base,
    { ...base, L: base.L - dL },
    {
      viewing: D65_10,
      surface: 'none',
      precision: { spot: 0.05 },
      ...options,
    },
  );

describe('before and after storage', () => {
  test('both within the limit and no shown change: stable', () => {
    expect(compareStorage(rubOut(0.3), rubOut(0.35))).toMatchObject({ outcome: 'meets', finding: 'undecided' });
  });

  test('a rub-out that grew beyond the limit fails', () => {
    const result = compareStorage(rubOut(0.3), rubOut(3));
    expect(result).toMatchObject({ outcome: 'fails', fresh: 'meets', stored: 'fails', finding: 'larger' });
    expect(result.change.dL).toBeCloseTo(-2.7, 12);
    expect(result.change.dEab).toBeCloseTo(2.7, 12);
  });

  test('one that shrank is called so', () => expect(compareStorage(rubOut(3), rubOut(0.3)).finding).toBe('smaller'));

  test('one that turned from 1.5 stronger to 1.5 weaker has changed by 3, though both are as long', () => {
    const result = compareStorage(rubOut(1.5), rubOut(-1.5));
    expect(result).toMatchObject({
      finding: 'turned',
      directions: { fresh: { towards: 'more-colour' }, stored: { towards: 'more-white' } },
    });
    expect(result.change.dEab).toBeCloseTo(3, 12);
    expect(result.strengthChange?.points).toBeLessThan(0);
  });

  test('far from zero the interval of the change is that of a difference of two normal variables', () => {
    const { interval } = compareStorage(rubOut(5), rubOut(10));
    // four readings of variance 0.05²
    expect(interval?.low).toBeCloseTo(5 - 1.96 * 0.05 * 2, 2);
    expect(interval?.high).toBeCloseTo(5 + 1.96 * 0.05 * 2, 2);
  });

  test('without an interval nothing is shown', () => {
    const once = rubOut(10, { precision: undefined });
    expect(compareStorage(rubOut(0.3), once)).toMatchObject({ outcome: 'undecided', finding: 'undecided' });
  });

  test.each([
    ['viewing of the stored rub-out', rubOut(1, { viewing: D65_2 })],
    ['limit of the stored rub-out', rubOut(1, { limit: 2 })],
    ['measure of the stored rub-out', rubOut(1, { measure: 'dE2000' })],
    ['surface of the stored rub-out', rubOut(1, { surface: { external: 0.04, internal: 0.6, specular: 'excluded' } })],
  ])('refuses another %s', (path, stored) => {
    expect(() => compareStorage(rubOut(1), stored)).toThrow(
      expect.objectContaining({ code: 'conditions-mismatch', path }),
    );
  });
});
