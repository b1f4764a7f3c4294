import { describe, expect, test } from 'vitest';
import {
  createSpectrum,
  D65_10,
  deltaE2000,
  type Grid,
  ILLUMINANTS,
  type IlluminantName,
  labFromSpectrum,
  type Observer,
  whitePoint,
  xyzFromSpectrum,
} from '../../src/colorimetry/index.js';
import { summationWeights, type WeightingTable, weightingTable } from '../../src/colorimetry/weighting.js';
import { TEST_COLOURS } from '../published/cie-13-3-test-colours.js';
import { PIGMENTS } from './pigments.js';
import { plainLab, polynomial } from './plain-summation.js';

const GRIDS: readonly (Grid & { readonly label: string })[] = [
  { label: '360-780/1', start: 360, step: 1, count: 421 },
  { label: '360-780/2', start: 360, step: 2, count: 211 },
  { label: '360-780/5', start: 360, step: 5, count: 85 },
  { label: '360-780/10', start: 360, step: 10, count: 43 },
  { label: '360-750/10', start: 360, step: 10, count: 40 },
  { label: '400-700/10', start: 400, step: 10, count: 31 },
  { label: '400-700/20', start: 400, step: 20, count: 16 },
];
const VIEWINGS = (Object.keys(ILLUMINANTS) as IlluminantName[]).flatMap((illuminant) =>
  (['2', '10'] as Observer[]).map((observer) => ({ illuminant, observer })),
);

/** What two implementations may differ by, from the way each treats power between its tabulated values. */
function allowed({ illuminant }: { illuminant: string }, { step }: Grid): number {
  const atTen = illuminant.startsWith('FL') ? 0.1 : illuminant === 'C' ? 0.02 : 0.01;
  // At a cut end of 20 nm steps the two draw the last 20 nm apart: by 0.023 at most under daylight.
  return step > 10 ? 2.4 * atTen : atTen;
}

function read(reflectance: (nm: number) => number, { start, step, count }: Grid) {
  const values = Array.from({ length: count }, (_, i) => reflectance(start + i * step));
  return createSpectrum({ start, step, values, scale: 'fraction' });
}

/** The readings as a curve of fifth degree, constant beyond the first and last. */
function between(reflectance: (nm: number) => number, { start, step, count }: Grid) {
  const points = Array.from({ length: count }, (_, i) => {
    const nm = start + i * step;
    return [nm, reflectance(nm)] as const;
  });
  return polynomial(points, 6);
}

describe('CIELAB against a plain summation at 1 nm', () => {
  test.each(GRIDS)('simulated pigments on $label nm, all illuminants and observers', (grid) => {
    for (const { reflectance } of PIGMENTS) {
      const spectrum = read(reflectance, grid);
      const curve = between(reflectance, grid);
      for (const viewing of VIEWINGS) {
        const difference = deltaE2000(
          labFromSpectrum(spectrum, viewing),
          plainLab(curve, viewing.illuminant, viewing.observer),
        );
        expect(difference, `${viewing.illuminant}/${viewing.observer}`).toBeLessThanOrEqual(allowed(viewing, grid));
      }
    }
  });

  test('the CIE test colours at 5 nm over the whole range', () => {
    const grid = { start: 360, step: 5, count: 95 };
    for (const values of TEST_COLOURS) {
      const spectrum = createSpectrum({ start: 360, step: 5, values, scale: 'fraction' });
      const curve = between((nm) => values[(nm - 360) / 5], grid);
      for (const viewing of VIEWINGS) {
        const difference = deltaE2000(
          labFromSpectrum(spectrum, viewing),
          plainLab(curve, viewing.illuminant, viewing.observer),
        );
        expect(difference, viewing.illuminant).toBeLessThanOrEqual(allowed(viewing, grid));
      }
    }
  });

  test('10 nm readings of 400-700 nm stay within 0.04 of the whole curve under D65', () => {
    const grid = { start: 400, step: 10, count: 31 };
    for (const { name, reflectance } of PIGMENTS) {
      // What lies outside the readings is unknown to them, so the curve is taken as constant there.
      const clipped = (nm: number) => reflectance(Math.min(700, Math.max(400, nm)));
      const viewing = { illuminant: 'D65', observer: '10' } as const;
      const difference = deltaE2000(labFromSpectrum(read(reflectance, grid), viewing), plainLab(clipped, 'D65', '10'));
      expect(difference, name).toBeLessThan(0.04);
    }
  });
});

describe('between readings', () => {
  const parabola = (nm: number) => 0.2 + 0.6 * ((nm - 360) / 470) ** 2;

  // Cubic inside and quadratic at the ends (ASTM E2022), the weights lose nothing of a parabola; a natural spline, straight at its ends, does.
  test.each([2, 5, 10])('of %d nm a parabola over all wavelengths is followed exactly', (step) => {
    const whole = (step: number) =>
      xyzFromSpectrum(read(parabola, { start: 360, step, count: 470 / step + 1 }), D65_10);
    for (const axis of ['X', 'Y', 'Z'] as const) expect(whole(step)[axis]).toBeCloseTo(whole(1)[axis], 10);
  });
});

