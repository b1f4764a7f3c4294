import { describe, expect, test } from 'vitest';
import { assessRubOut, compareStorage, compatibilityMatrix, D65_2, D65_10 } from '../../src/index.js';

const base = { L: 60, a: -5, b: -30 };
/** A rub-out of so many ΔL*, read once with known repeatability. */
const rubOut = (dL: number, { viewing = D65_10, repeatability = 0.05, limit = 1 } = {}) =>
  assessRubOut(base, { ...base, L: base.L - dL }, { viewing, repeatability, limit });

describe('before and after storage', () => {
  test('both within the limit and no proven change: stable', () => {
    expect(compareStorage(rubOut(0.3), rubOut(0.35))).toMatchObject({ outcome: 'meets', finding: 'undecided' });
  });

  test('a rub-out that grew beyond the limit fails', () => {
    const result = compareStorage(rubOut(0.3), rubOut(3));
    expect(result).toMatchObject({ outcome: 'fails', fresh: 'meets', stored: 'fails', finding: 'larger' });
    expect(result.change).toBeCloseTo(2.7, 12);
    expect(result.statement).toBe('Storage made the rub-out larger: ΔE*ab 0.30 fresh and 3.00 stored.');
  });

  test('one that shrank is called so', () => expect(compareStorage(rubOut(3), rubOut(0.3)).finding).toBe('smaller'));

  test('far from zero the interval of the change is that of a difference of two normal variables', () => {
    const { interval } = compareStorage(rubOut(5), rubOut(10));
    expect(interval?.low).toBeCloseTo(5 - 1.96 * 0.05 * 2, 2);
    expect(interval?.high).toBeCloseTo(5 + 1.96 * 0.05 * 2, 2);
  });

  test('has ends that come from both intervals, end by end, and zero at an end proves no change (Zou & Donner 2008)', () => {
    // 3-4-5 triangles: where the change is 5, √(3² + 4²) takes it down to 0, and √(12² + 5²) up to 18
    const found = (dEab: number, low: number, high: number) => {
      const { difference, interval, ...rest } = rubOut(1);
      if (!interval) throw new Error('a stated repeatability gives an interval');
      return { ...rest, difference: { ...difference, dEab }, interval: { ...interval, dEab: { low, high } } };
    };
    const [one, other] = [found(10, 5, 14), found(15, 12, 27)];
    expect(compareStorage(one, other)).toMatchObject({ interval: { low: 0, high: 18 }, finding: 'undecided' });
    expect(compareStorage(other, one)).toMatchObject({ interval: { low: -18, high: 0 }, finding: 'undecided' });
  });

  test('without an interval nothing is proven', () => {
    const once = assessRubOut(base, { ...base, L: 50 }, { viewing: D65_10 });
    expect(compareStorage(rubOut(0.3), once)).toMatchObject({ outcome: 'undecided', finding: 'undecided' });
  });

  test.each([
    ['viewing of the stored rub-out', rubOut(1, { viewing: D65_2 })],
    ['limit of the stored rub-out', rubOut(1, { limit: 2 })],
  ])('refuses another %s', (path, stored) => {
    expect(() => compareStorage(rubOut(1), stored)).toThrow(
      expect.objectContaining({ code: 'conditions-mismatch', path }),
    );
  });
});

describe('colorants by paints', () => {
  const cell = (colorant: string, paint: string, dL: number) => ({ colorant, paint, rubOut: rubOut(dL) });

  test('a colorant passes only where every paint passes', () => {
    const { colorants, paints } = compatibilityMatrix([
      cell('blue', 'acrylic', 0.2),
      cell('blue', 'silicate', 3),
      cell('green', 'acrylic', 0.2),
      cell('green', 'silicate', 0.3),
    ]);
    expect(paints).toEqual(['acrylic', 'silicate']);
    expect(colorants).toEqual([
      { colorant: 'blue', outcome: 'fails', meeting: ['acrylic'], undecided: [], failing: ['silicate'], untested: [] },
      {
        colorant: 'green',
        outcome: 'meets',
        meeting: ['acrylic', 'silicate'],
        undecided: [],
        failing: [],
        untested: [],
      },
    ]);
  });

  test('an undecided cell and an untested paint keep the whole undecided', () => {
    const { colorants } = compatibilityMatrix([
      cell('blue', 'acrylic', 1),
      cell('blue', 'silicate', 0.2),
      cell('green', 'acrylic', 0.2),
    ]);
    expect(colorants.map(({ outcome }) => outcome)).toEqual(['undecided', 'undecided']);
    expect(colorants[1].untested).toEqual(['silicate']);
  });

  test('a strength outside its limit fails a cell that rubs out well; an absent one leaves it undecided', () => {
    const tests = [
      { ...cell('blue', 'acrylic', 0.2), strength: { percent: 90, interval: { low: 89, high: 91 } } },
      { ...cell('blue', 'silicate', 0.2), strength: { percent: 100, interval: { low: 98, high: 102 } } },
      cell('blue', 'lime', 0.2),
    ];
    const { cells } = compatibilityMatrix(tests, { strength: { lower: 95, upper: 105 } });
    expect(cells.map(({ outcome }) => outcome)).toEqual(['fails', 'meets', 'undecided']);
    expect(compatibilityMatrix(tests).cells.map(({ outcome }) => outcome)).toEqual(['meets', 'meets', 'meets']);
  });

  test('bad input', () => {
    expect(() => compatibilityMatrix([])).toThrow(expect.objectContaining({ code: 'empty', path: 'tests' }));
    const twice = [cell('blue', 'acrylic', 1), cell('blue', 'acrylic', 1)];
    expect(() => compatibilityMatrix(twice)).toThrow(
      expect.objectContaining({ code: 'invalid-option', path: 'tests[1]' }),
    );
    const other = { colorant: 'blue', paint: 'lime', rubOut: rubOut(1, { viewing: D65_2 }) };
    expect(() => compatibilityMatrix([twice[0], other])).toThrow(
      expect.objectContaining({ code: 'conditions-mismatch', path: 'viewing of blue in lime' }),
    );
  });
});
