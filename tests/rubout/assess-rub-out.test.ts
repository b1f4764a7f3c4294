import { describe, expect, test } from 'vitest';
import { resolveColorants } from '../../src/fits/index.js';
import {
  assessRubOut,
  D65_2,
  D65_10,
  type Lab,
  labFromSpectrum,
  type Reading,
  type Spectrum,
} from '../../src/index.js';
import { blue, filmOf, spots, tint, WHITE, yellow } from './films.js';

const viewing = D65_10;
const several = 'several-pigments';
const lab = (spectrum: Spectrum): Lab => labFromSpectrum(spectrum, viewing);

describe('the strength change', () => {
  test('a pigment that was 10 % weaker by flocculation gains 1/0.9 on rubbing (arithmetic of Kubelka-Munk)', () => {
    const { strengthChange } = assessRubOut(tint(0.9), tint(1), { viewing, white: WHITE });
    expect(strengthChange?.changePercent).toBeCloseTo(100 / 0.9 - 100, 9);
    expect(strengthChange?.residualDEab).toBeLessThan(1e-6);
    expect(strengthChange).toMatchObject({ approximate: false, at: '610 nm' });
  });

  test('from Lab it is approximate and of the same sign', () => {
    const { strengthChange, readings } = assessRubOut(lab(tint(0.9)), lab(tint(1)), { viewing, white: lab(WHITE) });
    expect(readings).toBe('lab');
    expect(strengthChange?.approximate).toBe(true);
    expect(strengthChange?.changePercent).toBeGreaterThan(5);
  });

  test('spectra that reflect nothing somewhere fall back on Lab and say so', () => {
    const black = (film: Spectrum) => ({ ...film, values: film.values.map((value, i) => (i === 0 ? 0 : value)) });
    const result = assessRubOut(black(tint(0.8)), black(tint(1)), { viewing });
    expect(result.strengthChange?.approximate).toBe(true);
    expect(result.diagnosis).toBe('coloured-pigment-flocculated');
    expect(result.warnings).toContainEqual(
      expect.objectContaining({ code: 'no-strength-change', path: 'reference at 400 nm' }),
    );
  });

  test('a film brighter than any white has none, and its difference no direction', () => {
    const bright = (L: number) => ({ L, a: 0, b: 0 });
    const result = assessRubOut(bright(103), bright(105), { viewing });
    expect(result.strengthChange).toBeUndefined();
    expect(result).toMatchObject({ diagnosis: 'undetermined', causes: [] });
    expect(result.warnings.map(({ code }) => code)).toContain('no-strength-change');
  });
});

describe('the diagnosis', () => {
  test('a tint of one pigment that rubs out stronger: the coloured pigment was flocculated', () => {
    const result = assessRubOut(spots(0.8), spots(1), { viewing });
    expect(result).toMatchObject({
      diagnosis: 'coloured-pigment-flocculated',
      certainty: 'proven',
      flocculated: true,
      outcome: 'fails',
    });
    expect(result.next.join(' ')).toMatch(/microscope/);
  });

  test('one that rubs out weaker and lighter: the white was flocculated', () => {
    const film = (scattering: number) =>
      filmOf((nm) => (0.002 + 0.6 * Math.exp(-(((nm - 610) / 60) ** 2))) / scattering);
    const area = (scattering: number) => [0.998, 1, 1.002].map((factor) => film(scattering * factor));
    expect(assessRubOut(area(0.85), area(1), { viewing })).toMatchObject({
      diagnosis: 'white-pigment-flocculated',
      certainty: 'proven',
      flocculated: true,
    });
  });

  test('blue up and yellow down in a green: the pigments had separated', () => {
    const result = assessRubOut(spots(0.85, 1.15), spots(1, 1), { viewing, tint: several });
    expect(result).toMatchObject({ diagnosis: 'pigments-separated', certainty: 'proven' });
    expect(result.flocculated).toBeUndefined();
  });

  test('only blue up in a green: flocculated or sunk, and neither is chosen', () => {
    const result = assessRubOut(spots(0.8, 1), spots(1, 1), { viewing, tint: several });
    expect(result).toMatchObject({ diagnosis: 'undetermined', certainty: 'indicated' });
    expect(result.causes.map(({ cause }) => cause)).toEqual(['coloured-pigment-flocculated', 'pigments-separated']);
    expect(result.next.join(' ')).toMatch(/microscope.*pour/is);
  });

  test('spots that differ among themselves: an uneven film, whatever the means say', () => {
    const uneven = [tint(0.8), tint(1), tint(1.2)];
    expect(assessRubOut(uneven, spots(1.05), { viewing })).toMatchObject({
      diagnosis: 'uneven-film',
      outcome: 'undecided',
    });
  });

  test('a difference within the scatter is no finding', () => {
    const noisy = [tint(0.98), tint(1), tint(1.02)];
    const result = assessRubOut(noisy, [tint(0.99), tint(1.01), tint(1.03)], { viewing });
    expect(result.diagnosis).toBe('none');
    expect(result.interval?.dEab.low).toBe(0);
  });

  test('a sound film with little scatter is proven sound', () => {
    expect(assessRubOut(spots(1), spots(1.001), { viewing })).toMatchObject({
      diagnosis: 'none',
      certainty: 'proven',
      flocculated: false,
      outcome: 'meets',
      next: [],
    });
  });

  test('a shade change that one pigment and a white can not make stays undetermined', () => {
    const result = assessRubOut(spots(1, 1), spots(1, 0.7), { viewing, tint: 'single-pigment' });
    expect(result).toMatchObject({ diagnosis: 'undetermined', causes: [] });
    expect(result.next.join(' ')).toMatch(/gloss/);
  });

  test('a threshold that is moved moves the line', () => {
    const [unrubbed, rubbed] = [spots(1), spots(1.02)];
    expect(assessRubOut(unrubbed, rubbed, { viewing }).diagnosis).toBe('none');
    const strict = { viewing, thresholds: { visible: 0.1 } };
    expect(assessRubOut(unrubbed, rubbed, strict).diagnosis).toBe('coloured-pigment-flocculated');
  });
});

