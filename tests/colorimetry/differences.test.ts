import { diff } from 'color-diff';
import { converter, differenceCie94, differenceCiede2000, differenceCmc } from 'culori';
import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import {
  colourDifference,
  deltaE94,
  deltaE99o,
  deltaE2000,
  deltaEab,
  deltaECmc,
  type Lab,
} from '../../src/colorimetry/index.js';
import { exactCmc, exactE94, exactE99o, exactE2000 } from './exact-differences.js';
import { randomNumbers } from './random-numbers.js';

const SEED = 20001;
const random = randomNumbers(SEED);
const between = (low: number, high: number) => low + (high - low) * random();
const colour = (): Lab => ({ L: between(0, 100), a: between(-100, 100), b: between(-100, 100) });
const near = ({ L, a, b }: Lab, by: number): Lab => ({
  L: L + between(-by, by),
  a: a + between(-by, by),
  b: b + between(-by, by),
});
const atHue = (L: number, C: number, h: number): Lab => ({
  L,
  a: C * Math.cos((h * Math.PI) / 180),
  b: C * Math.sin((h * Math.PI) / 180),
});
const pairs = (count: number, make: () => readonly [Lab, Lab]) => Array.from({ length: count }, make);

const KINDS = {
  random: pairs(60, () => [colour(), colour()]),
  close: pairs(60, () => {
    const reference = colour();
    return [reference, near(reference, 2)];
  }),
  'near-neutral': pairs(60, () => {
    const reference = { L: between(0, 100), a: between(-0.5, 0.5), b: between(-0.5, 0.5) };
    return [reference, near(reference, 0.5)];
  }),
  neutral: pairs(20, () => [
    { L: between(0, 100), a: 0, b: 0 },
    { L: between(0, 100), a: between(-5, 5), b: between(-5, 5) },
  ]),
  'either side of hue 0': pairs(60, () => [
    atHue(between(20, 80), between(5, 80), between(345, 360)),
    atHue(between(20, 80), between(5, 80), between(0, 15)),
  ]),
  'nearly opposite': pairs(60, () => {
    const h = between(0, 360);
    return [atHue(50, between(1, 60), h), atHue(55, between(1, 60), h + 180 + between(-0.5, 0.5))];
  }),
  blue: pairs(60, () => {
    const reference = atHue(between(20, 60), between(20, 100), between(255, 295));
    return [reference, near(reference, 5)];
  }),
};

const FORMULAS = {
  deltaE2000: [deltaE2000, exactE2000],
  'deltaE2000, kL 2, kC 1.5, kH 0.7': [
    (r: Lab, s: Lab) => deltaE2000(r, s, { kL: 2, kC: 1.5, kH: 0.7 }),
    (r: Lab, s: Lab) => exactE2000(r, s, 2, 1.5, 0.7),
  ],
  deltaE94: [deltaE94, (r: Lab, s: Lab) => exactE94(r, s, 1, 0.045, 0.015)],
  'deltaE94, textiles': [
    (r: Lab, s: Lab) => deltaE94(r, s, { application: 'textiles' }),
    (r: Lab, s: Lab) => exactE94(r, s, 2, 0.048, 0.014),
  ],
  'deltaECmc (2:1)': [deltaECmc, (r: Lab, s: Lab) => exactCmc(r, s, 2, 1)],
  'deltaECmc (1:1)': [(r: Lab, s: Lab) => deltaECmc(r, s, { l: 1, c: 1 }), (r: Lab, s: Lab) => exactCmc(r, s, 1, 1)],
  deltaE99o: [deltaE99o, exactE99o],
} as const;

describe.each(Object.entries(FORMULAS))('%s against 40-digit arithmetic', (_, [ours, exact]) => {
  test.each(Object.entries(KINDS))('%s pairs', (_kind, list) => {
    for (const [reference, sample] of list) {
      const message = JSON.stringify([reference, sample]);
      expect(Math.abs(ours(reference, sample) - exact(reference, sample)), message).toBeLessThan(1e-9);
    }
  });
});

