import { describe, expect, test } from 'vitest';
import { D65_10 } from '../../../src/colorimetry/index.js';
import { relativeTintingStrength, type StrengthOptions } from '../../../src/strength/index.js';
import { intervalFromReplicates } from '../../../src/strength/scatter/strength-interval.js';
import { bell, COLORANTS, type Curve, PAINT_SURFACE, reduction } from '../simulated-reductions.js';

const blue = COLORANTS.blue;
const surface = PAINT_SURFACE;
const weighUps = (...amounts: number[]) => ({
  weighing: amounts.map((amount) => reduction(blue, amount, { surface })),
});
const strengthOf = (reference: readonly number[], trial: readonly number[], options: Partial<StrengthOptions> = {}) =>
  relativeTintingStrength(weighUps(...reference), weighUps(...trial), {
    criterion: 'absorption-maximum',
    viewing: D65_10,
    white: reduction(blue, 0, { surface }),
    surface,
    ...options,
  });
const codes = ({ warnings }: ReturnType<typeof strengthOf>) => warnings.map(({ code }) => code);

describe('from replicates, by hand', () => {
  // Amounts e^(-d), 1, e^d have logarithms of standard deviation d on each side, so the variance of the ratio's logarithm is
  // 2 d²/3 with 4 degrees of freedom, for which t(0.975) = 2.776 (NIST/SEMATECH e-Handbook, 1.3.6.7.2).
  const d = 0.01;
  const three = [Math.exp(-d), 1, Math.exp(d)];
  const { percent, interval } = strengthOf(
    three,
    three.map((amount) => 1.1 * amount),
  );

  test('the figure, its standard deviation and its degrees of freedom', () => {
    expect(percent).toBeCloseTo(110, 2);
    expect(interval?.degreesOfFreedom).toBeCloseTo(4, 3);
    expect((interval?.standardDeviation ?? 0) / (110 * d * Math.sqrt(2 / 3))).toBeCloseTo(1, 3);
    expect(interval).toMatchObject({ level: 0.95, basis: 'replicates' });
  });

  test('the interval, even in the logarithm', () => {
    const reach = 2.776 * d * Math.sqrt(2 / 3);
    expect(interval?.low).toBeCloseTo(110 * Math.exp(-reach), 2);
    expect(interval?.high).toBeCloseTo(110 * Math.exp(reach), 2);
  });

  test('uneven scatter has fewer degrees of freedom, by Welch and Satterthwaite', () => {
    const wide = [Math.exp(-3 * d), 1, Math.exp(3 * d)];
    // (1 + 9)² / (1/2 + 81/2) = 2.439
    expect(strengthOf(three, wide).interval?.degreesOfFreedom).toBeCloseTo(2.439, 2);
  });

  test('a white read several times adds its own share', () => {
    const whites = [0.002, 0.003, 0.004].map((amount) => reduction(blue, amount, { surface }));
    const mean = reduction(blue, 0.003, { surface });
    // The white matters where the sides hold different amounts.
    const half = three.map((amount) => 0.5 * amount);
    const repeated = strengthOf(three, half, { white: { weighing: whites } }).interval?.standardDeviation ?? 0;
    expect(repeated).toBeGreaterThan(strengthOf(three, half, { white: mean }).interval?.standardDeviation ?? 0);
  });

  test('one side read once is taken to scatter as the other does, which is said', () => {
    const result = strengthOf(three, [1.1]);
    expect(result.interval?.degreesOfFreedom).toBeCloseTo(2, 10);
    expect((result.interval?.standardDeviation ?? 0) / (110 * d * Math.sqrt(4 / 3))).toBeCloseTo(1, 3);
    expect(result.warnings).toContainEqual(expect.objectContaining({ code: 'scatter-borrowed', path: 'trial' }));
    expect(strengthOf([1], three).warnings).toContainEqual(
      expect.objectContaining({ code: 'scatter-borrowed', path: 'reference' }),
    );
  });

  test('every reading is looked at where the means are, though its own maximum lies elsewhere', () => {
    const curve =
      (at430: number, at610: number): Curve =>
      (wavelength) =>
        bell(430, 30, at430)(wavelength) + bell(610, 30, at610)(wavelength);
    const one = (at430: number, at610: number) => reduction(curve(at430, at610), 1, { white: () => 0 });
    const { wavelength, ...result } = relativeTintingStrength(
      { weighing: [one(0.5, 1), one(0.95, 0.9)] },
      { weighing: [one(0.5, 1), one(0.5, 1)] },
      { criterion: 'absorption-maximum', viewing: D65_10, surface: 'none' },
    );
    expect(wavelength).toBe(610);
    // two logarithms ln 1 and ln 0.9 apart: their variance is ln² 0.9 / 2, that of their mean half of it
    expect((result.interval?.standardDeviation ?? 0) / result.percent).toBeCloseTo(-Math.log(0.9) / 2, 9);
  });

  test('amounts scale figure and interval alike', () => {
    const amounts = { reference: { colorant: 1, white: 10 }, trial: { colorant: 2, white: 10 } };
    const scaled = strengthOf(
      three,
      three.map((amount) => 1.1 * amount),
      { amounts },
    );
    expect(scaled.percent).toBeCloseTo(percent / 2, 10);
    expect(scaled.interval?.low).toBeCloseTo((interval?.low ?? 0) / 2, 10);
  });

  test('copied readings show no scatter', () => {
    const result = strengthOf([1, 1, 1], [1.1, 1.1, 1.1]);
    expect(result).not.toHaveProperty('interval');
    expect(result.finding).toBe('undecided');
    expect(codes(result)).toEqual(['replicates-identical', 'replicates-identical']);
  });

  test('a reading without a strength of its own leaves no interval, and says so', () => {
    const result = strengthOf([1, 1.01, 1], [2, 0]);
    expect(result).not.toHaveProperty('interval');
    expect(codes(result)).toContain('no-interval');
  });

  test.each([
    ['absorption-maximum', 'reference at 610 nm'],
    ['kubelka-munk-sum', 'weighted sum of the reference'],
    ['weighted-sum', 'weighted sum of the reference'],
    ['lowest-tristimulus', 'X of the reference'],
    ['tristimulus-y', 'Y of the reference'],
  ] as const)('%s: where the white was read among the references, that is named', (criterion, path) => {
    const perfect = (amount: number) => reduction(blue, amount, { white: () => 0 });
    const { warnings } = relativeTintingStrength(
      { weighing: [perfect(1), perfect(0)] },
      { weighing: [perfect(0.5), perfect(0.6)] },
      {
        criterion,
        viewing: D65_10,
        surface: 'none',
        white: perfect(0),
      },
    );
    expect(warnings).toContainEqual(expect.objectContaining({ code: 'no-interval', path }));
  });
});

