// What a rub-out assessment makes of simulated films whose fault is known: which causes it leaves in question, which it rules out, whether the
// direction and the 95 % interval of ΔE*ab hold. Films come from rubout-films.mjs.
//
//   npm run simulate:rubout -- [films per row, default 400] [seed, default 20]
import { argv } from 'node:process';
import { fileURLToPath } from 'node:url';
import { CHART_FAULTS, randomFrom, simulateChartRubOut, simulateRubOut } from './rubout-films.mjs';

const COLOURED = 'coloured-pigment-flocculated';
const WHITE = 'white-pigment-flocculated';
const BOTH = 'both-flocculated';
const ONE = 'one-colorant-flocculated';
const SEPARATED = 'pigments-separated';
const SURFACE = 'surface-changed';
const THICKNESS = 'thickness-changed';
/** Causes that name a pigment by itself. */
const PIGMENTS = [COLOURED, WHITE, BOTH, ONE];

/** Rows of the table: a fault, the films it is put into, and how they are read. */
export const SCENARIOS = [
  ['sound, 1 drawdown', 'sound', { least: 0 }],
  ['sound, 3 drawdowns', 'sound', { drawdowns: 3, filmScatter: 0.02, least: 0 }],
  ['sound, noise 0.30, 2 spots', 'sound', { spots: 2, noise: 0.3, least: 0 }],
  ['sound, noise 0.30, 3 spots', 'sound', { spots: 3, noise: 0.3, least: 0 }],
  ['sound, noise 0.30, 5 spots', 'sound', { spots: 5, noise: 0.3, least: 0 }],
  ['sound, one spot outlying', 'sound', { spots: 4, outlier: true, noise: 0.15, least: 0 }],
  ['uneven, strength of a spot 10 %, 5 spots', 'sound', { spots: 5, spotScatter: 0.1, least: 0, depth: 'mid' }],
  ['drawdowns passed as spots, scatter 2 %', 'coloured flocculated', { spotScatter: 0.02, depth: 'mid', least: 1.5 }],
  ['sound, Lab', 'sound', { kind: 'lab', least: 0 }],
  ['coloured flocculated, mid', 'coloured flocculated', { depth: 'mid', specular: 'excluded' }],
  ['coloured flocculated, any', 'coloured flocculated', {}],
  ['coloured flocculated, 5 spots', 'coloured flocculated', { depth: 'mid', specular: 'excluded', spots: 5 }],
  [
    'coloured flocculated, 3 drawdowns',
    'coloured flocculated',
    { depth: 'mid', specular: 'excluded', drawdowns: 3, filmScatter: 0.02 },
  ],
  [
    'coloured flocculated, surface none',
    'coloured flocculated',
    { depth: 'mid', specular: 'excluded', told: { surface: 'none' } },
  ],
  ['coloured flocculated, 1 spot', 'coloured flocculated', { spots: 1 }],
  ['coloured flocculated, 1 spot, precision', 'coloured flocculated', { spots: 1, precision: true, depth: 'mid' }],
  ['coloured flocculated, Lab', 'coloured flocculated', { kind: 'lab', depth: 'mid' }],
  ['coloured flocculated, mass tone', 'coloured flocculated', { massTone: true, depth: 'mid' }],
  ['coloured flocculated, pale', 'coloured flocculated', { depth: 'pale' }],
  ['white flocculated, mid', 'white flocculated', { depth: 'mid', specular: 'excluded' }],
  ['white flocculated, 2-3 colorants', 'white flocculated', { colorants: 3 }],
  ['both flocculated', 'both flocculated', { depth: 'mid' }],
  ['one of several flocculated', 'one of several flocculated', { colorants: 2 }],
  ['one of several flocculated, 3', 'one of several flocculated', { colorants: 3 }],
  ['floating', 'floating', { colorants: 1 }],
  ['floating, 2-3 colorants', 'floating', { colorants: 2 }],
  ['floating, Lab', 'floating', { kind: 'lab' }],
  ['pigments exchanged', 'pigments exchanged', { colorants: 2 }],
  ['gloss, mid', 'gloss', { depth: 'mid' }],
  ['gloss, mid, one colorant', 'gloss', { depth: 'mid', colorants: 1 }],
  ['gloss, mid, 5 spots', 'gloss', { depth: 'mid', spots: 5 }],
  ['gloss, 3 drawdowns', 'gloss', { depth: 'mid', drawdowns: 3, filmScatter: 0.02 }],
  ['gloss, any', 'gloss', {}],
  ['gloss, Lab', 'gloss', { kind: 'lab' }],
  ['card showing through', 'card showing through', {}],
  ['card, film over black read', 'card showing through', { overBlack: true }],
  ['coloured flocculated, over black read', 'coloured flocculated over a card', { overBlack: true, depth: 'mid' }],
  ['flocculated, gloss changed', 'flocculated, gloss changed', { depth: 'mid' }],
];

const possible = ({ causes }) => causes.filter(({ standing }) => standing.startsWith('fits')).map(({ cause }) => cause);

