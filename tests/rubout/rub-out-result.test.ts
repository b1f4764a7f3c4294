import { describe, expect, test } from 'vitest';
import { assessRubOut, compareStorage, compatibilityMatrix, D65_10, type Lab } from '../../src/index.js';
import { movementOf } from '../../src/rubout/colorant-changes.js';
import { filmOf, spots, tint, WHITE } from './films.js';

const viewing = D65_10;
const surface = { external: 0.04, internal: 0.6, specular: 'included' } as const;

/** Spots around a colour with a standard deviation of exactly `scatter` in L*, and of nothing in a* and b*. */
const around = (L: number, a: number, b: number, scatter: number): Lab[] =>
  [-1, 0, 1].map((step) => ({ L: L + step * scatter, a, b }));

describe('the result carries what it was found under', () => {
  test('only what was stated', () => {
    const bare = assessRubOut(tint(0.8), tint(1), { viewing });
    for (const field of ['surface', 'colorantChanges', 'whiteChange', 'readingDeviation', 'interval', 'flocculated']) {
      expect(Object.keys(bare).includes(field), field).toBe(field === 'flocculated');
    }
    expect(bare).toMatchObject({ whiteSubtracted: false, replicates: { unrubbed: 1, rubbed: 1 }, readings: 'spectra' });
    expect(Object.keys(assessRubOut(spots(1), spots(1.05), { viewing }).strengthChange ?? {})).toContain('interval');
    expect(Object.keys(bare.strengthChange ?? {})).not.toContain('interval');
  });

  test('white, surface, changes and thresholds as they were given', () => {
    const colorantChanges = [{ name: 'Blue', relative: 0.25 }];
    const whiteChange = { relative: 0.001 };
    const result = assessRubOut(tint(0.8), [tint(1)], {
      viewing,
      white: WHITE,
      colorantChanges,
      whiteChange,
      limit: 2,
      thresholds: { visible: 0.2 },
    });
    expect(result).toMatchObject({
      whiteSubtracted: true,
      colorantChanges,
      whiteChange,
      limit: 2,
      tint: 'single-pigment',
    });
    expect(result.thresholds).toMatchObject({ visible: 0.2, unevenness: 0.4 });
    const bright = filmOf(() => 0.5);
    expect(assessRubOut(bright, bright, { viewing, surface }).surface).toEqual(surface);
  });
});

test('the scatter of an area is the root mean square distance of its spots from their mean, with n - 1', () => {
  // two spots, each (1, 2, 2) and so 3 from their mean: √((9 + 9) / (2 - 1))
  const { evidence } = assessRubOut(
    [
      { L: 60, a: 0, b: 0 },
      { L: 62, a: 4, b: 4 },
    ],
    { L: 50, a: 0, b: 0 },
    { viewing },
  );
  expect(evidence[2].figures).toEqual({ deviation: Math.sqrt(18), spots: 2 });
});

