import { describe, expect, test } from 'vitest';
import type { Repeated } from '../../src/evidence/index.js';
import {
  assessRubOut,
  D65_2,
  D65_10,
  type Lab,
  labFromSpectrum,
  type Reading,
  type RubOutCause,
  type RubOutOptions,
  type RubOutReading,
  type RubOutResult,
  type Spectrum,
} from '../../src/index.js';
import { filmRow, type Made, SURFACE, spectrumOf, spots, spotsOf, tint, WHITE } from './films.js';

const viewing = D65_10;
const surface = 'none' as const;
const bare = { viewing, surface } as const;
const lab = (spectrum: Spectrum): Lab => labFromSpectrum(spectrum, viewing);
const standings = ({ causes }: RubOutResult) =>
  Object.fromEntries(causes.map(({ cause, standing }) => [cause, standing]));
const inQuestion = ({ causes }: RubOutResult) =>
  causes.filter(({ standing }) => standing.startsWith('fits')).map(({ cause }) => cause);
const white = spotsOf({ colour: 0 });
const assess = (before: Made, after: Made, options: Partial<RubOutOptions> = {}) =>
  assessRubOut(spotsOf(before), spotsOf(after), { viewing, surface: SURFACE, white, ...options });

describe('on spectra', () => {
  test('a coloured pigment that was flocculated: more colour, with separation and both pigments beside it', () => {
    const result = assess({ colour: 0.85 }, {});
    expect(result).toMatchObject({
      kind: 'rub-out',
      version: 1,
      finding: 'difference',
      visible: true,
      outcome: 'fails',
      direction: { towards: 'more-colour', certainty: 'proven' },
    });
    expect(inQuestion(result)).toEqual(['coloured-pigment-flocculated', 'both-flocculated', 'pigments-separated']);
    expect(standings(result)).toMatchObject({ 'surface-changed': 'ruled-out', 'thickness-changed': 'not-weighed' });
  });

  test('a white that was flocculated: more white, the coloured pigment ruled out', () => {
    const result = assess({ scattering: 0.88 }, {});
    expect(result.direction).toEqual({ towards: 'more-white', certainty: 'proven' });
    expect(inQuestion(result)).toEqual(['white-pigment-flocculated', 'both-flocculated', 'pigments-separated']);
  });

  test('a change of gloss is one of the surface alone, and its direction is not proven', () => {
    const result = assess({}, { gloss: -0.006 });
    expect(standings(result)).toMatchObject({
      'surface-changed': 'fits-alone',
      'coloured-pigment-flocculated': 'ruled-out',
      'pigments-separated': 'ruled-out',
    });
    expect(result.direction).toEqual({ towards: 'more-colour', certainty: 'indicated' });
    expect(result.causes.find(({ cause }) => cause === 'surface-changed')?.sizes?.reflectance).toBeCloseTo(-0.006, 3);
  });

  test('with the specular reflection included a change of gloss is none that is seen', () => {
    const result = assess({ colour: 0.85 }, {}, { surface: { ...SURFACE, specular: 'included' } });
    expect(standings(result)['surface-changed']).toBe('ruled-out');
  });

  test('both pigments freed by the same share hide each other: nothing is found, and nothing said of a cause', () => {
    const result = assess({ colour: 0.95, scattering: 0.95 }, {});
    expect(result).toMatchObject({ finding: 'none-visible', causes: [], outcome: 'meets' });
  });

  test('a flocculated pigment and another gloss at once fit together where neither does alone', () => {
    const result = assess({ colour: 0.8 }, { gloss: 0.006 });
    const coloured = result.causes.find(({ cause }) => cause === 'coloured-pigment-flocculated');
    expect(coloured).toMatchObject({ standing: 'fits', withSurface: true });
    expect(coloured?.sizes?.absorption).toBeCloseTo(0.25, 1);
  });

  test('one of two colorants: it fits, the same factor for both does not', () => {
    const result = assess({ colour: 0.8, yellow: 1 }, { yellow: 1 }, { tint: 'several-pigments' });
    expect(standings(result)).toMatchObject({
      'one-colorant-flocculated': 'fits',
      'coloured-pigment-flocculated': 'ruled-out',
      'pigments-separated': 'fits',
    });
  });

  test('blue up and yellow down is another shade, and separation the only cause', () => {
    const result = assess({ colour: 0.85, yellow: 1.15 }, { yellow: 1 }, { tint: 'several-pigments' });
    expect(result.direction?.towards).toBe('another-shade');
    expect(inQuestion(result)).toEqual(['pigments-separated']);
  });

  test('a mass tone has no white to flocculate', () => {
    const result = assess({ colour: 0.85 }, {}, { tint: 'mass-tone', white: undefined });
    expect(standings(result)).toMatchObject({
      'white-pigment-flocculated': 'ruled-out',
      'both-flocculated': 'ruled-out',
    });
  });

  test('a pale tint without its white asks for it', () => {
    const result = assess({ colour: 0.1 }, { colour: 0.15 }, { white: undefined });
    expect(result.warnings.map(({ code }) => code)).toContain('white-missing');
    expect(result.next.join(' ')).toContain('white base');
  });

  test('the measured change and the curve of each cause stand on the same wavelengths', () => {
    const { spectrum, causes } = assess({ colour: 0.85 }, {});
    expect(spectrum?.wavelengths).toHaveLength(31);
    const curve = causes[0].curve ?? [];
    const furthest = Math.max(...curve.map((value, i) => Math.abs(value - (spectrum?.change[i] ?? 0))));
    // the planted change is up to 0.03; spots err by 0.1 % of R
    expect(furthest).toBeLessThan(0.002);
  });
});

