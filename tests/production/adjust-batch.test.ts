import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { type AdjustBatchOptions, adjustBatch, type KnownStrength } from '../../src/production/index.js';

const colorant = { kind: 'colorant', mass: 500, correction: 'vehicle' } as const;
const paint = { kind: 'paint', mass: 1000, colorantShare: 4 } as const;

describe('the mass to add, against a balance by hand', () => {
  test.each<[string, number, AdjustBatchOptions, number]>([
    // 500 kg of 104 % hold the colour of 520 kg of 100 %
    ['vehicle', 104, colorant, 20],
    // (500 x 104 + 200 x 94) / 700 would be 101.1; 500 x 4 / 6 = 333.3 kg bring it to 100
    ['a weak batch', 104, { ...colorant, correction: 'weak-batch', added: { percent: 94 } }, 1000 / 3],
    ['a strong batch', 96, { ...colorant, correction: 'strong-batch', added: { percent: 110 } }, 200],
    ['mill base', 95, { kind: 'colorant', mass: 400, correction: 'mill-base', added: { percent: 140 } }, 50],
    // 960 kg of base in 1000 kg of paint: 5 % more of them
    ['white base', 105, { ...paint, correction: 'white-base' }, 48],
    // 40 kg of colorant count as 38: 2 are missing
    ['colorant', 95, { ...paint, correction: 'colorant' }, 2],
    ['colorant of another strength', 95, { ...paint, correction: 'colorant', added: { percent: 125 } }, 1.6],
  ])('%s', (_, percent, options, kilograms) => {
    const { addition, massAfter, expected } = adjustBatch({ percent }, options);
    expect(addition).toBeCloseTo(kilograms, 10);
    expect(massAfter).toBeCloseTo(options.mass + kilograms, 10);
    expect(expected.percent).toBeCloseTo(100, 10);
  });
});

describe('scale and vessel', () => {
  test('the addition is a whole number of steps of the scale, and the strength expected is that of it', () => {
    const { addition, exactAddition, expected } = adjustBatch({ percent: 103.3 }, { ...colorant, scaleStep: 0.5 });
    expect([addition, exactAddition]).toEqual([16.5, expect.closeTo(16.5, 10)]);
    expect(adjustBatch({ percent: 103.33 }, { ...colorant, scaleStep: 2 }).addition).toBe(16);
    expect(expected.percent).toBeCloseTo(100, 10);
  });

  test('no more is added than the vessel holds, rounded down, and the rest is said', () => {
    const { addition, expected, warnings } = adjustBatch({ percent: 110 }, { ...colorant, largest: 25, scaleStep: 2 });
    expect(addition).toBe(24);
    expect(expected.percent).toBeCloseTo((500 * 110) / 524, 10);
    expect(warnings).toContainEqual(
      expect.objectContaining({ code: 'adjustment-limited', figures: expect.objectContaining({ largest: 25 }) }),
    );
  });
});

describe('what is said beside the figure', () => {
  const codes = (strength: KnownStrength, options: Partial<AdjustBatchOptions> = {}) =>
    adjustBatch(strength, { ...colorant, ...options }).warnings.map(({ code }) => code);

  test('an interval that holds 100 % proves no need', () => {
    expect(codes({ percent: 101, interval: { low: 99.8, high: 102.2 } })).toEqual(['adjustment-not-proven']);
    expect(codes({ percent: 103, interval: { low: 101.8, high: 104.2 } })).toEqual([]);
  });

  test('a shade that is off is not mended by strength', () => {
    expect(codes({ percent: 103 }, { residual: { value: 0.9, limit: 0.6 } })).toEqual(['shade-not-strength']);
    expect(codes({ percent: 103 }, { residual: { value: 0.6, limit: 0.6 } })).toEqual([]);
  });

  test('far from 100 % strength is not linear', () => {
    expect(codes({ percent: 121 })).toEqual(['strength-far-from-standard']);
    expect(codes({ percent: 120 })).toEqual([]);
  });

  test('every correction names what else it changes', () => {
    expect(adjustBatch({ percent: 104 }, colorant).changes.join()).toMatch(/viscosity/);
    expect(adjustBatch({ percent: 95 }, { ...paint, correction: 'colorant' }).changes.join()).toMatch(/colorant/);
  });
});

