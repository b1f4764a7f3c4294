import { type Grid, type Viewing, whitePoint, type Xyz } from '../../colorimetry/index.js';
import { weightingTable } from '../../colorimetry/internal.js';
import { TintladderError } from '../../core/index.js';

/**
 * The bands in which absorption is added: the wavelengths of a grid, or X, Y and Z as three broad bands when no spectra
 * are at hand. With their weights, reflectances of the bands give tristimulus values.
 */
export interface Bands {
  readonly count: number;
  /** As messages name a band: `550 nm`, `Y`. */
  readonly nameOf: (band: number) => string;
  /** First and last band that the absorption maximum and the Kubelka-Munk sum look at. */
  readonly first: number;
  readonly last: number;
  readonly x: Float64Array;
  readonly y: Float64Array;
  readonly z: Float64Array;
  readonly white: Xyz;
}

/** The range in nm of the absorption maximum and the Kubelka-Munk sum; rutile's own band edge lies below it. */
export const FIRST_WAVELENGTH = 400;
export const LAST_WAVELENGTH = 700;

/** Grids such as 10/3 nm add up with rounding. */
const ROUNDING = 1e-6;

/**
 * The wavelengths of a grid as bands.
 *
 * @throws TintladderError `grid-invalid` if no wavelength lies within 400-700 nm; what `weightingTable` throws
 */
export function spectralBands(viewing: Viewing, grid: Grid): Bands {
  const { x, y, z, white } = weightingTable(viewing, grid);
  const wavelength = (band: number) => grid.start + band * grid.step;
  const inside = Array.from({ length: grid.count }, (_, band) => band).filter(
    (band) => wavelength(band) >= FIRST_WAVELENGTH - ROUNDING && wavelength(band) <= LAST_WAVELENGTH + ROUNDING,
  );
  const [first] = inside;
  const last = inside.at(-1);
  if (last === undefined) {
    throw new TintladderError('grid-invalid', {
      path: 'grid.start',
      received: grid.start,
      expected: `a grid with readings between ${FIRST_WAVELENGTH} and ${LAST_WAVELENGTH} nm`,
    });
  }
  return { count: grid.count, nameOf: (band) => `${wavelength(band)} nm`, first, last, x, y, z, white };
}

/** X, Y and Z as three broad bands, each a reflectance relative to the white point. */
export function tristimulusBands(viewing: Viewing): Bands {
  const white = whitePoint(viewing);
  return {
    count: 3,
    nameOf: (band) => 'XYZ'.charAt(band),
    first: 0,
    last: 2,
    x: Float64Array.of(white.X, 0, 0),
    y: Float64Array.of(0, white.Y, 0),
    z: Float64Array.of(0, 0, white.Z),
    white,
  };
}

/** Tristimulus values of the reflectances of the bands. */
export function tristimulusOf({ x, y, z }: Bands, reflectances: Float64Array): Xyz {
  let X = 0;
  let Y = 0;
  let Z = 0;
  for (let i = 0; i < reflectances.length; i++) {
    X += x[i] * reflectances[i];
    Y += y[i] * reflectances[i];
    Z += z[i] * reflectances[i];
  }
  return { X, Y, Z };
}

/** Names of bands in order, neighbours drawn together: `400 nm to 430 nm, 610 nm`. */
export function listBands({ nameOf }: Bands, list: readonly number[]): string {
  const runs: [number, number][] = [];
  for (const band of list) {
    const run = runs.at(-1);
    if (run && band === run[1] + 1) run[1] = band;
    else runs.push([band, band]);
  }
  return runs.map(([from, to]) => (from === to ? nameOf(from) : `${nameOf(from)} to ${nameOf(to)}`)).join(', ');
}