describe('the scatter of one reading', () => {
  test('is that along the difference: a difference of lightness and spots that scatter in lightness by 0.1', () => {
    const { readingDeviation, interval } = assessRubOut(around(60, -8, -34, 0.1), around(58, -8, -34, 0.1), {
      viewing,
    });
    expect(readingDeviation).toBeCloseTo(0.1, 10);
    expect(interval?.degreesOfFreedom).toBe(4);
    // Student's t at 4 degrees of freedom is 2.776 (any table); times 0.1 √(2/3)
    expect(interval?.dEab.low).toBeCloseTo(2 - 2.776 * 0.1 * Math.sqrt(2 / 3), 2);
    expect(interval?.dEab.high).toBeCloseTo(2 + 2.776 * 0.1 * Math.sqrt(2 / 3), 2);
  });

  test('is nothing where the spots scatter across the difference only', () => {
    expect(assessRubOut(around(60, -8, -34, 0.1), around(60, -6, -34, 0.1), { viewing }).readingDeviation).toBe(0);
  });

  test('pools both areas: variances 0.01 and 0.04 make 0.025', () => {
    const { readingDeviation } = assessRubOut(around(60, 0, 0, 0.1), around(58, 0, 0, 0.2), { viewing });
    expect(readingDeviation).toBeCloseTo(Math.sqrt(0.025), 10);
  });

  test('has no direction where there is no difference: a third of the whole variance', () => {
    const { readingDeviation } = assessRubOut(around(60, 0, 0, 0.3), around(60, 0, 0, 0.3), { viewing });
    expect(readingDeviation).toBeCloseTo(Math.sqrt(0.09 / 3), 10);
    // the same noise in a* and b*, whose variances are 0.01 and 0.04
    const noisy = [-1, 0, 1].map((step) => ({ L: 60 + step * 0.3, a: step * 0.1, b: step * 0.2 }));
    expect(assessRubOut(noisy, noisy, { viewing }).readingDeviation).toBeCloseTo(Math.sqrt(0.14 / 3), 10);
  });

  test('mixes the directions by their products: a slanted scatter and a slanted difference', () => {
    const slanted = (a: number, b: number) =>
      [-1, 0, 1].map((step) => ({ L: 60 + step * 0.1, a: a + step * 0.2, b: b + step * 0.3 }));
    // along (0, 3, 4)/5 the scatter (0.1, 0.2, 0.3) is 0.2 · 3/5 + 0.3 · 4/5
    expect(assessRubOut(slanted(10, 10), slanted(13, 14), { viewing }).readingDeviation).toBeCloseTo(0.36, 10);
  });

  test('is the stated one where a side was read once, though the other has spots', () => {
    const result = assessRubOut(around(60, 0, 0, 0.3), { L: 58, a: 0, b: 0 }, { viewing, repeatability: 0.15 });
    expect(result.readingDeviation).toBe(0.15);
    expect(result.interval).toMatchObject({ basis: 'repeatability' });
    expect(Object.keys(result.interval ?? {})).not.toContain('degreesOfFreedom');
    expect(result.warnings.map(({ code }) => code)).not.toContain('scatter-borrowed');
  });

  test('is that of the spots where both sides have them, whatever is stated', () => {
    const result = assessRubOut(around(60, 0, 0, 0.3), around(58, 0, 0, 0.3), { viewing, repeatability: 0.01 });
    expect(result.interval?.basis).toBe('replicates');
    expect(result.readingDeviation).toBeCloseTo(0.3, 10);
  });

  test('is borrowed from the side that has spots, whichever it is', () => {
    const one = { L: 58, a: 0, b: 0 };
    const places = (result: ReturnType<typeof assessRubOut>) =>
      result.warnings.filter(({ code }) => code === 'scatter-borrowed').map(({ path }) => path);
    expect(places(assessRubOut(around(60, 0, 0, 0.1), one, { viewing }))).toEqual(['rubbed']);
    expect(places(assessRubOut(one, around(60, 0, 0, 0.1), { viewing }))).toEqual(['unrubbed']);
    expect(places(assessRubOut(around(60, 0, 0, 0.1), around(58, 0, 0, 0.1), { viewing }))).toEqual([]);
  });

  test('is not shown by copied readings, not even by the rounding of their mean, but is as it was stated', () => {
    const copied = (L: number) => [1, 2, 3].map(() => ({ L, a: 0.1, b: -34 }));
    expect((0.1 + 0.1 + 0.1) / 3).not.toBe(0.1);
    const bare = assessRubOut(copied(60), copied(58), { viewing });
    expect(Object.keys(bare)).not.toContain('readingDeviation');
    expect(bare.interval).toBeUndefined();
    expect(bare.warnings.map(({ code }) => code)).toEqual(['replicates-identical', 'replicates-identical']);
    const stated = assessRubOut(copied(60), copied(58), { viewing, repeatability: 0.1 });
    expect(stated).toMatchObject({ readingDeviation: 0.1, interval: { basis: 'repeatability' } });
  });

  test('of an area with copied readings is noted at that area only', () => {
    const copied = [tint(1), tint(1)];
    const noted = ({ warnings }: ReturnType<typeof assessRubOut>) =>
      warnings.map(({ code, path }) => `${code} ${path}`);
    expect(noted(assessRubOut(copied, spots(0.9), { viewing }))).toEqual(['replicates-identical unrubbed']);
    expect(noted(assessRubOut(spots(0.9), copied, { viewing }))).toEqual(['replicates-identical rubbed']);
    expect(noted(assessRubOut(tint(1), tint(0.9), { viewing }))).toEqual([]);
    expect(noted(assessRubOut(spots(1), spots(0.9), { viewing }))).toEqual([]);
  });
});