/** Assesses simulated films of one scenario whose true ΔE*ab is at least `least` and counts what is said of them. */
export function diagnose(
  library,
  [name, fault, { least = 0.8, kind = 'spectra', told = {}, precision, ...options }],
  { films, seed },
) {
  const random = randomFrom(seed);
  const row = {
    name,
    films: 0,
    shown: 0,
    covered: 0,
    intervals: 0,
    nothing: 0,
    only: {},
    possible: {},
    excluded: {},
    direction: 0,
    proven: 0,
    uneven: 0,
    together: 0,
  };
  const count = (list, key) => {
    list[key] = (list[key] ?? 0) + 1;
  };
  for (let tries = 0; row.films < films && tries < 60 * films; tries++) {
    const noise = options.noise ?? random.log(0.03, 0.2);
    const film = simulateRubOut(library, fault, { ...options, noise, random });
    if (film.trueDifference < least) continue;
    row.films++;
    const as = (given) =>
      kind === 'lab' ? library.mapRepeated(given, (one) => library.labFromSpectrum(one, library.D65_10)) : given;
    const result = library.assessRubOut(as(film.unrubbed), as(film.rubbed), {
      viewing: library.D65_10,
      surface: film.surface,
      tint: film.tint,
      white: film.white && as(film.white),
      precision: precision ? { spot: noise } : undefined,
      ...(options.overBlack && { overBlack: film.overBlack }),
      ...told,
    });
    const left = possible(result);
    if (result.finding === 'difference') row.shown++;
    for (const cause of left) count(row.possible, cause);
    for (const { cause, standing, withSurface } of result.causes) {
      if (standing === 'ruled-out') count(row.excluded, cause);
      if (withSurface) row.together++;
    }
    if (left.length === 1) count(row.only, left[0]);
    if (result.causes.length > 0 && left.length === 0) row.nothing++;
    if (left.includes('uneven-film')) row.uneven++;
    const stronger = film.truth.to.L < film.truth.from.L;
    const towards = result.direction?.towards;
    if (towards === (stronger ? 'more-colour' : 'more-white')) row.direction++;
    if (result.direction?.certainty === 'proven') row.proven++;
    if (result.interval) {
      row.intervals++;
      const { low, high } = result.interval.dEab;
      if (low <= film.trueDifference && film.trueDifference <= high) row.covered++;
    }
  }
  return row;
}

/** Assesses rub-outs over a chart: how often the intervals of K and S hold the truth, and what is said of both pigments. */
export function diagnoseChart(library, fault, { films, seed }) {
  const random = randomFrom(seed);
  const row = { fault, films, absorption: 0, scattering: 0, coloured: {}, white: {} };
  for (let i = 0; i < films; i++) {
    const { unrubbed, rubbed, options, truth } = simulateChartRubOut(library, fault, { random });
    const result = library.assessChartRubOut(unrubbed, rubbed, options);
    for (const name of ['absorption', 'scattering']) {
      const { low = 0, high = 0 } = result[name]?.interval ?? {};
      if (low <= truth[name] && truth[name] <= high) row[name]++;
    }
    for (const side of ['coloured', 'white']) row[side][result[side]] = (row[side][result[side]] ?? 0) + 1;
  }
  return row;
}

/** The share of a row in which a cause is ruled out, in question, or the only one. */
export const share = (row, list, cause) => (row[list][cause] ?? 0) / row.films;

async function main() {
  const library = await import(process.env.RUBOUT_LIBRARY ?? 'tintladder');
  const films = Number(argv[2] ?? 400);
  const seed = Number(argv[3] ?? 20);
  const pattern = argv[4];
  const percent = (value) => `${(100 * value).toFixed(1)}`.padStart(6);
  console.log(
    `${films} films a row, seed ${seed}; %: of all films, in question (? ) and ruled out (- ) by cause; only: the one cause left`,
  );
  console.log(
    `${'films'.padEnd(40)} shown direc prove cover  none |  col?  whi?  bot?  one?  sep?  sur? unev? thic? |  col-  whi-  bot-  sur- | only`,
  );
  for (const scenario of SCENARIOS.filter(([name]) => !pattern || name.includes(pattern))) {
    const row = diagnose(library, scenario, { films, seed });
    const of = (count) => percent(count / row.films);
    const left = [COLOURED, WHITE, BOTH, ONE, SEPARATED, SURFACE, 'uneven-film', THICKNESS].map((cause) =>
      percent(share(row, 'possible', cause)),
    );
    const out = [COLOURED, WHITE, BOTH, SURFACE].map((cause) => percent(share(row, 'excluded', cause)));
    const only = Object.entries(row.only).map(([cause, n]) => `${cause.slice(0, 9)} ${of(n).trim()}`);
    console.log(
      `${`${row.name} (${row.films})`.padEnd(40)}${of(row.shown)}${of(row.direction)}${of(row.proven)}${percent(row.intervals ? row.covered / row.intervals : 0)}${of(row.nothing)} |${left.join('')} |${out.join('')} | ${only.join(', ')}`,
    );
  }
  for (const fault of CHART_FAULTS.filter((name) => !pattern || name.includes(pattern))) {
    const row = diagnoseChart(library, fault, { films, seed });
    console.log(
      `${fault.padEnd(40)} K held${percent(row.absorption / films)}  S held${percent(row.scattering / films)}  coloured ${JSON.stringify(row.coloured)}  white ${JSON.stringify(row.white)}`,
    );
  }
}

export { BOTH, COLOURED, ONE, PIGMENTS, SEPARATED, SURFACE, WHITE };

if (argv[1] === fileURLToPath(import.meta.url)) await main();
