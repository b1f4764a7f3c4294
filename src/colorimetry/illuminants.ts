import { parseColumns } from './columns.js';
import { daylightIlluminant } from './daylight.js';
import { LONGEST_WAVELENGTH, SHORTEST_WAVELENGTH } from './grid.js';
import type { Illuminant } from './illuminant.js';
import { FLUORESCENT_LAMPS } from './tables/fluorescent-lamps.js';
import { ILLUMINANT_C } from './tables/illuminant-c.js';
import { ILLUMINANT_D65 } from './tables/illuminant-d65.js';

/** What there is to know of an illuminant that has a name. */
export interface NamedIlluminant {
  readonly description: string;
  /** Where its figures come from. */
  readonly source: string;
  /** Other names that files give it. */
  readonly aliases: readonly string[];
  /** Its relative spectral power; made anew in every call. */
  readonly power: () => Illuminant;
}

const CIE = 'CIE 015:2018';

/** The nominal names date from c2 = 1.4380e-2 m K; today's is 1.4388e-2. */
function daylight(nominal: number): NamedIlluminant {
  const temperature = (nominal * 1.4388) / 1.438;
  return {
    description: `daylight, ${Math.round(temperature)} K`,
    source: `${CIE}, daylight components`,
    aliases: [],
    power: () => daylightIlluminant(temperature),
  };
}

/** CIE 15.2-1986 called the lamps F1 to F12. */
function lamp(number: number, description: string): NamedIlluminant {
  return {
    description,
    source: `${CIE}, fluorescent lamps (figures of CIE 15.2-1986)`,
    aliases: [`F${number}`],
    power: () => fromTable(`FL${number}`, FLUORESCENT_LAMPS, number, 'lines'),
  };
}

/** The registry: an illuminant more is its table and one entry here; its name then is one of {@link IlluminantName}, and files may give it. */
const REGISTRY = /* @__PURE__ */ (() => ({
  A: {
    description: 'incandescent lamp, 2856 K',
    source: `${CIE}; ISO/CIE 11664-2, by its formula`,
    aliases: [],
    power: () => everyNanometre('A', planck),
  },
  C: {
    description: 'average daylight of 1931, 6774 K',
    source: `${CIE} (figures of CIE 1931)`,
    aliases: [],
    power: () => fromTable('C', ILLUMINANT_C, 1, 'lines'),
  },
  D50: daylight(5000),
  D55: daylight(5500),
  D65: {
    description: 'daylight, 6504 K',
    source: `${CIE}; ISO/CIE 11664-2, table`,
    aliases: [],
    power: () => fromTable('D65', ILLUMINANT_D65, 1, 'continuous'),
  },
  D75: daylight(7500),
  E: { description: 'equal energy', source: CIE, aliases: [], power: () => everyNanometre('E', () => 100) },
  FL1: lamp(1, 'daylight fluorescent lamp'),
  FL2: lamp(2, 'cool white fluorescent lamp'),
  FL3: lamp(3, 'white fluorescent lamp'),
  FL4: lamp(4, 'warm white fluorescent lamp'),
  FL5: lamp(5, 'daylight fluorescent lamp'),
  FL6: lamp(6, 'light white fluorescent lamp'),
  FL7: lamp(7, 'broad-band daylight fluorescent lamp'),
  FL8: lamp(8, 'broad-band fluorescent lamp, 5000 K'),
  FL9: lamp(9, 'broad-band cool white fluorescent lamp'),
  FL10: lamp(10, 'narrow-band fluorescent lamp, 5000 K'),
  FL11: lamp(11, 'narrow-band fluorescent lamp, 4000 K'),
  FL12: lamp(12, 'narrow-band fluorescent lamp, 3000 K'),
}))();

/** The illuminants that tintladder knows by name; {@link ILLUMINANTS} says what each is. */
export type IlluminantName = keyof typeof REGISTRY;

/**
 * What each named illuminant is, where its figures come from, and its power.
 *
 * @example ILLUMINANTS.FL2.description // 'cool white fluorescent lamp'
 * @example Object.keys(ILLUMINANTS).length // 19
 */
export const ILLUMINANTS: Readonly<Record<IlluminantName, NamedIlluminant>> = REGISTRY;

function fromTable(name: string, table: string, column: number, kind: 'continuous' | 'lines'): Illuminant {
  const columns = parseColumns(table);
  const [[start, next]] = columns;
  return { name, start, step: next - start, values: columns[column], kind };
}

function everyNanometre(name: string, power: (wavelength: number) => number): Illuminant {
  const values = Array.from({ length: LONGEST_WAVELENGTH - SHORTEST_WAVELENGTH + 1 }, (_, i) =>
    power(SHORTEST_WAVELENGTH + i),
  );
  return { name, start: SHORTEST_WAVELENGTH, step: 1, values };
}

/**
 * CIE standard illuminant A: Planck's form with c2 = 1.435e-2 m K and T = 2848 K, 100 at 560 nm.
 *
 * @see CIE 015:2018; ISO/CIE 11664-2
 */
function planck(wavelength: number): number {
  const exponent = 1.435e7 / 2848;
  return 100 * (560 / wavelength) ** 5 * (Math.expm1(exponent / 560) / Math.expm1(exponent / wavelength));
}
