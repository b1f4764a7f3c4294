import { describe, expect, test } from 'vitest';
import { createSpectrum, gridOf, spectrumWarnings, TintladderError } from '../../src/colorimetry/index.js';
import { assertSameGrid } from '../../src/colorimetry/spectrum.js';
import { PIGMENTS } from './pigments.js';

const good = { start: 400, step: 10, values: [0.1, 0.2, 0.3], scale: 'fraction' } as const;

describe('createSpectrum', () => {
  test('copies the values, scales percent, and freezes', () => {
    const values = [10, 20, 30];
    const spectrum = createSpectrum({ ...good, values, scale: 'percent' });
    values[0] = 99;
    expect([...spectrum.values]).toEqual([0.1, 0.2, 0.3]);
    expect(Object.isFrozen(spectrum)).toBe(true);
    expect(gridOf(spectrum)).toEqual({ start: 400, step: 10, count: 3 });
  });

  test('takes the widest grid, a fluorescent white and a perfect black', () => {
    createSpectrum({ start: 360, step: 1, values: Array(471).fill(0), scale: 'fraction' });
    createSpectrum({ ...good, values: [1.2, 2, 0] });
    createSpectrum({ ...good, values: [120, 200, 0], scale: 'percent' });
  });

  test('takes two readings 20 nm apart', () => {
    expect(gridOf(createSpectrum({ start: 500, step: 20, values: [0.4, 0.5], scale: 'fraction' })).count).toBe(2);
  });

  test.each([
    ['invalid-option', 'scale', { scale: undefined as unknown as 'percent' }],
    ['grid-invalid', 'grid.count', { values: [0.5] }],
    ['grid-invalid', 'grid.step', { step: 25 }],
    ['grid-invalid', 'grid.step', { step: 0.5 }],
    ['grid-invalid', 'grid.step', { step: Number.NaN }],
    ['grid-invalid', 'grid.start', { start: 350 }],
    ['grid-invalid', 'grid.start', { start: Number.NaN }],
    ['grid-invalid', 'grid.end', { start: 815 }],
    ['not-finite', 'reflectance at 410 nm (index 1)', { values: [0.1, Number.NaN] }],
    ['not-finite', 'reflectance at 410 nm (index 1)', { values: [0.1, Infinity] }],
    ['not-finite', 'reflectance at 410 nm (index 1)', { values: [0.1, '0.2' as unknown as number] }],
    ['reflectance-out-of-range', 'reflectance at 410 nm (index 1)', { values: [0.1, -0.006] }],
    ['reflectance-out-of-range', 'reflectance at 400 nm (index 0)', { values: [57.2, 0.1] }],
    ['reflectance-out-of-range', 'reflectance at 400 nm (index 0)', { values: [201, 1], scale: 'percent' as const }],
  ])('refuses %s at %s', (code, path, change) => {
    expect(() => createSpectrum({ ...good, ...change })).toThrow(TintladderError);
    expect(() => createSpectrum({ ...good, ...change })).toThrow(expect.objectContaining({ code, path }));
  });

  test('says how to mend percent passed as fractions', () => {
    expect(() => createSpectrum({ ...good, values: [57.2, 1] })).toThrow(
      expect.objectContaining({ received: 57.2, hint: "Pass scale: 'percent'?" }),
    );
  });

  test.each([
    [{ values: [-0.1, 1] }, 'reflectance at 400 nm (index 0)', -0.1],
    [{ values: [0.1, 201], scale: 'percent' as const }, 'reflectance at 410 nm (index 1)', 201],
    [{ start: 350 }, 'grid.start', 350],
    [{ start: 815 }, 'grid.end', 835],
    [{ step: 25 }, 'grid.step', 25],
    [{ values: [0.5] }, 'grid.count', 1],
  ])('names of %j the place %s and the value %d', (change, path, received) => {
    expect(() => createSpectrum({ ...good, ...change })).toThrow(expect.objectContaining({ path, received }));
  });
});

