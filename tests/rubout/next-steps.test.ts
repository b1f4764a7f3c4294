import { describe, expect, test } from 'vitest';
import { describeCauses } from '../../src/rubout/causes.js';
import { nextSteps, type OpenQuestions } from '../../src/rubout/next-steps.js';

const PROVEN: OpenQuestions = {
  outcome: 'fails',
  diagnosis: 'coloured-pigment-flocculated',
  certainty: 'proven',
  causes: describeCauses(['coloured-pigment-flocculated'], []),
  noise: 'beyond',
  replicates: { unrubbed: 3, rubbed: 3 },
  unevenRubbed: false,
};
const SETTLED: OpenQuestions = { ...PROVEN, outcome: 'meets', diagnosis: 'none', causes: [] };
/** What the steps are about, by their first word or two. */
const steps = (open: OpenQuestions) => nextSteps(open).map((step) => step.split(' ').slice(0, 2).join(' '));

describe('what to do next', () => {
  test('is nothing where the film meets its limit and nothing was found', () => {
    expect(nextSteps(SETTLED)).toEqual([]);
  });

  test('is to confirm a proven flocculation under the microscope and with a longer flash-off', () => {
    expect(steps(PROVEN)).toEqual(['Look at', 'Rub out']);
    expect(nextSteps(PROVEN)[1]).toMatch(/longer flash-off/);
  });

  test('is to tell two causes apart, and no longer flash-off while both are open', () => {
    const causes = describeCauses(['coloured-pigment-flocculated', 'pigments-separated'], []);
    expect(steps({ ...PROVEN, causes })).toEqual(['Look at', 'Pour the']);
  });

  test('is to read spots where one a side shows no scatter, before anything else', () => {
    const open = {
      ...SETTLED,
      noise: 'unknown',
      outcome: 'undecided',
      replicates: { unrubbed: 1, rubbed: 1 },
    } as const;
    expect(nextSteps(open)).toHaveLength(1);
    expect(nextSteps(open)[0]).toContain('repeatability');
  });

  test.each([
    ['of which one side has four', 4, 'Read at'],
    ['of which both sides have five', 5, 'Repeat drawdown'],
  ])('is more spots or a new film, for an undecided one, %s', (_, rubbed, step) => {
    const replicates = { unrubbed: 5, rubbed };
    expect(steps({ ...SETTLED, outcome: 'undecided', replicates })).toEqual([step]);
    expect(steps({ ...SETTLED, certainty: 'not-shown', replicates })).toEqual([step]);
  });

  test('is to rub out again where the rubbed spots differ', () => {
    expect(nextSteps({ ...SETTLED, unevenRubbed: true })).toEqual([
      'Rub out again, evenly and for a fixed time: the spots of the rubbed area differ among themselves.',
    ]);
  });

  test('is to look at the gloss only where no cause is known', () => {
    expect(steps({ ...SETTLED, diagnosis: 'undetermined' })).toEqual(['Compare the']);
    const causes = describeCauses(['pigments-separated'], []);
    expect(steps({ ...SETTLED, diagnosis: 'undetermined', causes })).toEqual(['Pour the']);
  });
});

describe('a cause', () => {
  const change = (name: string, relative: number) => ({ name, relative });
  const changes = [change('Blue', 0.2), change('Yellow', -0.1), change('Black', 0.01)];

  test('names the pigments that moved its way, and none that stayed', () => {
    const pigments = (cause: Parameters<typeof describeCauses>[0][number]) =>
      describeCauses([cause], changes)[0].pigments;
    expect(pigments('coloured-pigment-flocculated')).toEqual(['Blue']);
    expect(pigments('pigments-separated')).toEqual(['Blue', 'Yellow']);
    expect(pigments('white-pigment-flocculated')).toEqual([]);
    expect(pigments('uneven-film')).toEqual([]);
  });

  test('says why and what would confirm it', () => {
    for (const { because, check } of describeCauses(['uneven-film', 'white-pigment-flocculated'], [])) {
      expect(because).toMatch(/\.$/);
      expect(check).toMatch(/\.$/);
    }
  });
});