describe('the interval of ΔE00', () => {
  test('of a difference in lightness at L* 50 and C* 0 is that of ΔE*ab, since S_L is 1 there (ISO/CIE 11664-6)', () => {
    const { interval } = assessRubOut(around(51, 0, 0, 0.1), around(49, 0, 0, 0.1), { viewing });
    expect(interval?.dE2000.low).toBeCloseTo(interval?.dEab.low ?? 0, 2);
    expect(interval?.dE2000.high).toBeCloseTo(interval?.dEab.high ?? 0, 2);
  });

  test('of a difference in chroma at C* 40 is narrower by about S_C = 1 + 0.045 C* (ISO/CIE 11664-6)', () => {
    // b* at L* 50 is not rescaled, and no other term acts on chroma alone
    const spotsOf = (b: number) => [-0.1, 0, 0.1].map((step) => ({ L: 50, a: 0, b: b + step }));
    const { interval, difference } = assessRubOut(spotsOf(41), spotsOf(39), { viewing });
    const reach = (interval?.dEab.high ?? 0) - difference.dEab;
    expect((interval?.dE2000.high ?? 0) - difference.dE2000).toBeCloseTo(reach / (1 + 0.045 * 40), 2);
    expect(difference.dE2000 - (interval?.dE2000.low ?? 0)).toBeCloseTo(reach / (1 + 0.045 * 40), 2);
  });

  test('from a stated repeatability scales in the same way', () => {
    const at = (b: number) => ({ L: 50, a: 0, b });
    const { interval, difference } = assessRubOut(at(45), at(35), { viewing, repeatability: 0.1 });
    const reach = 1.96 * Math.SQRT2 * 0.1;
    expect((interval?.dE2000.high ?? 0) - difference.dE2000).toBeCloseTo(reach / (1 + 0.045 * 40), 2);
  });

  test.each<[string, Lab, Lab, number]>([
    ['lightness at L* 30, by S_L', { L: 30, a: 0, b: 0 }, { L: 0.1, a: 0, b: 0 }, 1 + (0.015 * 400) / Math.sqrt(420)],
    ['chroma at b* 40, by S_C', { L: 50, a: 0, b: 40 }, { L: 0, a: 0, b: 0.1 }, 1 + 0.045 * 40],
    ['chroma at a* 80, by S_C', { L: 50, a: 80, b: 0 }, { L: 0, a: 0.1, b: 0 }, 1 + 0.045 * 80],
  ])('of noise in %s alone is narrower by that factor where there is no difference (ISO/CIE 11664-6)', (...row) => {
    const [, at, step, narrower] = row;
    const area = [-1, 0, 1].map((i) => ({ L: at.L + i * step.L, a: at.a + i * step.a, b: at.b + i * step.b }));
    const { interval } = assessRubOut(area, area, { viewing });
    // at a* 80 the rescaling of a*, G = 7e-5 and its slope, is all that is left: below 1 in 1000
    const found = (interval?.dEab.high ?? 0) / (interval?.dE2000.high ?? 0);
    expect(Math.abs(found / narrower - 1)).toBeLessThan(0.001);
  });

  test('lies around ΔE00 itself over a long way, where no space is even', () => {
    const { interval, difference } = assessRubOut(
      { L: 40, a: 40, b: 0 },
      { L: 60, a: 0, b: 30 },
      { viewing, repeatability: 0.1 },
    );
    // at hundreds of standard deviations both ends are equally far: the interval is Student's, and so symmetric
    const middle = ((interval?.dE2000.low ?? 0) + (interval?.dE2000.high ?? 0)) / 2;
    expect(middle).toBeCloseTo(difference.dE2000, 2);
  });

  test('of no difference at all still has an upper end', () => {
    const { interval } = assessRubOut(around(50, 0, 0, 0.1), around(50, 0, 0, 0.1), { viewing });
    expect(interval?.dE2000.low).toBe(0);
    expect(interval?.dE2000.high).toBeGreaterThan(0.05);
    expect(interval?.dE2000.high).toBeLessThan(0.5);
  });
});