describe('what the readings do not allow', () => {
  test('one spot per side shows no scatter: nothing is decided, proven or ruled out', () => {
    const result = assessRubOut(tint(0.7), tint(1), bare);
    expect(result).toMatchObject({ outcome: 'undecided', finding: 'open', direction: { certainty: 'indicated' } });
    expect(result.interval).toBeUndefined();
    expect(result.causes.map(({ standing }) => standing)).not.toContain('ruled-out');
  });

  test('one spot with a stated precision decides', () => {
    expect(assessRubOut(tint(0.7), tint(1), { ...bare, precision: { spot: 0.1 } })).toMatchObject({
      outcome: 'fails',
      finding: 'difference',
      interval: { basis: 'precision' },
    });
  });

  test.each(['single-pigment', 'several-pigments', 'mass-tone', 'white'] as const)(
    'Lab values rule out nothing: %s',
    (kind) => {
      const as = ({ spot }: { readonly spot: readonly Spectrum[] }) => ({ spot: spot.map(lab) });
      const result = assessRubOut(as(spots(0.8)), as(spots(1)), { ...bare, tint: kind });
      expect(result.readings).toBe('lab');
      expect(result.causes.map(({ standing }) => standing)).not.toContain('ruled-out');
      expect(result.direction).toMatchObject({ towards: 'more-colour' });
    },
  );

  test('a film brighter than any white has no direction', () => {
    const bright = (L: number) => ({ L, a: 0, b: 0 });
    const result = assessRubOut(bright(103), bright(105), bare);
    expect(result.strengthChange).toBeUndefined();
    expect(result.direction).toBeUndefined();
    expect(result.warnings.map(({ code }) => code)).toContain('no-strength-change');
  });

  test('a difference within the scatter is none', () => {
    const noisy = (factors: readonly number[]) => ({ spot: factors.map((factor) => tint(factor)) });
    const result = assessRubOut(noisy([0.98, 1, 1.02]), noisy([0.99, 1.01, 1.03]), bare);
    expect(result.causes).toEqual([]);
    expect(result.interval?.dEab.low).toBe(0);
  });
});

describe('drawdowns', () => {
  const drawn = (made: Made, films: readonly number[]) => ({
    drawdown: films.map((factor) => spotsOf({ ...made, colour: (made.colour ?? 1) * factor })),
  });

  test('pair by position: their differences carry the interval, and the result speaks of the paint', () => {
    const films = [0.97, 1, 1.04];
    const result = assessRubOut(drawn({ colour: 0.85 }, films), drawn({}, films), { viewing, surface: SURFACE, white });
    expect(result).toMatchObject({ claim: 'paint', interval: { basis: 'drawdowns', degreesOfFreedom: 2 } });
    expect(result.direction).toEqual({ towards: 'more-colour', certainty: 'proven' });
    expect(result.repetition.unrubbed.noun).toBe('3 drawdowns of one weigh-up');
  });

  test('given as spots the same films would have an interval five times as wide', () => {
    const films = [0.97, 1, 1.04];
    const flat = (made: Made) => ({
      spot: films.map((factor) => spotsOf({ ...made, colour: (made.colour ?? 1) * factor }).spot[0]),
    });
    const width = ({ interval }: RubOutResult) => (interval?.dEab.high ?? 0) - (interval?.dEab.low ?? 0);
    const options = { viewing, surface: SURFACE, white };
    const paired = assessRubOut(drawn({ colour: 0.85 }, films), drawn({}, films), options);
    expect(width(assessRubOut(flat({ colour: 0.85 }), flat({}), options))).toBeGreaterThan(5 * width(paired));
  });
});