describe('against general-purpose libraries', () => {
  const lab65 = ({ L, a, b }: Lab) => ({ mode: 'lab65' as const, l: L, a, b });

  test(`deltaE2000 on 10,000 pairs (seed ${SEED})`, () => {
    const culori = differenceCiede2000();
    for (let i = 0; i < 10_000; i++) {
      const reference = colour();
      const sample = i % 2 ? colour() : near(reference, 3);
      const ours = deltaE2000(reference, sample);
      if (Math.abs(ours - culori(lab65(reference), lab65(sample))) > 1e-9)
        expect.fail(JSON.stringify([reference, sample]));
      if (Math.abs(ours - diff(reference, sample)) > 1e-9) expect.fail(JSON.stringify([reference, sample]));
    }
  });

  test('deltaE94 and deltaECmc equal culori', () => {
    const [cie94, cmc] = [differenceCie94(), differenceCmc(2, 1)];
    for (const [reference, sample] of [...KINDS.random, ...KINDS.close, ...KINDS.blue]) {
      expect(deltaE94(reference, sample)).toBeCloseTo(cie94(lab65(reference), lab65(sample)), 9);
      expect(deltaECmc(reference, sample)).toBeCloseTo(cmc(lab65(reference), lab65(sample)), 9);
    }
  });

  test('deltaE99o is the distance in culori’s DIN99o space', () => {
    const dlab = converter('dlab');
    for (const [reference, sample] of [...KINDS.random, ...KINDS.close, ...KINDS['near-neutral']]) {
      const [r, s] = [dlab(lab65(reference)), dlab(lab65(sample))];
      const theirs = Math.hypot(s.l - r.l, s.a - r.a, s.b - r.b);
      // They take 100 / ln 1.39 = 303.67107 where the standard prints 303.67: a part in 280,000 of the lightness term.
      expect(Math.abs(deltaE99o(reference, sample) - theirs)).toBeLessThan(4e-6 * theirs + 1e-9);
    }
  });
});