/**
 * The weights of ASTM E308 and E2022 written out for one table: for each nm the coefficients of the cubic (quadratic at the ends) through the
 * nearest readings of 360 to 780 nm, then those of missing readings added to the nearest one that exists.
 */
function foldedWeights(full: WeightingTable, { start, step, count }: Grid): number[] {
  const nodes = Array.from({ length: 420 / step + 1 }, (_, i) => 360 + i * step);
  const weights = nodes.map(() => 0);
  full.x.forEach((weight, k) => {
    const nm = Math.min(780, full.start + k * full.step);
    const left = Math.min(nodes.length - 2, Math.floor((nm - 360) / step));
    const used = [left - 1, left, left + 1, left + 2].filter((i) => i >= 0 && i < nodes.length);
    for (const i of used) {
      const others = used.filter((j) => j !== i);
      weights[i] += others.reduce((product, j) => (product * (nm - nodes[j])) / (nodes[i] - nodes[j]), weight);
    }
  });
  const [first, last] = [(start - 360) / step, (start - 360) / step + count - 1];
  const folded = weights.slice(first, last + 1);
  folded[0] += weights.slice(0, first).reduce((sum, weight) => sum + weight, 0);
  folded[count - 1] += weights.slice(last + 1).reduce((sum, weight) => sum + weight, 0);
  return folded;
}

describe('readings that stop short of 360 or 780 nm', () => {
  test.each([
    { start: 400, step: 10, count: 31 },
    { start: 360, step: 10, count: 40 },
    { start: 380, step: 5, count: 71 },
    { start: 420, step: 2, count: 130 },
  ])('$start nm, $count every $step nm: the table for 360-780 nm is made first, then folded', (grid) => {
    for (const viewing of VIEWINGS) {
      const { x } = weightingTable(viewing, grid);
      const expected = foldedWeights(summationWeights(viewing), grid);
      // The sums of a hundred and more terms differ in their order.
      x.forEach((weight, i) => {
        expect(Math.abs(weight - expected[i]), `${viewing.illuminant} band ${i}`).toBeLessThanOrEqual(1e-12);
      });
    }
  });

  test('D65/10 differs from a 1 nm sum of the pigments by a median of at most 0.0045', () => {
    const grid = { start: 400, step: 10, count: 31 };
    const differences = PIGMENTS.map(({ reflectance }) =>
      deltaE2000(labFromSpectrum(read(reflectance, grid), D65_10), plainLab(reflectance, 'D65', '10')),
    ).sort((a, b) => a - b);
    expect(differences[5]).toBeLessThanOrEqual(0.0045);
  });

  test('a grid that does not meet 360 or 780 nm is extended in its own steps', () => {
    const { x, white } = weightingTable(D65_10, { start: 405, step: 10, count: 30 });
    expect(x.reduce((sum, weight) => sum + weight, 0)).toBeCloseTo(white.X, 10);
  });
});

describe('20 nm readings', () => {
  const grid = { start: 400, step: 20, count: 16 };
  const { values } = read(PIGMENTS[7].reflectance, grid);

  test('as ASTM E308 has them: the readings halved by the local cubic, then the weights of 10 nm', () => {
    // 360 and 380 nm, 720 to 780 nm were not read and count as the nearest reading.
    const whole = [values[0], values[0], ...values, ...Array<number>(4).fill(values[15])];
    const cubic = (i: number) => {
      const used = [i - 1, i, i + 1, i + 2].filter((j) => j >= 0 && j < whole.length);
      return used.reduce(
        (sum, j) =>
          sum + used.reduce((product, m) => (m === j ? product : (product * (i + 0.5 - m)) / (j - m)), whole[j]),
        0,
      );
    };
    const halved = whole.flatMap((value, i) => (i + 1 < whole.length ? [value, cubic(i)] : [value]));
    const table = weightingTable(D65_10, { start: 360, step: 10, count: 43 });
    const expected = halved.reduce((sum, value, i) => sum + value * table.y[i], 0);
    const { y } = weightingTable(D65_10, grid, 'astm-e308');
    expect(values.reduce((sum, value, i) => sum + value * y[i], 0)).toBeCloseTo(expected, 11);
  });

  test('by spline are nearer to a 1 nm sum, by a factor of 3 in the median under D65/10', () => {
    const median = (wideStep: 'spline' | 'astm-e308') =>
      PIGMENTS.map(({ reflectance }) => {
        const spectrum = read(reflectance, grid);
        return deltaE2000(labFromSpectrum(spectrum, D65_10, { wideStep }), plainLab(reflectance, 'D65', '10'));
      }).sort((a, b) => a - b)[5];
    expect(median('astm-e308') / median('spline')).toBeGreaterThan(3);
  });

  test.each([undefined, 'spline'] as const)('are splined by default (%s)', (wideStep) => {
    const spectrum = read(PIGMENTS[7].reflectance, grid);
    expect(xyzFromSpectrum(spectrum, D65_10, { wideStep })).toEqual(xyzFromSpectrum(spectrum, D65_10));
  });

  test('refuse another way', () => {
    const spectrum = read(PIGMENTS[7].reflectance, grid);
    expect(() => xyzFromSpectrum(spectrum, D65_10, { wideStep: 'linear' as 'spline' })).toThrow(
      expect.objectContaining({ code: 'invalid-option', path: 'options.wideStep' }),
    );
  });
});

