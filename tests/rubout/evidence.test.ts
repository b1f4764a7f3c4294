import { describe, expect, test } from 'vitest';
import { evidenceOf, type Findings } from '../../src/rubout/evidence.js';

const interval = (low: number, high: number) => ({
  dEab: { low, high },
  dE2000: { low, high },
  level: 0.95 as const,
  basis: 'replicates' as const,
});
const FINDINGS: Findings = {
  difference: { dL: -1.2, da: 0.3, db: -0.4, dC: 0.5, dH: -0.001, dEab: 1.3, dE2000: 0.9 },
  limit: 1,
  outcome: 'undecided',
  scatter: {},
  replicates: { unrubbed: 1, rubbed: 1 },
  colorantChanges: [],
  reason: 'For this reason.',
};
const said = (findings: Partial<Findings>) =>
  evidenceOf({ ...FINDINGS, ...findings }).map(({ statement }) => statement);
const figures = (findings: Partial<Findings>) => evidenceOf({ ...FINDINGS, ...findings }).map((entry) => entry.figures);

describe('the evidence of a rub-out', () => {
  test('without scatter is the difference, what is not decided, and the reason', () => {
    expect(said({})).toEqual([
      'The rubbed area differs from the unrubbed one by ΔE*ab 1.30 (ΔE00 0.90): ΔL* −1.20, ΔC*ab +0.50, ΔH*ab 0.00.',
      'One reading per side shows no scatter, so it is not decided whether the film meets the limit of ΔE*ab 1.',
      'For this reason.',
    ]);
    expect(figures({})).toEqual([
      { dEab: 1.3, dE2000: 0.9, dL: -1.2, dC: 0.5, dH: -0.001 },
      { dEab: 1.3, limit: 1 },
      {},
    ]);
  });

  test('gives no sign to a part that rounds to zero, from either side', () => {
    const difference = { ...FINDINGS.difference, dL: 0.004, dC: -0.004, dH: 0 };
    expect(said({ difference })[0]).toMatch(/: ΔL\* 0\.00, ΔC\*ab 0\.00, ΔH\*ab 0\.00\.$/);
  });

  test('has the interval beside the difference', () => {
    const found = { interval: interval(0.9, 1.6) };
    expect(said(found)[0]).toMatch(/1\.30 \(95 % interval 0\.90 to 1\.60, ΔE00 0\.90\)/);
    expect(figures(found)[0]).toMatchObject({ low: 0.9, high: 1.6 });
  });

  test.each([
    ['meets', 'The whole interval is within the limit of ΔE*ab 1.'],
    ['fails', 'The whole interval is beyond the limit of ΔE*ab 1.'],
    ['undecided', 'The interval holds the limit of ΔE*ab 1, so nothing is decided yet.'],
  ] as const)('says how the interval lies to the limit: %s', (outcome, statement) => {
    expect(said({ interval: interval(0.9, 1.6), outcome })[1]).toBe(statement);
  });

  test('tells the scatter of each area that has several spots', () => {
    const found = { scatter: { rubbed: 0.123 }, replicates: { unrubbed: 1, rubbed: 4 } };
    expect(said(found)[2]).toBe('The 4 spots of the rubbed area lie ΔE*ab 0.12 (root mean square) from their mean.');
    expect(said(found)).toHaveLength(4);
    expect(figures(found)[2]).toEqual({ deviation: 0.123, spots: 4 });
  });
});

describe('the strength change', () => {
  const change = { changePercent: -8, approximate: false, at: '610 nm', residualDEab: 0.26 };

  test('is told with its wavelength and what it leaves of the difference', () => {
    const found = { strengthChange: change };
    expect(said(found).slice(2, 4)).toEqual([
      'The rubbed area is 8.0 % weaker at the absorption maximum, 610 nm.',
      'Brought to equal strength, ΔE*ab 0.26 of 1.30 would be left.',
    ]);
    expect(figures(found).slice(2, 4)).toEqual([{ changePercent: -8 }, { residualDEab: 0.26, dEab: 1.3, share: 0.2 }]);
  });

  test.each([
    [
      { low: 1, high: 15 },
      'The rubbed area is 8.0 % (95 % interval 1.0 to 15.0 %) stronger in Y, from Lab values and so approximately.',
    ],
    [
      { low: 0, high: 16 },
      'The rubbed area is 8.0 % (95 % interval 0.0 to 16.0 %) stronger in Y, from Lab values and so approximately, which is no proven change.',
    ],
    [
      { low: -0.04, high: 16 },
      'The rubbed area is 8.0 % (95 % interval 0.0 to 16.0 %) stronger in Y, from Lab values and so approximately, which is no proven change.',
    ],
  ])('is proven only where its interval %j leaves out zero', (range, statement) => {
    const strengthChange = { changePercent: 8, approximate: true, at: 'Y', residualDEab: 0, interval: range };
    expect(said({ strengthChange })[2]).toBe(statement);
    expect(figures({ strengthChange })[2]).toEqual({ changePercent: 8, ...range });
  });

  test('below zero is told with true minus signs', () => {
    const strengthChange = { ...change, interval: { low: -16, high: -1 } };
    expect(said({ strengthChange })[2]).toMatch(
      /interval −16\.0 to −1\.0 %\) weaker at the absorption maximum, 610 nm\.$/,
    );
    const open = { ...change, interval: { low: -16, high: 0 } };
    expect(said({ strengthChange: open })[2]).toMatch(/which is no proven change\.$/);
  });

  test('of no difference leaves no share, and zero counts as stronger', () => {
    const none = { ...FINDINGS.difference, dEab: 0 };
    const found = { difference: none, strengthChange: { ...change, changePercent: 0, residualDEab: 0 } };
    expect(figures(found)[3]).toEqual({ residualDEab: 0, dEab: 0, share: 0 });
    expect(said(found)[2]).toMatch(/0\.0 % stronger/);
  });
});

describe('the change of a colorant', () => {
  test('is told as more or less, with its interval', () => {
    const colorantChanges = [
      { name: 'Blue', relative: -0.25, interval: { low: -0.28, high: -0.22 } },
      { name: 'Yellow', relative: 0.01 },
      { name: 'Black', relative: 0 },
    ];
    const found = { colorantChanges, whiteChange: { relative: 0.15 } };
    expect(said(found).slice(2, 6)).toEqual([
      'Blue absorbs 25.0 % less in the rubbed area (95 % interval −28.0 to −22.0 %).',
      'Yellow absorbs 1.0 % more in the rubbed area, which is no proven change.',
      'Black absorbs 0.0 % more in the rubbed area, which is no proven change.',
      'The white scatters 15.0 % more in the rubbed area.',
    ]);
    expect(figures(found).slice(2, 6)).toEqual([
      { relative: -0.25, low: -0.28, high: -0.22 },
      { relative: 0.01 },
      { relative: 0 },
      { relative: 0.15 },
    ]);
  });
});