describe('the interval', () => {
  test('is that of the strength, carried through the balance', () => {
    const { interval } = adjustBatch({ percent: 104, interval: { low: 103, high: 105.5 } }, colorant);
    expect(interval).toEqual({ low: expect.closeTo(15, 10), high: expect.closeTo(27.5, 10) });
  });

  test('adds the share of what is added as squares', () => {
    const batch = { percent: 96, interval: { low: 95, high: 97 } };
    const added = { percent: 110, interval: { low: 109, high: 111 } };
    const alone = (one: KnownStrength, other: KnownStrength) =>
      adjustBatch(one, { ...colorant, correction: 'strong-batch', added: other }).interval;
    const both = alone(batch, added);
    const first = alone(batch, { percent: 110 });
    const second = alone({ percent: 96 }, added);
    expect(200 - (both?.low ?? 0)).toBeCloseTo(Math.hypot(200 - (first?.low ?? 0), 200 - (second?.low ?? 0)), 10);
  });

  test('is absent where no strength has one', () => {
    expect(adjustBatch({ percent: 104 }, colorant)).not.toHaveProperty('interval');
  });

  const SEED = 20251126;
  test(`of the strength afterwards shrinks as the batch does (seed ${SEED})`, () => {
    fc.assert(
      fc.property(
        fc.double({ min: 100.5, max: 130, noNaN: true }),
        fc.double({ min: 0.1, max: 3, noNaN: true }),
        (p, w) => {
          const { expected } = adjustBatch({ percent: p, interval: { low: p - w, high: p + w } }, colorant);
          // vehicle brings no uncertainty of its own: the interval is thinned with the batch
          expect(expected.interval?.low).toBeCloseTo((100 * (p - w)) / p, 8);
          expect(expected.interval?.high).toBeCloseTo((100 * (p + w)) / p, 8);
        },
      ),
      { seed: SEED },
    );
  });
});

describe('what is refused', () => {
  const refused = (strength: KnownStrength, options: Partial<AdjustBatchOptions>) => () =>
    adjustBatch(strength, { ...colorant, ...options });
  const fault = (code: string, path: string) => expect.objectContaining({ code, path });

  test.each<[string, KnownStrength, Partial<AdjustBatchOptions>, string, string]>([
    ['vehicle for a weak batch', { percent: 97 }, {}, 'invalid-option', 'options.correction'],
    [
      'vehicle for a paint',
      { percent: 104 },
      { kind: 'paint', colorantShare: 4 },
      'invalid-option',
      'options.correction',
    ],
    ['a strength of vehicle', { percent: 104 }, { added: { percent: 90 } }, 'invalid-option', 'options.added'],
    [
      'a weak batch that is strong',
      { percent: 104 },
      { correction: 'weak-batch', added: { percent: 101 } },
      'out-of-range',
      'options.added.percent',
    ],
    ['a weak batch of unknown strength', { percent: 104 }, { correction: 'weak-batch' }, 'wrong-type', 'options.added'],
    [
      'a paint of unknown composition',
      { percent: 105 },
      { kind: 'paint', correction: 'white-base' },
      'invalid-option',
      'options.colorantShare',
    ],
    ['no mass', { percent: 104 }, { mass: 0 }, 'out-of-range', 'options.mass'],
    ['no strength', { percent: Number.NaN }, {}, 'out-of-range', 'strength.percent'],
    [
      'an interval elsewhere',
      { percent: 104, interval: { low: 105, high: 106 } },
      {},
      'invalid-interval',
      'strength.interval',
    ],
    [
      'a residual without a limit',
      { percent: 104 },
      { residual: { value: 1, limit: 0 } },
      'out-of-range',
      'options.residual.limit',
    ],
    [
      'a negative residual',
      { percent: 104 },
      { residual: { value: -1, limit: 1 } },
      'out-of-range',
      'options.residual.value',
    ],
  ])('%s', (_, strength, options, code, path) => {
    expect(refused(strength, options)).toThrow(fault(code, path));
  });

  test('a misspelt option, with the name that was meant', () => {
    expect(() => adjustBatch({ percent: 104 }, { ...colorant, ...{ scalestep: 1 } })).toThrow(
      expect.objectContaining({ code: 'invalid-option', path: 'options.scalestep' }),
    );
  });
});