describe('CIEDE2000 at its discontinuities', () => {
  // Sharma et al. take half the sum of the two hue angles, each from 0 to 360 degrees.
  test.each([0, 30, 90, 137, 180, 211, 270, 315])('hues %d degrees and its opposite, both orders alike', (h) => {
    const halfSum = h < 180 ? h + 90 : h - 90;
    for (const [C1, C2] of [
      [10, 10],
      [10, 30],
      [3, 0.1],
    ]) {
      // Rounded, so that 180 degrees is on the axis and not a hair below it, where half the sum is 270 degrees and not 90.
      const [a, b] = [atHue(50, 1, h).a, atHue(50, 1, h).b].map((value) => Math.round(1e12 * value) / 1e12);
      const reference = { L: 50, a: C1 * a, b: C1 * b };
      const sample = { L: 52, a: -C2 * a, b: -C2 * b };
      const difference = deltaE2000(reference, sample);
      expect(deltaE2000(sample, reference)).toBe(difference);
      // A hair to the side where the two angles are less than 180 degrees apart, and half their sum is beyond doubt.
      const aside = { L: 52, ...atHueOf(sample, h < 180 ? -1e-9 : 1e-9) };
      expect(Math.abs(deltaE2000(reference, aside) - difference), `mean hue ${halfSum}`).toBeLessThan(1e-7);
    }
  });

  function atHueOf({ a, b }: Lab, turn: number) {
    return { a: a * Math.cos(turn) - b * Math.sin(turn), b: a * Math.sin(turn) + b * Math.cos(turn) };
  }

  test('a pair scaled exactly through the neutral point is ruled as the published one on the tie', () => {
    // Pair 10 of Sharma et al. lies on the tie, pair 9 on the same side, pairs 11 and 12 on the other.
    const reference = { L: 50, a: 2.49, b: -0.001 };
    expect(deltaE2000(reference, { L: 50, a: -2.49, b: 0.001 })).toBeCloseTo(7.1792, 4);
    const scaled = deltaE2000(reference, { L: 50, a: -2.49 * 3, b: 0.001 * 3 });
    expect(scaled).toBeCloseTo(exactE2000(reference, { L: 50, a: -7.47, b: 0.0029999 }), 4);
    expect(Math.abs(scaled - exactE2000(reference, { L: 50, a: -7.47, b: 0.0030001 }))).toBeGreaterThan(0.01);
  });

  // The rotation term takes h - 275 degrees as it is: from 360 degrees that is 85, from 0 it is -275, and nothing is left of it.
  test('a mean hue of exactly 0 is 0 and not 360 degrees', () => {
    const reference = { L: 50, a: 50, b: 5 };
    const to = (b: number) => deltaE2000(reference, { L: 50, a: 100, b });
    expect(Math.abs(to(-10) - to(-10 + 1e-9))).toBeLessThan(1e-7);
    expect(Math.abs(to(-10) - to(-10 - 1e-9))).toBeGreaterThan(1e-5);
  });

  test('a mean hue of 275 degrees, the middle of the blue, is no fault, however its cosine is rounded', () => {
    for (let C = 1; C <= 100; C++) {
      const b = C * Math.sin((275 * Math.PI) / 180);
      let a = 0;
      // a* such that the stretched a' has the hue; two or three rounds would do.
      for (let round = 0; round < 20; round++) {
        const ratio = Math.hypot(a, b) ** 7 / (Math.hypot(a, b) ** 7 + 25 ** 7);
        a = (C * Math.cos((275 * Math.PI) / 180)) / (1.5 - 0.5 * Math.sqrt(ratio));
      }
      // S_L is 1 at a mean lightness of 50.
      expect(deltaE2000({ L: 49, a, b }, { L: 51, a, b })).toBeCloseTo(2, 12);
    }
  });

  test('equal colours, black and neutrals', () => {
    const neutral = { L: 0, a: 0, b: 0 };
    expect(deltaE2000(neutral, neutral)).toBe(0);
    expect(deltaE2000({ L: 40, a: 0, b: 0 }, { L: 40, a: 0, b: 1e-300 })).toBe(0);
    expect(deltaE2000({ L: 50, a: 1e-60, b: 0 }, { L: 50, a: -1e-60, b: 0 })).toBeLessThan(1e-50);
  });
});