describe('how sure a diagnosis is', () => {
  test('nothing found, and too little read to rule it out, is not shown', () => {
    const result = assessRubOut(around(60, -8, -34, 0.35), around(60, -8, -34, 0.35), { viewing });
    expect(result).toMatchObject({ diagnosis: 'none', certainty: 'not-shown' });
    expect(result.flocculated).toBeUndefined();
    expect(Object.keys(result)).not.toContain('flocculated');
  });

  test('nothing found without any scatter is not shown either', () => {
    expect(assessRubOut(tint(1), tint(1.001), { viewing })).toMatchObject({
      diagnosis: 'none',
      certainty: 'not-shown',
    });
  });

  test('an uneven film is received, so it is proven, and says nothing of flocculation', () => {
    const result = assessRubOut(around(60, -8, -34, 0.9), around(59.5, -8, -34, 0.1), { viewing });
    expect(result).toMatchObject({ diagnosis: 'uneven-film', certainty: 'proven' });
    expect(result.flocculated).toBeUndefined();
  });

  test('a direction on an uneven film is only indicated', () => {
    const uneven = [0.95, 1, 1.05].map((factor) => tint(0.6 * factor));
    const result = assessRubOut(uneven, spots(1), { viewing });
    expect(result).toMatchObject({ diagnosis: 'coloured-pigment-flocculated', certainty: 'indicated' });
  });

  test('two causes that fit are only indicated, but both of them may be flocculation', () => {
    const result = assessRubOut(spots(0.8, 0.8), spots(1, 1), { viewing, tint: 'several-pigments' });
    expect(result).toMatchObject({ diagnosis: 'coloured-pigment-flocculated', certainty: 'indicated' });
    expect(result.causes).toHaveLength(2);
    // one of the two is separation, so flocculation is open
    expect(result.flocculated).toBeUndefined();
  });

  test('is proven by one spot a side where the repeatability is stated', () => {
    expect(assessRubOut(tint(0.8), tint(1), { viewing, repeatability: 0.1 })).toMatchObject({
      diagnosis: 'coloured-pigment-flocculated',
      certainty: 'proven',
    });
  });

  /** Spots whose K/S at 610 nm, the absorption maximum, is even to 0.2 %, with a band of `more` elsewhere. */
  const banded = (more: (nm: number) => number) =>
    [0.998, 1, 1.002].map((factor) => filmOf((nm) => (nm === 610 ? 2 * factor : 0.2 + more(nm))));

  test('a change beside the absorption maximum alone proves no strength, and so no flocculation', () => {
    // all that is left at equal strength is let pass, so that only the interval of the strength is in the way
    const result = assessRubOut(
      banded(() => 0),
      banded((nm) => (nm < 500 ? 0.05 : 0)),
      { viewing, thresholds: { shadeShare: 2 } },
    );
    expect(result).toMatchObject({ diagnosis: 'coloured-pigment-flocculated', certainty: 'indicated' });
    expect(result.strengthChange?.changePercent).toBeCloseTo(0, 9);
  });

  test('an exchange of pigments needs no strength to be proven', () => {
    const result = assessRubOut(
      banded(() => 0),
      banded((nm) => (nm < 500 ? 0.05 : nm < 600 ? -0.05 : 0)),
      { viewing, tint: 'several-pigments' },
    );
    expect(result).toMatchObject({ diagnosis: 'pigments-separated', certainty: 'proven' });
    expect(result.strengthChange?.changePercent).toBeCloseTo(0, 9);
  });

  test('a film is uneven from the line on, on either side', () => {
    // greys keep their shade, and steps of 0.5 have a scatter of exactly 0.5
    const result = assessRubOut(around(60, 0, 0, 0.5), around(50, 0, 0, 0.5), {
      viewing,
      thresholds: { unevenness: 0.5 },
    });
    expect(result).toMatchObject({ diagnosis: 'coloured-pigment-flocculated', certainty: 'indicated' });
    expect(result.warnings.map(({ code }) => code)).toContain('rubbed-uneven');
  });

  test('a cause that is unknown leaves flocculation open', () => {
    expect(assessRubOut(spots(1, 1), spots(1, 0.7), { viewing }).flocculated).toBeUndefined();
  });
});

