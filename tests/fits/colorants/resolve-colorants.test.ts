import { describe, expect, test } from 'vitest';
import { createSpectrum, type Spectrum } from '../../../src/colorimetry/index.js';
import { addedKOverS, resolveColorants } from '../../../src/fits/index.js';
import { coverage, noiseFrom } from '../noise.js';
import { BLACK, BLUE, RED, spectrumOf, WHITE } from './invented-colorants.js';

const fault = (code: string, path: string) => expect.objectContaining({ code, path });
const SEED = 20260307;
const white = spectrumOf(WHITE);
const colorants = [
  { name: 'blue', kOverS: BLUE },
  { name: 'red', kOverS: RED },
];
/** A tint with relative changes of its blue, its red and the scattering of its white. */
const tint = (blue = 0, red = 0, scattering = 0): Spectrum =>
  spectrumOf(WHITE.map((w, i) => (w + 0.2 * (1 + blue) * BLUE[i] + 0.15 * (1 + red) * RED[i]) / (1 + scattering)));

describe('the change of a tint on rubbing', () => {
  test('is resolved into each colorant and the white', () => {
    const found = resolveColorants(tint(), tint(0.12, -0.07, 0.05), { colorants, white });
    expect(found.separable).toBe(true);
    expect(found.changes.map(({ name }) => name)).toEqual(['blue', 'red']);
    expect(found.changes[0].relative).toBeCloseTo(0.12, 10);
    expect(found.changes[1].relative).toBeCloseTo(-0.07, 10);
    expect(found.changes[0].amount).toBeCloseTo(0.2, 10);
    expect(found.white.relative).toBeCloseTo(0.05, 10);
    expect(found.residualReflectance).toBeLessThan(1e-12);
    expect(found.residualReflectanceOfWhiteAlone).toBeGreaterThan(1e-3);
    expect(found.warnings).toMatchObject([{ code: 'no-interval' }]);
  });

  test('in the white alone leaves nothing once the white is scaled', () => {
    const found = resolveColorants(tint(), tint(0, 0, 0.1), { colorants, white });
    expect(found.white.relative).toBeCloseTo(0.1, 10);
    expect(found.residualReflectanceOfWhiteAlone).toBeLessThan(1e-12);
  });

  test('is named both ways where white and colorants can not be told apart', () => {
    // a white that absorbs nothing
    const clean = (blue: number, red: number) =>
      spectrumOf(BLUE.map((k, i) => 0.2 * (1 + blue) * k + 0.15 * (1 + red) * RED[i]));
    const found = resolveColorants(clean(0, 0), clean(0.1, 0.1), { colorants });
    expect(found.separable).toBe(false);
    expect(found.changes[0].relative).toBeCloseTo(0.1, 10);
    expect(found.changes[1].relative).toBeCloseTo(0.1, 10);
    expect(found.white.relative).toBeCloseTo(1 / 1.1 - 1, 10);
    expect(Math.max(found.residualReflectance, found.residualReflectanceOfWhiteAlone)).toBeLessThan(1e-12);
    expect(found.warnings).toContainEqual(expect.objectContaining({ code: 'white-not-separable' }));
  });

  test('does not depend on the amount for which the K/S of a colorant is given', () => {
    const scaled = [{ name: 'blue', kOverS: BLUE.map((k) => 40 * k) }, colorants[1]];
    const found = resolveColorants(tint(), tint(0.12, -0.07), { colorants: scaled, white });
    expect(found.changes[0].relative).toBeCloseTo(0.12, 10);
    expect(found.changes[0].amount).toBeCloseTo(0.005, 10);
  });

  test('takes the K/S of a colorant from a tint with it alone', () => {
    const single = spectrumOf(WHITE.map((w, i) => w + 0.3 * BLUE[i]));
    addedKOverS(single, white).forEach((k, i) => void expect(k).toBeCloseTo(0.3 * BLUE[i], 12));
  });

  test(`has intervals that hold the truth in 93-97 % of 500 pairs of three spots (seed ${SEED})`, () => {
    const noise = noiseFrom(SEED);
    // each spot is off by 0.2 % of its level and each band by 0.0005
    const spot = (spectrum: Spectrum) => {
      const level = 1 + 2e-3 * noise();
      const values = spectrum.values.map((R) => R * level + 5e-4 * noise());
      return createSpectrum({ start: 400, step: 10, values, scale: 'fraction' });
    };
    const spots = (spectrum: Spectrum) => ({ spot: [spot(spectrum), spot(spectrum), spot(spectrum)] });
    const [before, after] = [tint(), tint(0.08, -0.04, 0.03)];
    const found = Array.from({ length: 1000 }, () =>
      resolveColorants(spots(before), spots(after), { colorants, white }),
    );
    const shares = [
      coverage(
        0.08,
        found.map(({ changes }) => changes[0].interval),
      ),
      coverage(
        -0.04,
        found.map(({ changes }) => changes[1].interval),
      ),
      coverage(
        0.03,
        found.map((result) => result.white.interval),
      ),
    ];
    for (const share of shares) {
      expect(share, shares.join(', ')).toBeGreaterThanOrEqual(93);
      expect(share, shares.join(', ')).toBeLessThanOrEqual(97);
    }
  }, 60_000);

  test('is found from drawdowns pair by pair, so that what both areas of a drawdown share does not count', () => {
    const own = [0.2, -0.2, 0.1];
    // Each drawdown holds another amount of blue; on rubbing it changes by 0.08 to 0.12 of the mean amount.
    const rubbed = [0.08, 0.1, 0.12];
    const mean = 1 + (0.2 - 0.2 + 0.1) / 3;
    const drawdowns = {
      unrubbed: { drawdown: own.map((blue) => tint(blue)) },
      rubbed: { drawdown: own.map((blue, i) => tint(blue + rubbed[i])) },
    };
    const { changes, repetition, claim } = resolveColorants(drawdowns.unrubbed, drawdowns.rubbed, { colorants, white });
    expect(changes[0].relative).toBeCloseTo(0.1 / mean, 8);
    // t(0.975; 2) = 4.3027 (NIST/SEMATECH e-Handbook, 1.3.6.7.2), standard deviation 0.02, three pairs
    expect((changes[0].interval?.high ?? 0) - changes[0].relative).toBeCloseTo(
      (4.3027 * 0.02) / Math.sqrt(3) / mean,
      5,
    );
    expect(repetition.rubbed.noun).toBe('3 drawdowns of one weigh-up');
    expect(claim).toBe('film');
  });

  test('counts every drawdown alike, however many spots it was read at', () => {
    const once = resolveColorants(
      { drawdown: [tint(0), tint(0.1)] },
      { drawdown: [tint(0.1), tint(0.3)] },
      { colorants, white },
    );
    const nested = resolveColorants(
      { drawdown: [{ spot: [tint(0), tint(0), tint(0)] }, tint(0.1)] },
      { drawdown: [{ spot: [tint(0.1), tint(0.1)] }, tint(0.3)] },
      { colorants, white: { spot: [white, white] } },
    );
    expect(nested.changes[0].relative).toBeCloseTo(once.changes[0].relative, 12);
    expect(nested.changes[0].interval?.low).toBeCloseTo(once.changes[0].interval?.low ?? Number.NaN, 12);
  });

  test('has no interval from duplicates of one reading, and says whose scatter it borrows', () => {
    const [a, b] = [tint(0.1), tint(0.11)];
    const twice = resolveColorants({ spot: [tint(), tint()] }, { spot: [a, a] }, { colorants, white });
    expect(twice.changes[0].interval).toBeUndefined();
    expect(twice.warnings).toMatchObject([
      { code: 'replicates-identical', path: 'unrubbed' },
      { code: 'replicates-identical', path: 'rubbed' },
    ]);
    const single = resolveColorants(tint(), { spot: [a, b] }, { colorants, white });
    expect(single.warnings).toMatchObject([{ code: 'scatter-borrowed', path: 'unrubbed' }]);
    expect(single.changes[0].interval).toBeDefined();
  });

  test('comes back from JSON as it was, from spectra that did the same', () => {
    const found = resolveColorants(tint(), tint(0.1), { colorants, white });
    const [from, to, base] = JSON.parse(JSON.stringify([tint(), tint(0.1), white]));
    expect(JSON.parse(JSON.stringify(found))).toEqual(found);
    expect(resolveColorants(from, to, { colorants, white: base })).toEqual(found);
    expect(found).toMatchObject({ kind: 'resolved-change', version: 1 });
  });

  test('is refused, naming the path, for colorants that can not be told apart or are not there', () => {
    const sum = { name: 'violet', kOverS: BLUE.map((k, i) => 2 * k + 3 * RED[i]) };
    expect(() => resolveColorants(tint(), tint(), { colorants: [...colorants, sum] })).toThrow(
      fault('ill-conditioned', 'options.colorants'),
    );
    const twins = [colorants[0], { name: 'another blue', kOverS: BLUE }];
    expect(() => resolveColorants(tint(), tint(), { colorants: twins })).toThrow(
      expect.objectContaining({ code: 'ill-conditioned', received: ['blue', 'another blue'] }),
    );
    const extra = [...colorants, { name: 'black', kOverS: BLACK.map((k, i) => k - 0.9 * BLUE[i]) }];
    const brighter = spectrumOf(
      WHITE.map((w, i) => w + 0.3 * BLUE[i] + 0.15 * RED[i] - 0.01 * (1 - 0.9 * BLUE[i])).map((F) => Math.max(F, 0)),
    );
    expect(() => resolveColorants(brighter, tint(), { colorants: extra, white })).toThrow(
      fault('no-absorption', 'options.colorants[2]'),
    );
  });

  test('is refused, naming the path, for readings that do not belong together', () => {
    const options = { colorants, white };
    const short = createSpectrum({ start: 400, step: 10, values: [0.5, 0.5], scale: 'fraction' });
    expect(() => resolveColorants({ spot: [] }, tint(), options)).toThrow(fault('empty', 'unrubbed.spot'));
    expect(() => resolveColorants(tint(), { spot: [] }, options)).toThrow(fault('empty', 'rubbed.spot'));
    expect(() => resolveColorants(tint(), { spot: [tint(), short] }, options)).toThrow(
      fault('grid-mismatch', 'rubbed.spot[1]'),
    );
    expect(() => resolveColorants(tint(), tint(), { colorants, white: short })).toThrow(
      fault('grid-mismatch', 'options.white'),
    );
    const list: unknown = [tint(), tint()];
    expect(() => resolveColorants(tint(), list as Spectrum, options)).toThrow(fault('repetition-unstated', 'rubbed'));
    const two = [tint(), tint()];
    expect(() => resolveColorants({ drawdown: two }, { spot: two }, options)).toThrow(fault('wrong-length', 'rubbed'));
    expect(() => resolveColorants({ drawdown: two }, { weighing: two }, options)).toThrow(
      fault('level-misplaced', 'rubbed'),
    );
    expect(() => resolveColorants(tint(), tint(), { colorants: [] })).toThrow(fault('empty', 'options.colorants'));
    expect(() => resolveColorants(tint(), tint(), { colorants: [{ name: 'blue', kOverS: [1] }] })).toThrow(
      fault('wrong-length', 'options.colorants[0].kOverS.length'),
    );
    const hole = [{ name: 'blue', kOverS: BLUE.map((k, i) => (i === 3 ? Number.NaN : k)) }];
    expect(() => resolveColorants(tint(), tint(), { colorants: hole })).toThrow(
      fault('not-finite', 'options.colorants[0].kOverS[3]'),
    );
  });
});