describe('what else was read', () => {
  const glossOf = (unrubbed: number, rubbed: number) => ({ unrubbed: { spot: [unrubbed, unrubbed + 0.4] }, rubbed });

  test('a gloss that did not change rules the surface out, one that did leaves it', () => {
    const grey = (factor: number): Repeated<RubOutReading> => ({
      spot: [0.999, 1, 1.001].map((step) => spectrumOf(filmRow().map(() => 0.3 * factor * step))),
    });
    const of = (gloss?: RubOutOptions['gloss']) =>
      standings(assessRubOut(grey(1), grey(0.9), { viewing, surface: SURFACE, gloss }))['surface-changed'];
    expect(of()).toBe('fits');
    expect(of(glossOf(80, 71))).toBe('fits');
    expect(of(glossOf(80, 80))).toBe('ruled-out');
  });

  test('both specular modes tell a change of the surface: 0.4 % more in one mode, or none', () => {
    const grey = (R: number) => ({ spot: [-1, 0, 1].map((z) => spectrumOf(filmRow().map(() => R + 0.0001 * z))) });
    const of = (specular: number) =>
      standings(
        assessRubOut(grey(0.3), grey(0.32), {
          viewing,
          surface: SURFACE,
          otherSpecular: { unrubbed: grey(0.34), rubbed: grey(0.36 + specular) },
        }),
      )['surface-changed'];
    expect(of(0.004)).toBe('fits');
    expect(of(0)).toBe('ruled-out');
  });

  test('the changes of the colorants name those that moved', () => {
    const change = (name: string, relative: number) => ({
      name,
      relative,
      interval: { low: relative - 0.03, high: relative + 0.03 },
    });
    const named = (cause: RubOutCause, ...colorantChanges: ReturnType<typeof change>[]) =>
      assess({ colour: 0.8, yellow: 1 }, { yellow: 1 }, { colorantChanges }).causes.find((one) => one.cause === cause);
    expect(named('one-colorant-flocculated', change('Blue', 0.25), change('Yellow', 0.01))?.colorants).toEqual([
      'Blue',
    ]);
    expect(named('one-colorant-flocculated', change('Blue', 0.2), change('Yellow', -0.1))?.standing).toBe('ruled-out');
    expect(named('pigments-separated', change('Blue', 0.2), change('Yellow', -0.1))?.colorants).toEqual([
      'Blue',
      'Yellow',
    ]);
  });
});

describe('the result', () => {
  test('comes back from JSON as it was', () => {
    const result = assess({ colour: 0.85 }, {});
    expect(JSON.parse(JSON.stringify(result))).toEqual(result);
  });

  test('a film that fails has always a next step, and none is needed where nothing is found', () => {
    expect(assess({ colour: 0.85 }, {}).next.length).toBeGreaterThan(0);
    expect(assess({}, {}).next).toEqual([]);
  });

  test('visibility is told by ΔE00 whatever the limit speaks of: a grey of ΔE*ab 0.45 is ΔE00 0.66', () => {
    const grey = (L: number) => ({ spot: [-0.01, 0, 0.01].map((step) => ({ L: L + step, a: 0.45 + step, b: 0 })) });
    const other = { spot: [-0.01, 0, 0.01].map((step) => ({ L: 50 + step, a: 0 + step, b: 0 })) };
    const result = assessRubOut(other, grey(50), bare);
    expect(result.difference.dE2000).toBeCloseTo(0.66, 1);
    expect(result.visible).toBe(true);
  });
});