describe('a rubbed area whose spots differ', () => {
  const { visible } = assessRubOut(tint(1), tint(1), { viewing }).thresholds;

  test('is noted with the scatter found, and asks for another rub-out', () => {
    const result = assessRubOut(around(60, -8, -34, 0.05), around(56, -8, -34, 0.5), { viewing });
    expect(visible).toBe(0.5);
    expect(result.warnings).toEqual([
      {
        code: 'rubbed-uneven',
        message: 'The spots of the rubbed area lie ΔE*ab 0.50 from their mean: it was rubbed unevenly.',
        path: 'rubbed',
      },
    ]);
    expect(result.next.join(' ')).toMatch(/evenly/);
  });

  test('is not where they lie closer', () => {
    const result = assessRubOut(around(60, -8, -34, 0.05), around(56, -8, -34, 0.39), { viewing });
    expect(result.warnings).toEqual([]);
  });
});

test('spectra decide the direction where both areas have them, not their Lab values', () => {
  // Two pigments exchanged so that X, Y and Z nearly all rise in K/S, while the spectrum moves both ways.
  const before = filmOf((nm) => 0.05 + 0.5 * Math.exp(-(((nm - 610) / 30) ** 2)));
  const after = filmOf((nm) => 0.05 + 0.5 * Math.exp(-(((nm - 600) / 30) ** 2)));
  const result = assessRubOut(before, after, { viewing, tint: 'several-pigments' });
  expect(result.diagnosis).toBe('pigments-separated');
});

test.each(['limit', 'repeatability'])('an endless %s is refused', (name) => {
  expect(() => assessRubOut(tint(1), tint(1), { viewing, [name]: Number.POSITIVE_INFINITY })).toThrow(
    expect.objectContaining({ path: `options.${name}` }),
  );
});

test('a tint that is neither is refused', () => {
  expect(() => assessRubOut(tint(1), tint(1), { viewing, tint: 'many' as 'several-pigments' })).toThrow(
    expect.objectContaining({ code: 'invalid-option', path: 'options.tint' }),
  );
});

