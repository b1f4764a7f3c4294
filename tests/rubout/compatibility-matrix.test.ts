import { describe, expect, test } from 'vitest';
import { assessRubOut, compatibilityMatrix, D65_2, D65_10, type Viewing } from '../../src/index.js';

const base = { L: 60, a: -5, b: -30 };
const rubOut = (dL: number, viewing: Viewing = D65_10) =>
  assessRubOut(base, { ...base, L: base.L - dL }, { viewing, surface: 'none', precision: { spot: 0.05 } });
const cell = (colorant: string, paint: string, dL: number) => ({ colorant, paint, rubOut: rubOut(dL) });

describe('colorants by paints', () => {
  test('a colorant passes only where every paint passes', () => {
    const { colorants, paints } = compatibilityMatrix([
      cell('blue', 'acrylic', 0.2),
      cell('blue', 'silicate', 3),
      cell('green', 'acrylic', 0.2),
      cell('green', 'silicate', 0.3),
    ]);
    expect(paints).toEqual(['acrylic', 'silicate']);
    expect(colorants).toMatchObject([
      { colorant: 'blue', outcome: 'fails', meeting: ['acrylic'], failing: ['silicate'] },
      { colorant: 'green', outcome: 'meets', meeting: ['acrylic', 'silicate'], failing: [] },
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

  test('a cell tells the direction and the causes in question', () => {
    const [found] = compatibilityMatrix([cell('blue', 'acrylic', 3)]).cells;
    expect(found.direction?.towards).toBe('more-colour');
    expect(found.causes).toContain('coloured-pigment-flocculated');
  });

  test('bad input', () => {
    expect(() => compatibilityMatrix([])).toThrow(expect.objectContaining({ code: 'empty', path: 'tests' }));
    const twice = [cell('blue', 'acrylic', 1), cell('blue', 'acrylic', 1)];
    expect(() => compatibilityMatrix(twice)).toThrow(
      expect.objectContaining({ code: 'invalid-option', path: 'tests[1]' }),
    );
    const other = { colorant: 'blue', paint: 'lime', rubOut: rubOut(1, D65_2) };
    expect(() => compatibilityMatrix([twice[0], other])).toThrow(
      expect.objectContaining({ code: 'conditions-mismatch', path: 'viewing of blue in lime' }),
    );
  });
});