describe('with the changes of the colorants given', () => {
  const options = { viewing, tint: several } as const;
  const change = (name: string, relative: number, half = 0.03) => ({
    name,
    relative,
    interval: { low: relative - half, high: relative + half },
  });
  const assess = (...colorantChanges: ReturnType<typeof change>[]) =>
    assessRubOut(spots(0.8, 1), spots(1, 1), { ...options, colorantChanges });

  test('the pigment that moved is named', () => {
    const { diagnosis, causes, evidence } = assess(change('Blue', 0.25), change('Yellow', 0.01));
    expect(diagnosis).toBe('undetermined');
    expect(causes.map(({ pigments }) => pigments)).toEqual([['Blue'], ['Blue']]);
    expect(evidence.map(({ statement }) => statement)).toContain(
      'Blue absorbs 25.0 % more in the rubbed area (95 % interval 22.0 to 28.0 %).',
    );
  });

  test('one up and one down are separation', () => {
    const { diagnosis, causes } = assess(change('Blue', 0.2), change('Yellow', -0.1));
    expect(diagnosis).toBe('pigments-separated');
    expect(causes[0].pigments).toEqual(['Blue', 'Yellow']);
  });

  test('the change of the only pigment of a tint confirms it and opens no second cause', () => {
    expect(assessRubOut(spots(0.8), spots(1), { viewing, colorantChanges: [change('Blue', 0.25)] })).toMatchObject({
      diagnosis: 'coloured-pigment-flocculated',
      certainty: 'proven',
      causes: [{ cause: 'coloured-pigment-flocculated', pigments: ['Blue'] }],
    });
  });

  test('a white that scatters more, and colorants as they were, are a flocculated white', () => {
    const result = assessRubOut(spots(1.15, 1.15), spots(1, 1), {
      ...options,
      colorantChanges: [change('Blue', 0.01), change('Yellow', -0.01)],
      whiteChange: { relative: 0.15, interval: { low: 0.1, high: 0.2 } },
    });
    expect(result).toMatchObject({ diagnosis: 'white-pigment-flocculated', certainty: 'proven', flocculated: true });
    expect(result.evidence.map(({ statement }) => statement)).toContain(
      'The white scatters 15.0 % more in the rubbed area (95 % interval 10.0 to 20.0 %).',
    );
  });

  test('a resolution of the spectra finds the pigment by itself', () => {
    const [unrubbed, rubbed] = [spots(0.8, 1), spots(1, 1)];
    const wavelengths = Array.from({ length: 31 }, (_, i) => 400 + 10 * i);
    const { changes } = resolveColorants(unrubbed, rubbed, {
      colorants: [
        { name: 'Blue', kOverS: wavelengths.map(blue) },
        { name: 'Yellow', kOverS: wavelengths.map(yellow) },
      ],
      white: WHITE,
    });
    expect(changes[0].relative).toBeCloseTo(0.25, 2);
    const { causes } = assessRubOut(unrubbed, rubbed, { ...options, colorantChanges: changes });
    expect(causes.map(({ pigments }) => pigments)).toEqual([['Blue'], ['Blue']]);
  });

  test('several changes make it a tint of several pigments, and contradict a stated single one', () => {
    const colorantChanges = [change('Blue', 0.2), change('Yellow', 0.2)];
    expect(assessRubOut(spots(0.8, 1), spots(1, 1), { viewing, colorantChanges }).tint).toBe(several);
    expect(() => assessRubOut(tint(1), tint(1), { viewing, colorantChanges, tint: 'single-pigment' })).toThrow(
      expect.objectContaining({ code: 'invalid-option', path: 'options.tint' }),
    );
  });

  test.each([
    ['not-finite', { name: 'Blue', relative: Number.NaN }],
    ['invalid-interval', { name: 'Blue', relative: 0.1, interval: { low: 0.2, high: 0.3 } }],
  ])('refuses one that is %s', (code, bad) => {
    const colorantChanges = [bad, change('Yellow', 0)];
    expect(() => assessRubOut(tint(0.8), tint(1), { viewing, colorantChanges })).toThrow(
      expect.objectContaining({ code }),
    );
  });
});

