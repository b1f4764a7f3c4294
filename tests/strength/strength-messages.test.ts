import { describe, expect, test } from 'vitest';
import { createSpectrum, D65_10, type Spectrum } from '../../src/colorimetry/index.js';
import { relativeTintingStrength, type StrengthOptions } from '../../src/strength/index.js';
import { bell, COLORANTS, type Curve, PAINT_SURFACE, reduction } from './simulated-reductions.js';

// What the warnings say in figures, checked by hand calculation, and what a result carries of its conditions.

const { blue } = COLORANTS;
const white = reduction(blue, 0);
const strengthOf = (
  reference: Spectrum | Spectrum[],
  trial: Spectrum | Spectrum[],
  options: Partial<StrengthOptions> = {},
) => relativeTintingStrength(reference, trial, { criterion: 'absorption-maximum', viewing: D65_10, ...options });
const flat = (value: number, start = 400, count = 31) =>
  createSpectrum({ start, step: 10, values: Array(count).fill(value), scale: 'fraction' });
const noteOf = ({ warnings }: ReturnType<typeof strengthOf>, code: string) =>
  warnings.find((warning) => warning.code === code)?.message;

describe('a reading at the end of what can be read', () => {
  test('dark: R = 0.02 has K/S 24.01, whose slope (1 - R²)/2R² moves it by 5.2 % for 0.1 % of reflectance', () => {
    const message = noteOf(strengthOf(flat(0.02), flat(0.2)), 'absorption-saturated');
    expect(message).toBe(
      'The reference reflects 2.0 % at 400 nm; 0.1 % of reflectance moves its strength by 5 % there. Measure a paler reduction.',
    );
  });

  test('pale: R = 0.99 has K/S 5.05e-5, moved by 20 %', () => {
    const message = noteOf(strengthOf(flat(0.99), flat(0.9)), 'absorption-weak');
    expect(message).toBe(
      'The reference reflects 99.0 % at 400 nm; 0.1 % of reflectance moves its strength by 20 % there. Measure a stronger reduction.',
    );
  });

  test('neither between them', () => {
    for (const [reference, trial] of [
      [0.021, 0.3],
      [0.955, 0.5],
    ]) {
      const codes = strengthOf(flat(reference), flat(trial)).warnings.map(({ code }) => code);
      expect(codes).not.toContain('absorption-saturated');
      expect(codes).not.toContain('absorption-weak');
    }
  });

  test('through the surface the step is larger inside: with k1 0.04 and k2 0.6 R = 0.055 measured is 0.038 inside', () => {
    // inside 0.015 / (0.96 · 0.4 + 0.6 · 0.015) = 0.03817, K/S 12.12, slope 342.7; a step of 0.001 is 0.00248 inside: 7 %
    const message = noteOf(strengthOf(flat(0.055), flat(0.3), { surface: PAINT_SURFACE }), 'absorption-saturated');
    expect(message).toMatch(
      /^The reference reflects 5\.5 % at 400 nm; 0\.1 % of reflectance moves its strength by 7 % there\./,
    );
  });
});

test('a reference that absorbs nearly evenly is said to, with the share of its least absorption', () => {
  const nearly: Curve = (wavelength) => (wavelength < 500 ? 0.46 : 0.5);
  const grid = { start: 400, step: 10, count: 31 };
  const result = strengthOf(
    reduction(nearly, 1, { grid, white: () => 0.01 }),
    reduction(nearly, 1.2, { grid, white: () => 0.01 }),
    {
      white: reduction(nearly, 0, { grid, white: () => 0.01 }),
    },
  );
  expect(noteOf(result, 'near-neutral')).toMatch(
    /at least 9[12] % of its maximum everywhere.*the maximum, 500 nm, is accidental/,
  );
});

test('the maximum at the red end is noted too, and the end itself is looked at', () => {
  const red = bell(720, 60, 1, 0.01);
  const result = strengthOf(reduction(red, 1), reduction(red, 1.2), { white });
  expect(result.wavelength).toBe(700);
  expect(result.warnings).toContainEqual(
    expect.objectContaining({ code: 'absorption-maximum-at-end', path: '700 nm' }),
  );
});