describe('the white', () => {
  test.each(GRIDS)('is the same on $label nm, and the perfect diffuser has it', (grid) => {
    for (const viewing of VIEWINGS) {
      const white = whitePoint(viewing);
      const diffuser = xyzFromSpectrum(
        read(() => 1, grid),
        viewing,
      );
      for (const axis of ['X', 'Y', 'Z'] as const) expect(diffuser[axis]).toBeCloseTo(white[axis], 10);
    }
  });

  test('tristimulus values are proportional to reflectance', () => {
    const grid = GRIDS[5];
    const viewing = { illuminant: 'FL11', observer: '2' } as const;
    const full = xyzFromSpectrum(read(PIGMENTS[6].reflectance, grid), viewing);
    const half = xyzFromSpectrum(
      read((nm) => PIGMENTS[6].reflectance(nm) / 2, grid),
      viewing,
    );
    expect(half.Y).toBeCloseTo(full.Y / 2, 12);
  });
});

describe('a caller’s own illuminant', () => {
  const values = Array.from({ length: 61 }, (_, i) => 50 + i);
  const own = { name: 'ramp', start: 380, step: 5, values };
  const grey = createSpectrum({ start: 400, step: 10, values: Array(20).fill(0.5), scale: 'fraction' });

  test('serves readings inside its range, up to both ends', () => {
    expect(xyzFromSpectrum(grey, { illuminant: own, observer: '10' }).Y).toBeCloseTo(50, 10);
    // The readings end at 590 nm.
    const barely = { ...own, start: 400, values: values.slice(0, 39) };
    expect(xyzFromSpectrum(grey, { illuminant: barely, observer: '10' }).Y).toBeCloseTo(50, 10);
  });

  test('as a table of D65 gives what the name gives', () => {
    const flat = { name: 'flat', start: 360, step: 1, values: new Float64Array(471).fill(7) };
    for (const observer of ['2', '10'] as const) {
      expect(whitePoint({ illuminant: flat, observer }).X).toBeCloseTo(whitePoint({ illuminant: 'E', observer }).X, 10);
    }
  });

  test.each([
    ['illuminant-range', { ...own, start: 405 }, 'illuminant ramp'],
    ['illuminant-range', { ...own, values: values.slice(0, 20) }, 'illuminant ramp'],
    ['illuminant-range', { ...own, values: values.slice(0, 42) }, 'illuminant ramp'],
    ['grid-invalid', { ...own, step: 0 }, 'viewing.illuminant'],
    ['grid-invalid', { ...own, start: 380.5, kind: 'lines' as const }, 'viewing.illuminant'],
    ['not-finite', { ...own, values: [...values.slice(1), Number.NaN] }, 'viewing.illuminant at 680 nm'],
    ['out-of-range', { ...own, values: [...values.slice(1), -1] }, 'viewing.illuminant at 680 nm'],
    ['out-of-range', { ...own, values: values.map(() => 0) }, 'viewing.illuminant'],
  ] as const)('%s is refused', (code, illuminant, path) => {
    expect(() => xyzFromSpectrum(grey, { illuminant, observer: '10' })).toThrow(
      expect.objectContaining({ code, path }),
    );
  });
});

describe('unknown conditions', () => {
  const grey = createSpectrum({ start: 400, step: 10, values: [0.5, 0.5], scale: 'fraction' });

  const under = (illuminant: unknown) => () =>
    xyzFromSpectrum(grey, { illuminant: illuminant as 'D65', observer: '10' });

  test.each(['D60', 'constructor', null, undefined])('the illuminant %s does not exist', (received) => {
    const fault = { code: 'unknown-illuminant', path: 'viewing.illuminant', received };
    expect(under(received)).toThrow(expect.objectContaining(fault));
  });

  test('those that do are listed', () => {
    expect(under('D60')).toThrow(Object.keys(ILLUMINANTS).join(', '));
  });

  test('so does an observer', () => {
    const viewing = { illuminant: 'D65' as const, observer: 10 as unknown as '10' };
    expect(() => whitePoint(viewing)).toThrow(
      expect.objectContaining({ code: 'unknown-observer', path: 'viewing.observer' }),
    );
  });
});