describe('one spot a side', () => {
  test('shows no scatter: nothing is proven and nothing decided', () => {
    const result = assessRubOut(tint(0.7), tint(1), { viewing });
    expect(result).toMatchObject({
      outcome: 'undecided',
      diagnosis: 'coloured-pigment-flocculated',
      certainty: 'indicated',
    });
    expect(result.interval).toBeUndefined();
    expect(result.next[0]).toContain('three spots');
  });

  test('with a stated repeatability it has the interval of the normal distribution, 1.96 √2 σ far from zero', () => {
    const { interval, difference } = assessRubOut(
      { L: 60, a: 0, b: 0 },
      { L: 50, a: 0, b: 0 },
      { viewing, repeatability: 0.1 },
    );
    expect(interval?.basis).toBe('repeatability');
    expect(interval?.dEab.low).toBeCloseTo(difference.dEab - 1.96 * Math.SQRT2 * 0.1, 2);
    expect(interval?.dEab.high).toBeCloseTo(difference.dEab + 1.96 * Math.SQRT2 * 0.1, 2);
  });

  test('on one side only, the other side lends its scatter and a warning says so', () => {
    const { warnings, interval } = assessRubOut(spots(0.9), tint(1), { viewing });
    expect(interval?.basis).toBe('replicates');
    expect(warnings).toContainEqual(expect.objectContaining({ code: 'scatter-borrowed', path: 'rubbed' }));
  });

  test('copied readings are no replicates', () => {
    const { warnings, interval } = assessRubOut([tint(1), tint(1)], [tint(0.9), tint(0.9)], { viewing });
    expect(interval).toBeUndefined();
    expect(warnings.map(({ code }) => code)).toEqual(
      expect.arrayContaining(['replicates-identical', 'replicates-identical']),
    );
  });
});

describe('what it says', () => {
  test('is one plain sentence for each fact, with the figures behind it', () => {
    const unrubbed = [60, 60.1, 59.9].map((L) => ({ L, a: -8, b: -34 }));
    const rubbed = [58, 58.1, 57.9].map((L) => ({ L, a: -8, b: -34 }));
    const { evidence } = assessRubOut(unrubbed, rubbed, { viewing });
    // Student's t at 4 degrees of freedom, 2.776, times 0.1 √(2/3), is 0.227
    expect(evidence[0].statement).toMatch(
      /by ΔE\*ab 2\.00 \(95 % interval 1\.7\d to 2\.2\d, ΔE00 1\.\d\d\): ΔL\* −2\.00, ΔC\*ab 0\.00, ΔH\*ab 0\.00\.$/,
    );
    expect(evidence[1].statement).toBe('The whole interval is beyond the limit of ΔE*ab 1.');
    expect(evidence[2].statement).toBe(
      'The 3 spots of the unrubbed area lie ΔE*ab 0.10 (root mean square) from their mean.',
    );
    expect(evidence[2].figures.deviation).toBeCloseTo(0.1, 12);
    expect(evidence[0].figures.dEab).toBeCloseTo(2, 12);
  });

  test('is plain data', () => {
    const result = assessRubOut(spots(0.8), spots(1), { viewing });
    expect(JSON.parse(JSON.stringify(result)).diagnosis).toBe(result.diagnosis);
  });
});