describe('a white that is darker than a reduction', () => {
  const base = () => 0.1;
  const made = { white: base };
  const bleached: Curve = (wavelength) => {
    if (wavelength === 450) return -0.05;
    if (wavelength === 460) return -0.08;
    return wavelength === 500 ? -0.01 : bell(610, 40, 0.8)(wavelength);
  };

  test('is told with its bands, the worst of them and its share of the maximum', () => {
    const result = strengthOf(reduction(blue, 1, made), reduction(bleached, 1, made), {
      white: reduction(blue, 0, made),
    });
    const note = result.warnings.find(({ code }) => code === 'white-darker');
    expect(note?.path).toBe('trial at 460 nm');
    expect(note?.message).toContain('in 3 of 36 bands (450 nm to 460 nm, 500 nm)');
    // 0.08 of 0.8
    expect(note?.message).toContain('the largest is 10 % of its maximum');
  });

  test('is no finding where it is rounding', () => {
    expect(
      strengthOf(reduction(blue, 1, made), reduction(blue, 1.2, made), { white: reduction(blue, 0, made) }).warnings,
    ).toEqual([]);
  });
});

describe('a reading brighter than a film can be', () => {
  const startingAt = (first: number) =>
    createSpectrum({ start: 400, step: 10, values: [first, ...Array(30).fill(0.4)], scale: 'fraction' });
  const bright = startingAt(1.05);

  test('is refused with its place and a way to mend it', () => {
    expect(() => strengthOf(flat(0.4), bright)).toThrow(
      /^trial at 400 nm is 1\.05; .* Is the reading calibrated, free of fluorescence/,
    );
    expect(() => strengthOf(flat(0.4), bright, { surface: PAINT_SURFACE })).toThrow(
      /^trial at 400 nm, corrected for the surface, is 1\.\d+; .* Is the reading calibrated/,
    );
  });

  test('one that reflects nothing is told to be a lighter reduction instead', () => {
    const dark = startingAt(0);
    expect(() => strengthOf(flat(0.4), dark)).toThrow(/measure a lighter reduction\.$/);
    const excluded = { ...PAINT_SURFACE, specular: 'excluded' } as const;
    expect(() => strengthOf(flat(0.4), dark, { surface: excluded })).toThrow(
      expect.objectContaining({ code: 'zero-reflectance' }),
    );
    expect(() => strengthOf(flat(0.4), dark, { surface: PAINT_SURFACE })).toThrow(
      expect.objectContaining({ code: 'no-internal-reflectance' }),
    );
  });

  test('a perfect white is the last that passes', () => {
    expect(strengthOf(flat(0.4), startingAt(1), { criterion: 'kubelka-munk-sum' }).percent).toBeLessThan(100);
  });
});

describe('readings in different specular modes', () => {
  const made = { surface: PAINT_SURFACE };
  const options = { surface: PAINT_SURFACE, white: reduction(blue, 0, made) };
  const messageOf = (trial: Spectrum, more: Partial<StrengthOptions> = options) =>
    noteOf(strengthOf(reduction(blue, 1, made), trial, more), 'specular-modes-differ');

  test('are told by the mode that the trial seems to have been read in', () => {
    expect(messageOf(reduction(blue, 1.2, { ...made, shift: () => -0.04 }))).toMatch(
      /if it had been read with specular reflection excluded and the reference with it included\./,
    );
    expect(messageOf(reduction(blue, 1.2, { ...made, shift: () => 0.04 }))).toMatch(
      /if it had been read with specular reflection included and the reference with it excluded\./,
    );
  });

  test('are told by k1 0.04 where no surface is stated', () => {
    const plain = { white: reduction(blue, 0, made) };
    expect(messageOf(reduction(blue, 1, { ...made, shift: () => -0.04 }), plain)).toMatch(/excluded/);
  });

  test.each([
    // with a k1 of 0.01 the two modes lie too close together to leave a residual above 0.5
    ['the residual is no cause for doubt', 0.01, 1, { read: [0.4, 0.5], corrected: [0, 0.001] }],
    // a trial that lacks only 0.7 k1 fits better with k1 added, but not four times
    ['k1 makes the fit less than four times better', 0.04, 0.7, { read: [1, 1.5], corrected: [1 / 3, 0.5] }],
  ])('are not where %s', (_, external, share, { read, corrected }) => {
    const surface = { ...PAINT_SURFACE, external };
    const more = { surface, white: reduction(blue, 0, { surface }) };
    const shifted = (shift: number) =>
      strengthOf(reduction(blue, 1, { surface }), reduction(blue, 1.2, { surface, shift: () => shift }), more);
    const found = shifted(-share * external);
    expect(noteOf(found, 'specular-modes-differ')).toBeUndefined();
    // that the two cases are what they say; residuals are regression values to about a tenth
    for (const [{ dE2000 }, [least, most]] of [
      [found.residual, read],
      [shifted((1 - share) * external).residual, corrected],
    ] as const) {
      expect(dE2000).toBeGreaterThanOrEqual(least);
      expect(dE2000).toBeLessThan(most);
    }
  });

  test('are not where another shade explains the residual', () => {
    const other = bell(570, 60, 0.8, 0.03);
    const result = strengthOf(reduction(blue, 1, made), reduction(other, 1, made), options);
    expect(result.residual.dE2000).toBeGreaterThan(2);
    expect(noteOf(result, 'specular-modes-differ')).toBeUndefined();
  });
});