describe('assertSameGrid', () => {
  const reference = createSpectrum(good);

  test.each([
    [{ start: 410, step: 10, count: 3 }, { start: 410 }],
    [{ start: 400, step: 5, count: 3 }, { step: 5 }],
    [{ start: 400, step: 10, count: 2 }, { values: [0.1, 0.2] }],
  ])('refuses a sample on %j beside a reference on 400-420/10 nm', (received, change) => {
    const sample = createSpectrum({ ...good, ...change });
    expect(() => assertSameGrid(reference, sample, 'batch')).toThrow(
      expect.objectContaining({
        code: 'grid-mismatch',
        path: 'batch',
        received,
        expected: 'the grid of the reference, 400-420/10 nm',
      }),
    );
  });

  test('has nothing against other values on the same grid', () => {
    assertSameGrid(reference, createSpectrum({ ...good, values: [0.9, 0.8, 0.7] }), 'batch');
  });
});

describe('spectrumWarnings', () => {
  test.each(PIGMENTS)('has nothing to say of $name, smooth at 10 nm', ({ reflectance }) => {
    const values = Array.from({ length: 31 }, (_, i) => reflectance(400 + 10 * i));
    expect(spectrumWarnings(createSpectrum({ start: 400, step: 10, values, scale: 'fraction' }))).toEqual([]);
  });

  test('notes an absorption line narrower than the step', () => {
    const values = Array.from({ length: 31 }, (_, i) => 0.6 - 0.3 * Math.exp(-(((400 + 10 * i - 583) / 5) ** 2)));
    const [warning, ...others] = spectrumWarnings(createSpectrum({ start: 400, step: 10, values, scale: 'fraction' }));
    expect(others).toEqual([]);
    expect(warning).toMatchObject({ code: 'narrow-features', path: '580 nm' });
  });

  // A reading that stands h above its neighbours has the fourth difference 6 h, and 3/128 of that is the uncertainty.
  const spike = (at: number, height: number) => {
    const values = Array.from({ length: 41 }, (_, i) => (380 + 10 * i === at ? 0.5 + height : 0.5));
    return spectrumWarnings(createSpectrum({ start: 380, step: 10, values, scale: 'fraction' }));
  };
  const limit = (0.005 * 128) / 3 / 6;

  test('speaks of an uncertainty above 0.005 and says how large it is', () => {
    expect(spike(550, 0.99 * limit)).toEqual([]);
    expect(spike(550, 1.01 * limit)).toMatchObject([{ code: 'narrow-features', path: '550 nm' }]);
    expect(spike(550, 0.4)[0].message).toMatch(
      /^Near 550 nm the reflectance changes faster than readings 10 nm apart can resolve \(interpolation uncertain by 0\.056\)/,
    );
  });

  test.each([420, 700])('speaks of %d nm, an end of what is watched', (at) => {
    expect(spike(at, 1.01 * limit)).toMatchObject([{ path: `${at} nm` }]);
  });

  // Two thirds of a spike's fourth difference stand beside it, so its neighbours inside stay below the limit.
  test.each([410, 710])('says nothing of %d nm, where every white has its band edge or nobody sees', (at) => {
    expect(spike(at, 1.4 * limit)).toEqual([]);
  });

  test('needs two readings on either side', () => {
    const warnings = (values: number[]) =>
      spectrumWarnings(createSpectrum({ start: 500, step: 10, values, scale: 'fraction' }));
    expect(warnings([0.5, 0.5, 0.9, 0.5, 0.5])).toMatchObject([{ path: '520 nm' }]);
    expect(warnings([0.5, 0.9, 0.5, 0.5])).toEqual([]);
  });

  test('names the first of several places that are equally bad', () => {
    const values = [0.5, 0.5, 0.5, 1.5, 0.5, 0.5, 0.5, 1.5, 0.5, 0.5, 0.5];
    const spectrum = createSpectrum({ start: 500, step: 10, values, scale: 'fraction' });
    expect(spectrumWarnings(spectrum)).toMatchObject([{ path: '530 nm' }, { path: '530 nm' }]);
  });

  test('says nothing of a reflectance of exactly 1', () => {
    const spectrum = createSpectrum({ start: 430, step: 10, values: [1, 1, 1], scale: 'fraction' });
    expect(spectrumWarnings(spectrum)).toEqual([]);
  });

  test('notes a reflectance factor above 1 where it is highest', () => {
    const spectrum = createSpectrum({ start: 430, step: 10, values: [1.01, 1.2, 0.95], scale: 'fraction' });
    expect(spectrumWarnings(spectrum)).toMatchObject([{ code: 'reflectance-above-one', path: '440 nm' }]);
  });
});