describe('all formulas', () => {
  const labs = fc.record({
    L: fc.double({ min: 0, max: 100, noNaN: true }),
    a: fc.double({ min: -128, max: 128, noNaN: true }),
    b: fc.double({ min: -128, max: 128, noNaN: true }),
  });
  const SYMMETRIC = { deltaEab, deltaE2000, deltaE99o };
  const ALL = { ...SYMMETRIC, deltaE94, deltaECmc };

  test.each(Object.entries(ALL))('%s is 0 for equal colours and never negative or NaN (seed 20002)', (_, formula) => {
    fc.assert(
      fc.property(
        labs,
        labs,
        (reference, sample) => formula(reference, reference) === 0 && formula(reference, sample) >= 0,
      ),
      { seed: 20002 },
    );
  });

  test.each(Object.entries(SYMMETRIC))('%s is the same in both orders, to the bit (seed 20003)', (_, formula) => {
    fc.assert(
      fc.property(labs, labs, (reference, sample) => formula(reference, sample) === formula(sample, reference)),
      { seed: 20003 },
    );
  });

  test.each([
    ['deltaE94', deltaE94],
    ['deltaECmc', deltaECmc],
  ] as const)('%s depends on which colour is the reference', (_, formula) => {
    const [grey, red] = [
      { L: 50, a: 5, b: 0 },
      { L: 50, a: 20, b: 0 },
    ];
    expect(formula(grey, red)).toBeGreaterThan(formula(red, grey));
  });

  test.each(Object.entries({ ...ALL, colourDifference }))('%s refuses what is no finite number', (_, formula) => {
    const good = { L: 50, a: 1, b: 1 };
    for (const bad of [Number.NaN, Infinity, undefined as unknown as number]) {
      for (const axis of ['L', 'a', 'b']) {
        const lab = { ...good, [axis]: bad };
        expect(() => formula(lab, good)).toThrow(
          expect.objectContaining({ code: 'not-finite', path: `reference.${axis}` }),
        );
        expect(() => formula(good, lab)).toThrow(
          expect.objectContaining({ code: 'not-finite', path: `sample.${axis}` }),
        );
      }
    }
  });

  test('options are checked', () => {
    const lab = { L: 50, a: 1, b: 1 };
    const code = 'invalid-option';
    for (const k of [0, -1, Number.NaN, Infinity]) {
      expect(() => deltaE2000(lab, lab, { kC: k })).toThrow(expect.objectContaining({ code, path: 'options.kC' }));
      expect(() => deltaECmc(lab, lab, { l: k })).toThrow(expect.objectContaining({ code, path: 'options.l' }));
    }
    expect(() => deltaE94(lab, lab, { application: 'paint' as 'textiles' })).toThrow(
      expect.objectContaining({ code, path: 'options.application' }),
    );
  });

  const grey = (L: number) => ({ L, a: 0, b: 0 });

  test.each([-300, -1 / 0.0039])('a lightness of %d, beyond the reach of the DIN99o logarithm, is refused', (L) => {
    for (const [path, call] of [
      ['sample.L', () => deltaE99o(grey(50), grey(L))],
      ['reference.L', () => deltaE99o(grey(L), grey(50))],
    ] as const)
      expect(call).toThrow(expect.objectContaining({ code: 'out-of-range', path }));
  });

  test('a lightness below 0 but within it is not', () => {
    expect(deltaE99o(grey(0), grey(-10))).toBeCloseTo(-303.67 * Math.log(1 - 0.039), 10);
  });

  // ISO 105-J03: SL = 0.511 for L* < 16, else 0.040975 L* / (1 + 0.01765 L*). The two don't quite meet.
  test.each([
    [15.999, 0.511],
    [16, (0.040975 * 16) / (1 + 0.01765 * 16)],
  ])('CMC at L* %d divides by %d', (L, SL) => {
    expect(deltaECmc(grey(L), grey(L + 1), { l: 1 })).toBeCloseTo(1 / SL, 10);
  });
});

describe('colourDifference', () => {
  test('has parts that add up: ΔE*ab² = ΔL² + Δa² + Δb² = ΔL² + ΔC² + ΔH² (seed 20004)', () => {
    const labs = fc.record({
      L: fc.double({ min: 0, max: 100, noNaN: true }),
      a: fc.double({ min: -128, max: 128, noNaN: true }),
      b: fc.double({ min: -128, max: 128, noNaN: true }),
    });
    fc.assert(
      fc.property(labs, labs, (reference, sample) => {
        const { dL, da, db, dC, dH, dEab } = colourDifference(reference, sample);
        expect(Math.hypot(dL, da, db)).toBeCloseTo(dEab, 9);
        expect(Math.hypot(dL, dC, dH)).toBeCloseTo(dEab, 9);
      }),
      { seed: 20004 },
    );
  });

  test('ΔH*ab has the sign of the hue change, the short way round', () => {
    expect(colourDifference(atHue(50, 20, 350), atHue(50, 20, 10)).dH).toBeCloseTo(40 * Math.sin(Math.PI / 18), 12);
    expect(colourDifference(atHue(50, 20, 10), atHue(50, 20, 350)).dH).toBeCloseTo(-40 * Math.sin(Math.PI / 18), 12);
    expect(colourDifference({ L: 50, a: 0, b: 0 }, atHue(50, 20, 350)).dH).toBe(0);
  });

  test('at 180 degrees the order of the angles decides the sign', () => {
    const [red, green] = [
      { L: 50, a: 10, b: 0 },
      { L: 50, a: -10, b: 0 },
    ];
    expect(colourDifference(red, green).dH).toBe(20);
    expect(colourDifference(green, red).dH).toBe(-20);
  });
});