describe('from a stated repeatability', () => {
  test('with the normal quantile 1.960', () => {
    const { interval, warnings } = strengthOf([1], [1.1], { repeatability: 1 });
    expect(warnings).toEqual([]);
    const reach = 1.959964 * 0.01 * Math.SQRT2;
    expect(interval?.low).toBeCloseTo(110 * Math.exp(-reach), 5);
    expect(interval?.high).toBeCloseTo(110 * Math.exp(reach), 5);
    expect(interval).toMatchObject({ basis: 'repeatability' });
    expect(interval).not.toHaveProperty('degreesOfFreedom');
  });

  test('counts the readings of a side that has several', () => {
    const { interval } = strengthOf([1, 1.01, 1, 0.99], [1.1], { repeatability: 1 });
    expect(interval?.standardDeviation).toBeCloseTo(110 * 0.01 * Math.sqrt(1.25), 2);
    expect(interval?.basis).toBe('repeatability');
  });

  test('replicates on both sides say more and are used', () => {
    expect(strengthOf([1, 1.02], [1.1, 1.12], { repeatability: 1 }).interval?.basis).toBe('replicates');
  });
});

describe('finding', () => {
  const single = (strength: number, margin?: number) =>
    strengthOf([1], [strength], { repeatability: 1, margin }).finding;

  // Two readings with 1 % each: the interval reaches 2.8 % to either side.
  test.each([
    [1.1, undefined, 'stronger'],
    [0.9, undefined, 'weaker'],
    [1.01, undefined, 'undecided'],
    [1.01, 2, 'undecided'],
    [1.01, 5, 'equal-within-margin'],
    [1.04, 10, 'equal-within-margin'],
    [1.04, 5, 'stronger'],
    [0.96, 5, 'weaker'],
  ] as const)('strength %d with a margin of %s: %s', (strength, margin, finding) => {
    expect(single(strength, margin)).toBe(finding);
  });

  test('nothing is found without scatter', () => {
    expect(strengthOf([1], [1.5], { margin: 5 })).toMatchObject({ finding: 'undecided' });
    expect(strengthOf([1], [1.5])).not.toHaveProperty('interval');
  });

  test('the scatter of the white alone says nothing of reference and trial', () => {
    const whites = [0.002, 0.003, 0.004].map((amount) => reduction(blue, amount, { surface }));
    const result = strengthOf([1], [1.5], { white: { weighing: whites } });
    expect(result).not.toHaveProperty('interval');
    expect(result).toMatchObject({ finding: 'undecided', warnings: [] });
  });
});

describe('the variance of a strength', () => {
  const deviation = (sides: Parameters<typeof intervalFromReplicates>[1]) =>
    intervalFromReplicates(100, sides)?.standardDeviation;
  // two logarithms ±0.01 have the variance 2e-4
  const two = [-0.01, 0.01];

  test('adds the variances of the means: 2e-4 / 2 each', () => {
    expect(deviation({ reference: two, trial: two, white: [0] })).toBeCloseTo(100 * Math.sqrt(2e-4), 10);
    expect(deviation({ reference: two, trial: two, white: two })).toBeCloseTo(100 * Math.sqrt(3e-4), 10);
  });

  test('lends one side’s scatter to a single reading of the other, either way: 2e-4 / 2 + 2e-4', () => {
    expect(deviation({ reference: two, trial: [0], white: [0] })).toBeCloseTo(100 * Math.sqrt(3e-4), 10);
    expect(deviation({ reference: [0], trial: two, white: [0] })).toBeCloseTo(100 * Math.sqrt(3e-4), 10);
  });
});