describe('bad input', () => {
  const reading = (name: string, conditions: Reading['conditions'], value = lab(tint(1))): Reading => ({
    name,
    lab: value,
    conditions,
  });
  const shifted = { ...tint(1), start: 410 } as Spectrum;

  test.each<[string, string, () => unknown]>([
    ['empty', 'unrubbed', () => assessRubOut([], tint(1), { viewing })],
    ['empty', 'rubbed', () => assessRubOut(tint(1), [], { viewing })],
    ['empty', 'rubbed', () => assessRubOut(lab(tint(1)), { name: 'x', conditions: {} }, { viewing })],
    ['kinds-mixed', 'rubbed', () => assessRubOut(tint(1), lab(tint(1)), { viewing })],
    ['kinds-mixed', 'unrubbed', () => assessRubOut([tint(1), lab(tint(1))], tint(1), { viewing })],
    ['kinds-mixed', 'options.white', () => assessRubOut(tint(1), tint(1), { viewing, white: lab(WHITE) })],
    ['grid-mismatch', 'rubbed', () => assessRubOut(tint(1), shifted, { viewing })],
    ['grid-mismatch', 'unrubbed[1]', () => assessRubOut([tint(1), shifted], tint(1), { viewing })],
    ['grid-mismatch', 'options.white', () => assessRubOut(tint(1), tint(1), { viewing, white: shifted })],
    ['not-finite', 'rubbed.b', () => assessRubOut(lab(tint(1)), { L: 1, a: 2, b: Number.NaN }, { viewing })],
    ['invalid-limit', 'options.limit', () => assessRubOut(tint(1), tint(1), { viewing, limit: 0 })],
    ['invalid-limit', 'options.limit', () => assessRubOut(tint(1), tint(1), { viewing, limit: -1 })],
    ['invalid-option', 'options.repeatability', () => assessRubOut(tint(1), tint(1), { viewing, repeatability: -0.1 })],
    [
      'invalid-option',
      'options.thresholds.visible',
      () => assessRubOut(tint(1), tint(1), { viewing, thresholds: { visible: 0 } }),
    ],
    [
      'invalid-option',
      'options.thresholds.overScatter',
      () => assessRubOut(tint(1), tint(1), { viewing, thresholds: { overScatter: Number.POSITIVE_INFINITY } }),
    ],
    [
      'invalid-option',
      'options.surface.external',
      () => assessRubOut(tint(1), tint(1), { viewing, surface: { external: 2, internal: 0.6, specular: 'included' } }),
    ],
    [
      'conditions-mismatch',
      'specular of b',
      () =>
        assessRubOut(
          [reading('none', {}), reading('a', { specular: 'included' })],
          reading('b', { specular: 'excluded' }),
          {
            viewing,
          },
        ),
    ],
    [
      'conditions-mismatch',
      'specular of b',
      () => assessRubOut(reading('a', { specular: 'included' }), reading('b', { specular: 'excluded' }), { viewing }),
    ],
    [
      'conditions-mismatch',
      'geometry of b',
      () => assessRubOut(reading('a', { geometry: 'di:8°' }), reading('b', { geometry: '45°a:0°' }), { viewing }),
    ],
    [
      'conditions-mismatch',
      'viewing of a',
      () => assessRubOut(reading('a', { viewing: D65_2 }), reading('b', { viewing: D65_2 }), { viewing }),
    ],
  ])('%s at %s', (code, path, act) => {
    expect(act).toThrow(expect.objectContaining({ code, path }));
  });

  test('a condition that one reading states and another does not is no mismatch, whichever comes first', () => {
    const [bare, stated] = [reading('bare', {}), reading('stated', { specular: 'included' })];
    expect(assessRubOut(bare, stated, { viewing }).difference.dEab).toBe(0);
    expect(assessRubOut(stated, bare, { viewing }).difference.dEab).toBe(0);
  });

  test('readings with their conditions are taken where these agree, XYZ among them', () => {
    const xyz: Reading = { name: 'b', xyz: { X: 20, Y: 20, Z: 30 }, conditions: { viewing } };
    expect(assessRubOut(reading('a', { viewing }), xyz, { viewing }).readings).toBe('lab');
  });
});
