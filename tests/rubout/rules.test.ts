import { describe, expect, test } from 'vitest';
import { type Facts, RULES } from '../../src/rubout/rules.js';
import { RUB_OUT_THRESHOLDS } from '../../src/rubout/thresholds.js';

// The decision table line by line. What rubbing shows is common practice, no source; the lines themselves are the package's own.

const { visible, unevenness, overScatter, shadeShare, bothSigns } = RUB_OUT_THRESHOLDS;

/** A clear difference of an even film of one pigment, stronger when rubbed and of the same shade. */
const CLEAR: Facts = {
  thresholds: RUB_OUT_THRESHOLDS,
  tint: 'single-pigment',
  dEab: 2,
  noise: 'beyond',
  unrubbedScatter: 0.1,
  stronger: true,
  lighter: false,
  shadeShare: 0.1,
  bothSigns: 0,
  hasAbsorption: true,
  movements: [],
  whiteMovement: 'unmoved',
};
const WEAKER = { stronger: false, lighter: true } as const;
const SEVERAL = { tint: 'several-pigments' } as const;
const RESOLVED = { ...SEVERAL, ...WEAKER, shadeShare: 0.9 } as const;

const rule = (facts: Partial<Facts>) => RULES.find(({ when }) => when({ ...CLEAR, ...facts }));
const verdict = (facts: Partial<Facts>) => {
  const found = rule(facts);
  return found && [found.diagnosis, ...found.causes].join(' ');
};

const COLOURED = 'coloured-pigment-flocculated coloured-pigment-flocculated';
const WHITE = 'white-pigment-flocculated white-pigment-flocculated';
const SEPARATED = 'pigments-separated pigments-separated';
const OR_SEPARATED = 'pigments-separated';

describe('noise', () => {
  test.each<[string, Partial<Facts>]>([
    ['a difference within the scatter of an even film', { noise: 'within' }],
    ['even if it is large', { noise: 'within', dEab: 20 }],
    ['a difference that nobody sees', { dEab: visible - 0.001 }],
    ['and with one spot a side', { dEab: visible - 0.001, noise: 'unknown', unrubbedScatter: undefined }],
  ])('%s is no finding', (_, facts) => {
    expect(verdict(facts)).toBe('none');
  });

  test('a difference on the line of what is seen is looked into', () => {
    expect(verdict({ dEab: visible })).toBe(COLOURED);
  });

  test('so is one whose scatter is unknown', () => {
    expect(verdict({ noise: 'unknown', unrubbedScatter: undefined })).toBe(COLOURED);
  });
});

describe('an uneven film', () => {
  const uneven = { unrubbedScatter: unevenness } as const;

  test('begins on the line, not above it', () => {
    expect(verdict({ unrubbedScatter: unevenness - 0.001, dEab: 0.9 })).toBe(COLOURED);
    expect(verdict({ ...uneven, dEab: 0.9 })).toBe('uneven-film uneven-film');
  });

  test('explains a difference below so many times its scatter, and no other', () => {
    expect(verdict({ ...uneven, dEab: overScatter * unevenness - 0.001 })).toBe('uneven-film uneven-film');
    expect(verdict({ ...uneven, dEab: overScatter * unevenness })).toBe(COLOURED);
  });

  test('explains any difference within the noise', () => {
    expect(verdict({ ...uneven, dEab: 20, noise: 'within' })).toBe('uneven-film uneven-film');
  });
});

test('readings without K/S have no direction', () => {
  expect(verdict({ hasAbsorption: false })).toBe('undetermined');
});

describe('a tint of one pigment', () => {
  test.each<[string, Partial<Facts>, string]>([
    ['stronger, same shade', {}, COLOURED],
    ['stronger, half the difference left', { shadeShare }, COLOURED],
    ['stronger, more than half left', { shadeShare: shadeShare + 0.001 }, 'undetermined'],
    ['stronger and lighter, same shade', { lighter: true }, COLOURED],
    ['weaker and lighter, same shade', WEAKER, WHITE],
    ['weaker and lighter, half left', { ...WEAKER, shadeShare }, WHITE],
    ['weaker and lighter, another shade', { ...WEAKER, shadeShare: shadeShare + 0.001 }, 'undetermined'],
    ['weaker and darker', { stronger: false, lighter: false }, 'undetermined'],
    ['stronger, absorption both ways', { bothSigns }, 'undetermined'],
    ['stronger, hardly both ways', { bothSigns: bothSigns - 0.001 }, COLOURED],
    ['weaker, absorption both ways', { ...WEAKER, bothSigns }, 'undetermined'],
  ])('%s', (_, facts, expected) => {
    expect(verdict(facts)).toBe(expected);
  });
});

describe('a tint of several pigments', () => {
  test.each<[string, Partial<Facts>, string]>([
    ['absorption both ways', { bothSigns }, SEPARATED],
    ['hardly both ways', { bothSigns: bothSigns - 0.001 }, `${COLOURED} ${OR_SEPARATED}`],
    ['stronger, same shade', { shadeShare }, `${COLOURED} ${OR_SEPARATED}`],
    [
      'stronger, another shade',
      { shadeShare: shadeShare + 0.001 },
      'undetermined coloured-pigment-flocculated pigments-separated',
    ],
    ['weaker and lighter, same shade', { ...WEAKER, shadeShare }, `${WHITE} ${OR_SEPARATED}`],
    ['weaker and darker, same shade', { stronger: false, lighter: false }, SEPARATED],
    ['weaker, another shade', { ...WEAKER, shadeShare: shadeShare + 0.001 }, SEPARATED],
  ])('%s', (_, facts, expected) => {
    expect(verdict({ ...SEVERAL, ...facts })).toBe(expected);
  });
});

describe('a tint that was resolved into its colorants', () => {
  test.each<[string, Partial<Facts>, string]>([
    ['only the white more', { movements: ['unmoved', 'unmoved'], whiteMovement: 'more' }, WHITE],
    ['only the white less', { movements: ['unmoved', 'unmoved'], whiteMovement: 'less' }, SEPARATED],
    ['one more, one less', { movements: ['more', 'less'] }, SEPARATED],
    ['one more, one less, whatever the white', { movements: ['more', 'less'], whiteMovement: 'more' }, SEPARATED],
    ['all more, same shade', { movements: ['more', 'more'], shadeShare }, `${COLOURED} ${OR_SEPARATED}`],
    [
      'all more, another shade',
      { movements: ['more', 'more'] },
      'undetermined coloured-pigment-flocculated pigments-separated',
    ],
    [
      'one more, same shade',
      { movements: ['unmoved', 'more'], shadeShare },
      'undetermined coloured-pigment-flocculated pigments-separated',
    ],
    ['all less, same shade', { movements: ['less', 'less'], shadeShare }, `${WHITE} ${OR_SEPARATED}`],
    ['all less, another shade', { movements: ['less', 'less'] }, SEPARATED],
    ['one less, same shade', { movements: ['less', 'unmoved'], shadeShare }, SEPARATED],
    ['none moved: as if it had not been resolved', { movements: ['unmoved'], shadeShare }, `${WHITE} ${OR_SEPARATED}`],
  ])('%s', (_, facts, expected) => {
    expect(verdict({ ...RESOLVED, ...facts })).toBe(expected);
  });
});

test('some line applies to every film, each says why, and the reasons differ', () => {
  expect(RULES[RULES.length - 1].when(CLEAR)).toBe(true);
  const reasons = RULES.map(({ reason }) => reason);
  expect(new Set(reasons).size).toBe(RULES.length);
  for (const reason of reasons) expect(reason).toMatch(/^[A-Z].{30,}\.$/);
});
