// A second implementation of CIE 015, written apart from the package: everything at 1 nm by local fifth-degree polynomials, one loop.
import { DAYLIGHT_COMPONENTS } from '../../src/colorimetry/tables/daylight-components.js';
import { FLUORESCENT_LAMPS } from '../../src/colorimetry/tables/fluorescent-lamps.js';
import { ILLUMINANT_C } from '../../src/colorimetry/tables/illuminant-c.js';
import { ILLUMINANT_D65 } from '../../src/colorimetry/tables/illuminant-d65.js';
import { OBSERVER_1931 } from '../../src/colorimetry/tables/observer-1931.js';
import { OBSERVER_1964 } from '../../src/colorimetry/tables/observer-1964.js';

type Curve = (nm: number) => number;

function column(table: string, index: number): [number, number][] {
  return table
    .trim()
    .split('\n')
    .map((line) => line.split(' '))
    .map((cells) => [Number(cells[0]), Number(cells[index])]);
}

/** Lagrange polynomial through the (up to) `count` points nearest to the wavelength; flat outside the points. */
export function polynomial(points: readonly (readonly [number, number])[], count: number): Curve {
  const first = points[0][0];
  const step = points[1][0] - first;
  const last = points.length - 1;
  return (nm) => {
    if (nm <= first) return points[0][1];
    if (nm >= points[last][0]) return points[last][1];
    const left = Math.floor((nm - first) / step) - count / 2 + 1;
    const from = Math.max(0, Math.min(left, points.length - count));
    const used = points.slice(from, from + count);
    return used.reduce(
      (sum, [x, y]) =>
        sum + used.reduce((product, [other]) => (other === x ? product : (product * (nm - other)) / (x - other)), y),
      0,
    );
  };
}

const zeroOutside =
  (curve: Curve, from: number, to: number): Curve =>
  (nm) =>
    nm < from || nm > to ? 0 : curve(nm);

/** A daylight phase with M1 and M2 left unrounded; its temperature is the nominal one in today's value of c2. */
function daylight(nominal: number): Curve {
  const T = (nominal * 1.4388) / 1.438;
  const x =
    T <= 7000
      ? -4.607e9 / T ** 3 + 2.9678e6 / T ** 2 + 0.09911e3 / T + 0.244063
      : -2.0064e9 / T ** 3 + 1.9018e6 / T ** 2 + 0.24748e3 / T + 0.23704;
  const y = -3 * x ** 2 + 2.87 * x - 0.275;
  const M = 0.0241 + 0.2562 * x - 0.7341 * y;
  const M1 = (-1.3515 - 1.7703 * x + 5.9114 * y) / M;
  const M2 = (0.03 - 31.4424 * x + 30.0717 * y) / M;
  const [S0, S1, S2] = [1, 2, 3].map((i) => polynomial(column(DAYLIGHT_COMPONENTS, i), 2));
  return (nm) => S0(nm) + M1 * S1(nm) + M2 * S2(nm);
}

const lamp = (number: number) => zeroOutside(polynomial(column(FLUORESCENT_LAMPS, number), 2), 380, 780);

const POWER: Record<string, Curve> = {
  A: (nm) => 100 * (560 / nm) ** 5 * ((Math.exp(1.435e7 / (2848 * 560)) - 1) / (Math.exp(1.435e7 / (2848 * nm)) - 1)),
  C: zeroOutside(polynomial(column(ILLUMINANT_C, 1), 2), 380, 780),
  D50: daylight(5000),
  D55: daylight(5500),
  D65: polynomial(column(ILLUMINANT_D65, 1), 2),
  D75: daylight(7500),
  E: () => 1,
  ...Object.fromEntries(Array.from({ length: 12 }, (_, i) => [`FL${i + 1}`, lamp(i + 1)])),
};

const wavelengths = Array.from({ length: 471 }, (_, i) => 360 + i);
const weights = new Map<string, number[][]>();
const sampled = new WeakMap<Curve, number[]>();

/** CIELAB of a reflectance curve, by plain summation at 1 nm over 360-830 nm. */
export function plainLab(
  reflectance: Curve,
  illuminant: string,
  observer: '2' | '10',
): { L: number; a: number; b: number } {
  const key = `${illuminant} ${observer}`;
  let table = weights.get(key);
  if (!table) {
    const matching = [1, 2, 3].map((i) => polynomial(column(observer === '2' ? OBSERVER_1931 : OBSERVER_1964, i), 6));
    table = matching.map((curve) => wavelengths.map((nm) => POWER[illuminant](nm) * curve(nm)));
    weights.set(key, table);
  }
  let R = sampled.get(reflectance);
  if (!R) {
    R = wavelengths.map(reflectance);
    sampled.set(reflectance, R);
  }
  const values = R;
  const [fx, fy, fz] = table.map((row) => {
    const ratio = row.reduce((sum, w, i) => sum + w * values[i], 0) / row.reduce((sum, w) => sum + w, 0);
    return ratio > 216 / 24389 ? ratio ** (1 / 3) : ((24389 / 27) * ratio + 16) / 116;
  });
  return { L: 116 * fy - 16, a: 500 * (fx - fy), b: 200 * (fy - fz) };
}