describe('bad input', () => {
  const reading = (name: string, conditions: Reading['conditions'], value = lab(tint(1))): Reading => ({
    name,
    lab: value,
    conditions,
  });
  const shifted = { ...tint(1), start: 410 } as Spectrum;
  const unchecked = (value: unknown) => value as Repeated<RubOutReading>;

  test.each<[string, string, () => unknown]>([
    ['repetition-unstated', 'unrubbed', () => assessRubOut(unchecked([tint(1)]), tint(1), bare)],
    ['empty', 'rubbed.spot', () => assessRubOut(tint(1), { spot: [] }, bare)],
    ['empty', 'rubbed', () => assessRubOut(lab(tint(1)), { name: 'x', conditions: {} }, bare)],
    ['wrong-type', 'unrubbed', () => assessRubOut(unchecked(null), tint(1), bare)],
    ['wrong-type', 'rubbed', () => assessRubOut(tint(1), unchecked('62'), bare)],
    ['wrong-type', 'options', () => assessRubOut(tint(1), tint(1), undefined as unknown as RubOutOptions)],
    ['wrong-length', 'rubbed', () => assessRubOut({ drawdown: [tint(1), tint(1)] }, tint(1), bare)],
    ['kinds-mixed', 'rubbed', () => assessRubOut(tint(1), lab(tint(1)), bare)],
    ['kinds-mixed', 'unrubbed', () => assessRubOut({ spot: [tint(1), lab(tint(1))] }, tint(1), bare)],
    ['kinds-mixed', 'options.white', () => assessRubOut(tint(1), tint(1), { ...bare, white: lab(WHITE) })],
    ['grid-mismatch', 'rubbed', () => assessRubOut(tint(1), shifted, bare)],
    ['grid-mismatch', 'unrubbed.spot[1]', () => assessRubOut({ spot: [tint(1), shifted] }, tint(1), bare)],
    ['grid-mismatch', 'options.white', () => assessRubOut(tint(1), tint(1), { ...bare, white: shifted })],
    ['not-finite', 'rubbed.b', () => assessRubOut(lab(tint(1)), { L: 1, a: 2, b: Number.NaN }, bare)],
    [
      'conditions-mismatch',
      'rubbed.conditions.specular',
      () => assessRubOut(reading('a', { specular: 'included' }), reading('b', { specular: 'excluded' }), bare),
    ],
    [
      'conditions-mismatch',
      'options.white.conditions.specular',
      () =>
        assessRubOut(reading('a', { specular: 'included' }), reading('b', {}), {
          ...bare,
          white: reading('c', { specular: 'excluded' }),
        }),
    ],
    [
      'conditions-mismatch',
      'unrubbed.conditions.specular',
      () =>
        assessRubOut(reading('a', { specular: 'included' }), reading('b', {}), {
          viewing,
          surface: SURFACE,
        }),
    ],
    [
      'conditions-mismatch',
      'rubbed.conditions.geometry',
      () => assessRubOut(reading('a', { geometry: 'di:8°' }), reading('b', { geometry: '45°a:0°' }), bare),
    ],
    [
      'conditions-mismatch',
      'unrubbed.conditions.viewing',
      () => assessRubOut(reading('a', { viewing: D65_2 }), reading('b', { viewing: D65_2 }), bare),
    ],
  ])('%s at %s', (code, path, act) => {
    expect(act).toThrow(expect.objectContaining({ code, path }));
  });

  test('another instrument, and a condition that one area states and another does not, are warnings', () => {
    const codes = ({ warnings }: RubOutResult) => warnings.map(({ code }) => code);
    const as = (conditions: Reading['conditions']) => reading('x', { viewing, ...conditions });
    expect(codes(assessRubOut(as({ instrument: 'A' }), as({ instrument: 'B' }), bare))).toContain('instruments-differ');
    expect(codes(assessRubOut(as({ specular: 'included' }), as({}), bare))).toContain('condition-not-stated');
    expect(codes(assessRubOut(as({}), as({}), bare))).not.toContain('condition-not-stated');
    const full = as({ specular: SURFACE.specular, geometry: 'd:8°', instrument: 'A' });
    expect(codes(assessRubOut(full, full, { viewing, surface: SURFACE }))).not.toContain('condition-not-stated');
  });

  test('readings with their conditions are taken where these agree, XYZ among them', () => {
    const xyz: Reading = { name: 'b', xyz: { X: 20, Y: 20, Z: 30 }, conditions: { viewing } };
    expect(assessRubOut(reading('a', { viewing }), xyz, bare).readings).toBe('lab');
  });
});
