import { TintladderError } from '../../core/index.js';
import { assertObject, assertOneOf, assertOptions, refuseNonFinite } from '../../core/internal.js';
import type { Interval } from '../../decision/index.js';
import { variance } from '../../numeric/internal.js';

/** How a parameter may lie around its value: by its standard deviation, or anywhere within √3 of them alike. */
export const DISTRIBUTIONS = ['normal', 'rectangular'] as const;

/** One of {@link DISTRIBUTIONS}. */
export type Distribution = (typeof DISTRIBUTIONS)[number];

/** Something that is common to many readings and not known exactly: the tile, the black, the wavelength scale, k1, k2. */
export interface UncertainParameter {
  readonly value: number;
  readonly standardDeviation: number;
  /** @default 'normal' */
  readonly distribution?: Distribution | undefined;
  /**
   * Whether it is the same in all sessions, such as k1 of a paint, or set anew in each, such as the tile.
   *
   * @default false
   */
  readonly everywhere?: boolean | undefined;
}

/** What {@link propagateParameters} may be told. */
export interface PropagationOptions {
  /**
   * Sessions of the instrument that the figure draws on.
   *
   * @default 1
   */
  readonly sessions?: number | undefined;
  /** @default 2000 */
  readonly draws?: number | undefined;
  /** @default 1 */
  readonly seed?: number | undefined;
}

/** What {@link propagateParameters} gives. */
export interface Propagation {
  readonly kind: 'propagation';
  readonly version: 1;
  /** The figure at the values of the parameters. */
  readonly value: number;
  readonly standardDeviation: number;
  /** Shortest in which 95 % of the draws lie. */
  readonly interval: Interval;
  /** Change of the figure where one parameter alone is moved by its standard deviation in the last session, or everywhere. */
  readonly contributions: Readonly<Record<string, number>>;
  readonly draws: number;
  readonly seed: number;
}

/** Values of all parameters, for one session. */
export type SessionParameters = Readonly<Record<string, number>>;

/**
 * What parameters that are common to many readings do to a figure, by carrying them through the whole calculation.
 *
 * Within a session all readings share them, so that most cancels by itself in a difference; between sessions they are drawn independently. No
 * figure needs to be linear or a logarithm.
 *
 * @param figure - the figure for the parameters of every session, in their order
 * @param parameters - by name
 * @returns standard deviation and 95 % interval over seeded draws, the same on every machine
 * @throws TintladderError `wrong-type`; `invalid-option`; `not-finite` where the figure is no finite number for some draw
 * @example
 * const tile = { value: 1, standardDeviation: 0.003 };
 * propagateParameters(([session]) => (50 * session.tile) / (40 * session.tile), { tile }).standardDeviation // 0
 * @see JCGM 101:2008, chapters 5 to 7 and 5.3.4 for the shortest interval
 */
export function propagateParameters(
  figure: (sessions: readonly SessionParameters[]) => number,
  parameters: Readonly<Record<string, UncertainParameter>>,
  options: PropagationOptions = {},
): Propagation {
  if (typeof figure !== 'function') {
    throw new TintladderError('wrong-type', { path: 'figure', received: figure, expected: 'a function' });
  }
  const entries = checkedParameters(parameters);
  assertOptions(options, ['sessions', 'draws', 'seed']);
  const { sessions = 1, draws = 2000, seed = 1 } = options;
  wholeFrom(1, sessions, 'options.sessions');
  wholeFrom(100, draws, 'options.draws');
  wholeFrom(0, seed, 'options.seed');
  const at = (moved: (name: string, session: number) => number): number => {
    const given = Array.from({ length: sessions }, (_, session) =>
      Object.fromEntries(entries.map(([name, { value }]) => [name, value + moved(name, session)])),
    );
    const result = figure(given);
    refuseNonFinite(result, 'figure(parameters)');
    return result;
  };
  const value = at(() => 0);
  const normal = normalFrom(seed);
  const results = Array.from({ length: draws }, () => {
    const shifts = new Map(
      entries.map(([name, parameter]) => {
        const once = shiftOf(parameter, normal);
        return [
          name,
          Array.from({ length: sessions }, (_, i) =>
            i === 0 || parameter.everywhere ? once : shiftOf(parameter, normal),
          ),
        ];
      }),
    );
    return at((name, session) => shifts.get(name)?.[session] ?? 0);
  });
  const contributions = entries.map(([name, { standardDeviation, everywhere }]) => {
    const changed = at((of, i) => (of === name && (everywhere || i === sessions - 1) ? standardDeviation : 0));
    return [name, changed - value];
  });
  return {
    kind: 'propagation',
    version: 1,
    value,
    standardDeviation: Math.sqrt(variance(results)),
    interval: shortest(results),
    contributions: Object.fromEntries(contributions),
    draws,
    seed,
  };
}

function checkedParameters(parameters: Readonly<Record<string, UncertainParameter>>): [string, UncertainParameter][] {
  assertObject(parameters, 'parameters', 'parameters by name');
  const entries = Object.entries(parameters);
  if (entries.length === 0) {
    throw new TintladderError('empty', {
      path: 'parameters',
      received: parameters,
      expected: 'at least one parameter',
    });
  }
  for (const [name, parameter] of entries) {
    const path = `parameters.${name}`;
    assertObject(parameter, path);
    assertOptions(parameter, ['value', 'standardDeviation', 'distribution', 'everywhere'], path);
    refuseNonFinite(parameter.value, `${path}.value`);
    if (parameter.distribution !== undefined)
      assertOneOf(parameter.distribution, DISTRIBUTIONS, `${path}.distribution`);
    const { standardDeviation } = parameter;
    if (typeof standardDeviation === 'number' && standardDeviation >= 0 && standardDeviation < Infinity) continue;
    const fault = { path: `${path}.standardDeviation`, received: standardDeviation, expected: 'a number of 0 or more' };
    throw new TintladderError('invalid-option', fault);
  }
  return entries;
}

function wholeFrom(least: number, value: unknown, path: string): void {
  if (typeof value === 'number' && Number.isSafeInteger(value) && value >= least) return;
  throw new TintladderError('invalid-option', { path, received: value, expected: `a whole number from ${least} on` });
}

function shiftOf({ standardDeviation, distribution }: UncertainParameter, random: Random): number {
  return (
    standardDeviation * (distribution === 'rectangular' ? Math.sqrt(3) * (2 * random.uniform() - 1) : random.normal())
  );
}

interface Random {
  uniform(): number;
  normal(): number;
}

/** Seeded numbers: mulberry32, normal ones by Box and Muller. */
function normalFrom(seed: number): Random {
  let state = seed >>> 0;
  const uniform = () => {
    state = (state + 0x6d2b79f5) >>> 0;
    let t = Math.imul(state ^ (state >>> 15), 1 | state);
    t = (t + Math.imul(t ^ (t >>> 7), 61 | t)) ^ t;
    return ((t ^ (t >>> 14)) >>> 0) / 2 ** 32;
  };
  return {
    uniform,
    normal: () => Math.sqrt(-2 * Math.log(1 - uniform())) * Math.cos(2 * Math.PI * uniform()),
  };
}

function shortest(results: readonly number[]): Interval {
  const sorted = [...results].sort((a, b) => a - b);
  const inside = Math.ceil(0.95 * sorted.length);
  const starts = Array.from({ length: sorted.length - inside + 1 }, (_, i) => i);
  const width = (i: number) => sorted[i + inside - 1] - sorted[i];
  const from = starts.reduce((best, i) => (width(i) < width(best) ? i : best), 0);
  return { low: sorted[from], high: sorted[from + inside - 1] };
}