describe('a cell of the compatibility matrix', () => {
  const rubOut = assessRubOut(around(60, 0, -20, 0.05), around(59.9, 0, -20, 0.05), { viewing });
  const single = assessRubOut({ L: 60, a: 0, b: -20 }, { L: 59.9, a: 0, b: -20 }, { viewing });
  const cellOf = (test: object, options = {}) =>
    compatibilityMatrix([{ colorant: 'blue', paint: 'acrylic', rubOut, ...test }], options).cells[0];

  test('holds difference, interval and diagnosis, and the strength where one was given', () => {
    expect(cellOf({})).toEqual({
      colorant: 'blue',
      paint: 'acrylic',
      outcome: 'meets',
      dEab: rubOut.difference.dEab,
      interval: rubOut.interval?.dEab,
      diagnosis: 'none',
      certainty: 'proven',
    });
    expect(Object.keys(cellOf({ rubOut: single }))).not.toContain('interval');
    expect(cellOf({ strength: { percent: 97 } })).toMatchObject({ strength: 97, outcome: 'meets' });
  });

  test('judges the strength where it has a limit', () => {
    const limit = { strength: { lower: 95 } };
    const strength = { percent: 97, interval: { low: 96, high: 98 } };
    expect(cellOf({ strength }, limit)).toMatchObject({ strengthOutcome: 'meets', outcome: 'meets' });
    expect(cellOf({ strength: { percent: 97 } }, limit)).toMatchObject({
      strengthOutcome: 'undecided',
      outcome: 'undecided',
    });
    expect(cellOf({}, limit)).toMatchObject({ strengthOutcome: 'undecided', outcome: 'undecided' });
  });
});

test('an even film whose difference is within its scatter shows nothing, however much that is', () => {
  const result = assessRubOut(around(60, -8, -34, 0.39), around(59.3, -8, -34, 0.39), { viewing });
  expect(result.difference.dEab).toBeCloseTo(0.7, 10);
  expect(result.interval?.dEab.low).toBe(0);
  expect(result.diagnosis).toBe('none');
});

test('the interval of the strength change lies around it', () => {
  const { strengthChange } = assessRubOut(spots(0.9), spots(1), { viewing, white: WHITE });
  // The logarithms of the spots scatter by 0.002; Student's t at 4 degrees of freedom is 2.776 (any table).
  const reach = (100 / 0.9) * 2.776 * 0.002 * Math.sqrt(2 / 3);
  expect(strengthChange?.interval?.low).toBeCloseTo(100 / 0.9 - 100 - reach, 2);
  expect(strengthChange?.interval?.high).toBeCloseTo(100 / 0.9 - 100 + reach, 2);
});

test('storage is compared with both diagnoses', () => {
  const fresh = assessRubOut(spots(1), spots(1.001), { viewing });
  const stored = assessRubOut(spots(0.8), spots(1), { viewing });
  expect(compareStorage(fresh, stored).diagnoses).toEqual({ fresh: 'none', stored: 'coloured-pigment-flocculated' });
});

describe('the movement of a colorant', () => {
  const change = (relative: number, low: number, high: number) => ({ name: 'Blue', relative, interval: { low, high } });

  test.each([
    [0.1, 0.001, 0.2, 'more'],
    [0.1, 0, 0.2, 'unmoved'],
    [-0.1, -0.2, 0, 'unmoved'],
    [-0.1, -0.2, -0.001, 'less'],
    [0.1, 0.1, 0.2, 'more'],
    [0.1, 0.05, 0.1, 'more'],
  ])('by %d with an interval from %d to %d is %s', (relative, low, high, movement) => {
    expect(movementOf(change(relative, low, high))).toBe(movement);
  });

  test.each([
    [0.3, 0.1, 0.2],
    [0.05, 0.1, 0.2],
    [0.1, 0, Number.POSITIVE_INFINITY],
    [0.1, Number.NEGATIVE_INFINITY, Number.POSITIVE_INFINITY],
  ])('by %d is refused with an interval from %d to %d', (relative, low, high) => {
    expect(() => movementOf(change(relative, low, high))).toThrow(
      expect.objectContaining({
        code: 'invalid-interval',
        path: 'interval of the change of Blue',
        received: [low, high].map((end) => (Number.isFinite(end) ? end : String(end))),
      }),
    );
  });

  test('that is no number is refused by name', () => {
    expect(() => movementOf({ name: 'Blue', relative: Number.NaN })).toThrow(
      expect.objectContaining({ code: 'not-finite', path: 'change of Blue' }),
    );
  });
});