describe('the range that the criterion looks at', () => {
  const codes = (start: number, count: number, criterion: StrengthOptions['criterion'] = 'absorption-maximum') => {
    const grid = { start, step: 10, count };
    const made = { grid };
    return strengthOf(reduction(blue, 1, made), reduction(blue, 1.2, made), {
      white: reduction(blue, 0, made),
      criterion,
    }).warnings.map(({ code, path }) => `${code} ${path}`);
  };

  test.each([
    [420, 27, []],
    [430, 26, ['range-cut-short 430 nm to 680 nm']],
    [420, 26, ['range-cut-short 420 nm to 670 nm']],
    [400, 31, []],
  ])('from %d nm, %d readings', (start, count, expected) => {
    expect(codes(start, count)).toEqual(expected);
    expect(codes(start, count, 'kubelka-munk-sum')).toEqual(expected);
  });

  test('is all of the readings for the weighted and the tristimulus criteria', () => {
    expect(codes(440, 24, 'weighted-sum')).toEqual([]);
    expect(codes(440, 24, 'tristimulus-y')).toEqual([]);
  });
});

describe('a result', () => {
  test('carries surface, white and amounts only where they were stated', () => {
    const bare = strengthOf(flat(0.3), flat(0.25));
    for (const field of ['surface', 'amounts', 'interval', 'tristimulus', 'roots']) {
      expect(Object.keys(bare)).not.toContain(field);
    }
    expect(bare).toMatchObject({ whiteSubtracted: false, replicates: { reference: 1, trial: 1 } });
    expect(Object.keys(bare.replicates)).not.toContain('white');
    const full = strengthOf(flat(0.3), flat(0.25), { surface: PAINT_SURFACE, white: [flat(0.9), flat(0.91)] });
    expect(full.surface).toEqual(PAINT_SURFACE);
    expect(full.replicates).toEqual({ reference: 1, trial: 1, white: 2 });
  });

  test('names its wavelength only by the criterion that has one', () => {
    expect(Object.keys(strengthOf(flat(0.3), flat(0.25)))).toContain('wavelength');
    expect(Object.keys(strengthOf(flat(0.3), flat(0.25), { criterion: 'kubelka-munk-sum' }))).not.toContain(
      'wavelength',
    );
  });

  test.each([
    ['X', bell(600, 40, 0.8)],
    ['Y', bell(545, 30, 0.8)],
    ['Z', bell(450, 40, 0.8)],
  ])('by the lowest tristimulus value is by %s where the colorant absorbs there', (name, curve) => {
    const result = strengthOf(reduction(curve, 1), reduction(curve, 1.2), { white, criterion: 'lowest-tristimulus' });
    expect(result.tristimulus).toBe(name);
  });
});

test.each(['repeatability', 'margin'])('an endless %s is refused', (name) => {
  expect(() => strengthOf(flat(0.3), flat(0.25), { [name]: Number.POSITIVE_INFINITY })).toThrow(
    expect.objectContaining({ code: 'invalid-option', path: `options.${name}` }),
  );
});
