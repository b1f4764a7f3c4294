import { describe, expect, test } from 'vitest';
import { D65_10 } from '../../src/colorimetry/index.js';
import { compareStrengthCriteria, relativeTintingStrength, STRENGTH_CRITERIA } from '../../src/strength/index.js';
import { bell, COLORANTS, type Curve, reduction } from './simulated-reductions.js';

const blue = COLORANTS.blue;
const white = reduction(blue, 0);
const reference = reduction(blue, 1);
const options = { viewing: D65_10, surface: 'none', white } as const;

describe('only strength changed', () => {
  const comparison = compareStrengthCriteria(reference, reduction(blue, 1.3), options);

  test('all criteria agree, in their order, and one figure may be quoted', () => {
    expect(comparison.results.map(({ criterion }) => criterion)).toEqual([...STRENGTH_CRITERIA]);
    expect(comparison.unsolved).toEqual([]);
    expect(comparison.spread).toBeLessThan(1e-4);
    expect(comparison).toMatchObject({ shadeChange: false, quotable: true, shadeThreshold: 1, warnings: [] });
  });

  test('each result is the one relativeTintingStrength gives', () => {
    for (const result of comparison.results) {
      const { criterion } = result;
      expect(result).toEqual(relativeTintingStrength(reference, reduction(blue, 1.3), { ...options, criterion }));
    }
  });
});

describe('shade changed', () => {
  const trial = reduction(bell(570, 85, 0.9, 0.06), 1);
  const comparison = compareStrengthCriteria(reference, trial, options);

  test('the spread and the largest residual are those of the results', () => {
    const percents = comparison.results.map(({ percent }) => percent);
    expect(comparison.spread).toBe(Math.max(...percents) - Math.min(...percents));
    const worst = Math.max(...comparison.results.map(({ residual }) => residual.dE2000));
    expect(comparison.largestResidual.dE2000).toBe(worst);
  });

  test('no single figure may be quoted, which is said', () => {
    expect(comparison).toMatchObject({ shadeChange: true, quotable: false });
    expect(comparison.warnings.map(({ code }) => code)).toEqual(['shade-change']);
  });

  test('by a threshold of the caller', () => {
    const lenient = compareStrengthCriteria(reference, trial, { ...options, shadeThreshold: 50 });
    expect(lenient).toMatchObject({ shadeChange: false, quotable: true, shadeThreshold: 50, warnings: [] });
    // which is the largest residual allowed
    const shadeThreshold = comparison.largestResidual.dE2000;
    expect(compareStrengthCriteria(reference, trial, { ...options, shadeThreshold }).shadeChange).toBe(false);
  });
});

describe('criteria without an answer', () => {
  // Another colorant altogether: it takes up nothing where the reference absorbs most.
  const other: Curve = (wavelength) => bell(430, 25, 0.4)(wavelength) - bell(610, 5, 1e-4)(wavelength);
  const comparison = compareStrengthCriteria(reference, reduction(other, 1), options);

  test('are listed with their reason', () => {
    expect(comparison.unsolved[0]).toMatchObject({ criterion: 'absorption-maximum', code: 'no-absorption' });
    expect(comparison.unsolved[0].reason).toContain('trial at 610 nm');
    expect(comparison.results.length + comparison.unsolved.length).toBe(STRENGTH_CRITERIA.length);
    expect(comparison.quotable).toBe(false);
    expect(comparison.warnings.map(({ code }) => code)).toContain('criteria-unsolved');
  });

  test('if no criterion has one, that is an error', () => {
    expect(() => compareStrengthCriteria(white, reference, options)).toThrow(
      expect.objectContaining({ code: 'no-absorption' }),
    );
  });
});

test('faults of the readings and options are not taken for a missing answer', () => {
  const shorter = reduction(blue, 1, { grid: { start: 400, step: 10, count: 31 } });
  expect(() => compareStrengthCriteria(reference, shorter, options)).toThrow(
    expect.objectContaining({ code: 'grid-mismatch', path: 'trial' }),
  );
  expect(() => compareStrengthCriteria(reference, reference, { ...options, shadeThreshold: 0 })).toThrow(
    expect.objectContaining({ code: 'invalid-option', path: 'options.shadeThreshold' }),
  );
});

test('the comparison takes the largest residual, whichever criterion leaves it', () => {
  const trial = reduction(bell(560, 85, 0.9, 0.06), 1);
  for (const [first, second] of [
    [reduction(blue, 1), trial],
    [trial, reduction(blue, 1)],
  ]) {
    const { results, largestResidual } = compareStrengthCriteria(first, second, options);
    const residuals = results.map(({ residual }) => residual.dE2000);
    expect(largestResidual.dE2000).toBe(Math.max(...residuals));
    expect(results.find(({ criterion }) => criterion === largestResidual.criterion)?.residual.dE2000).toBe(
      Math.max(...residuals),
    );
  }
});

test('the comparison lets no figure stand for all where a criterion has no answer, and names it', () => {
  const none = (wavelength: number) => bell(430, 25, 0.4)(wavelength) - bell(610, 5, 1e-4)(wavelength);
  const { unsolved, quotable, warnings } = compareStrengthCriteria(reduction(blue, 1), reduction(none, 1), {
    ...options,
    shadeThreshold: 1000,
  });
  expect(unsolved.length).toBeGreaterThan(0);
  expect(quotable).toBe(false);
  expect(warnings).toEqual([
    expect.objectContaining({
      code: 'criteria-unsolved',
      figures: { criteria: unsolved.map(({ criterion }) => criterion) },
    }),
  ]);
});

test('the comparison refuses an endless threshold', () => {
  expect(() =>
    compareStrengthCriteria(reduction(blue, 1), reduction(blue, 1), {
      ...options,
      shadeThreshold: Number.POSITIVE_INFINITY,
    }),
  ).toThrow(expect.objectContaining({ code: 'invalid-option', path: 'options.shadeThreshold' }));
});
