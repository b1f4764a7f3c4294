import { describe, expect, test } from 'vitest';
import { findOutliers, type Repeated, type SideGroup } from '../../../src/evidence/index.js';
import { seededNormal } from '../../study/seeded-normal.js';

const normal = seededNormal(21);
const NAMES = ['R', 'A', 'B', 'C', 'D', 'E', 'F', 'G'];

/** Eight packages five units apart, three weigh-ups each that scatter by one unit, two spots each that scatter by 0.2. */
function study() {
  return Object.fromEntries(
    NAMES.map((name, i) => [
      name,
      Array.from({ length: 3 }, () => {
        const made = 5 * i + normal();
        return { spot: [made + 0.2 * normal(), made + 0.2 * normal()] };
      }),
    ]),
  );
}
const group = (sides: ReturnType<typeof study>, name?: string): SideGroup => ({
  sides: Object.fromEntries(Object.entries(sides).map(([side, weighing]) => [side, { weighing } as Repeated<number>])),
  reference: 'R',
  name,
});
const shifted = ({ spot }: { spot: number[] }, by: number) => ({ spot: spot.map((value) => value + by) });

describe('findOutliers (seed 21)', () => {
  test('is silent where nothing is wrong', () => {
    expect(findOutliers([group(study())])).toMatchObject({ kind: 'outliers', version: 1, outliers: [], exchanged: [] });
  });

  test('names a weigh-up that lies far from its siblings, and what it carries', () => {
    const sides = study();
    sides.C[1] = shifted(sides.C[1], 12);
    const [outlier, ...others] = findOutliers([group(sides, 'W')]).outliers;
    expect(others).toEqual([]);
    expect(outlier).toMatchObject({ group: 'W', side: 'C', level: 'weighing', path: 'C.weighing[1]' });
    expect(outlier.share).toBeGreaterThan(0.5);
    expect(outlier.value - outlier.others).toBeGreaterThan(8);
    expect(outlier.probability).toBeLessThan(0.001);
  });

  test('names a spot, both where there are two', () => {
    const sides = study();
    sides.D[2].spot[0] += 4;
    const spots = findOutliers([group(sides)]).outliers.filter(({ level }) => level === 'spot');
    expect(spots.map(({ path }) => path).sort()).toEqual(['D.weighing[2].spot[0]', 'D.weighing[2].spot[1]']);
  });

  test('says whose figure it lies on', () => {
    const sides = study();
    sides.A[0] = shifted(sides.A[0], 20);
    expect(findOutliers([group(sides)]).outliers[0]).toMatchObject({ path: 'A.weighing[0]', resembles: 'E' });
  });

  test('sees two labels that were exchanged', () => {
    const sides = study();
    [sides.A[0], sides.F[2]] = [sides.F[2], sides.A[0]];
    expect(findOutliers([group(sides)]).exchanged).toEqual([
      { level: 'weighing', sides: ['A', 'F'], paths: ['A.weighing[0]', 'F.weighing[2]'] },
    ]);
  });

  test('too few units tell nothing', () => {
    const few = { sides: { R: { weighing: [0, 1] }, A: { weighing: [5, 50] } }, reference: 'R' };
    expect(findOutliers([few]).outliers).toEqual([]);
  });

  test('units that agree to the last digit make the odd one infinitely odd, in JSON too', () => {
    const calm = { weighing: [1, 1, 1] };
    const result = findOutliers([{ sides: { R: calm, A: calm, B: { weighing: [2, 2, 3] } }, reference: 'R' }]);
    expect(result.outliers[0].path).toBe('B.weighing[2]');
    expect(JSON.parse(JSON.stringify(result))).toEqual(result);
  });

  test.each<[unknown, unknown, string, string]>([
    [[], {}, 'empty', 'groups'],
    [[null], {}, 'wrong-type', 'groups[0]'],
    [[{ sides: { R: [1, 2] }, reference: 'R' }], {}, 'repetition-unstated', 'R'],
    [[{ sides: { R: 1 }, reference: 'R' }], { rate: 1 }, 'invalid-option', 'options.rate'],
  ])('%j with %j: %s', (groups, options, code, path) => {
    expect(() => findOutliers(groups as SideGroup[], options as object)).toThrow(
      expect.objectContaining({ code, path }),
    );
  });
});
