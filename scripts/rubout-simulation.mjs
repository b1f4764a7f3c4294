// How often a rub-out assessment is right, on simulated films whose fault is known: prints the confusion matrix of the diagnosis
// and the coverage of the 95 % interval of ΔE*ab. Films are made by Kubelka-Munk from invented K and S; nothing is measured.
//
//   npm run build && node scripts/rubout-simulation.mjs [films a row, default 1000] [seed, default 20]
import { argv } from 'node:process';
import { fileURLToPath } from 'node:url';

const GRID = { start: 400, step: 10 };
const WAVELENGTHS = Array.from({ length: 31 }, (_, i) => GRID.start + i * GRID.step);
const SURFACE = { external: 0.04, internal: 0.6, specular: 'included' };

const bell = (centre, width) => (nm) => Math.exp(-(((nm - centre) / width) ** 2));
const edge = (centre, width) => (nm) => 1 / (1 + Math.exp((nm - centre) / width));

/** Invented pigments: absorption for each part, scattering for each part, in units of the white's scattering for each part. */
export const PIGMENTS = {
  blue: { K: (nm) => 25 * bell(620, 70)(nm) + 6 * bell(700, 60)(nm) + 0.6, S: 0.1 },
  red: { K: (nm) => 22 * bell(540, 45)(nm) + 8 * bell(430, 60)(nm) + 0.2, S: 0.2 },
  yellow: { K: (nm) => 18 * edge(485, 12)(nm) + 0.1, S: 0.4 },
  black: { K: () => 30, S: 0.05 },
};
const WHITE = { K: (nm) => 0.002 + 0.06 * edge(405, 5)(nm), S: 1 };

export const FAULTS = [
  'sound',
  'coloured-pigment-flocculated',
  'white-pigment-flocculated',
  'pigments-separated',
  'uneven-film',
  'one-of-two-flocculated',
];

/** Seeded random numbers: mulberry32, and normal ones by Box and Muller. */
export function randomFrom(seed) {
  let state = seed >>> 0;
  const uniform = () => {
    state = (state + 0x6d2b79f5) >>> 0;
    let t = state;
    t = Math.imul(t ^ (t >>> 15), t | 1);
    t ^= t + Math.imul(t ^ (t >>> 7), t | 61);
    return ((t ^ (t >>> 14)) >>> 0) / 4294967296;
  };
  const between = (low, high) => low + (high - low) * uniform();
  const normal = () => Math.sqrt(-2 * Math.log(1 - uniform())) * Math.cos(2 * Math.PI * uniform());
  const pick = (list) => list[Math.floor(uniform() * list.length)];
  return { uniform, between, normal, pick };
}

/**
 * K/S of a film of pigments in one part of white.
 *
 * @param parts - of each pigment
 * @param state - what flocculation leaves of the absorption of a pigment, and of the scattering of the white
 */
function ratios(parts, { white = 1, ...left } = {}) {
  return WAVELENGTHS.map((nm) => {
    let K = WHITE.K(nm);
    let S = WHITE.S * white;
    for (const [name, amount] of Object.entries(parts)) {
      K += amount * PIGMENTS[name].K(nm) * (left[name] ?? 1);
      S += amount * PIGMENTS[name].S;
    }
    return K / S;
  });
}

function measured(ratio) {
  const internal = 1 / (1 + ratio + Math.sqrt(ratio * ratio + 2 * ratio));
  const { external: k1, internal: k2 } = SURFACE;
  return k1 + ((1 - k1) * (1 - k2) * internal) / (1 - k2 * internal);
}

/** How a reading errs: the strength of the spot, the gloss of the spot, the slope of the instrument. */
const ERRORS = [
  (ratio, e) => measured(ratio * (1 + e)),
  (ratio, e) => measured(ratio) + e,
  (ratio, e, nm) => measured(ratio) * (1 + (e * (nm - 550)) / 150),
];

/**
 * One film with a fault: its unrubbed and rubbed spots, the truth, and what an assessment may be told.
 *
 * @param library - the package
 * @param options.noise - root mean square of ΔE*ab of one reading from the film's own colour
 */
export function simulateFilm(library, fault, { spots, noise, random }) {
  const { createSpectrum, deltaEab, labFromSpectrum, D65_10 } = library;
  const spectrum = (values) => createSpectrum({ ...GRID, values, scale: 'fraction' });
  const clean = (film) => labFromSpectrum(spectrum(film.map(measured)), D65_10);
  const several =
    fault === 'pigments-separated' ||
    fault === 'one-of-two-flocculated' ||
    (fault.endsWith('pigment-flocculated') && random.uniform() < 0.3);
  const names = several
    ? random.pick([
        ['blue', 'yellow'],
        ['red', 'yellow'],
        ['blue', 'red'],
        ['black', 'yellow'],
        ['black', 'blue'],
      ])
    : [random.pick(['blue', 'red', 'yellow', 'black'])];
  const parts = Object.fromEntries(names.map((name) => [name, random.between(0.01, 0.06)]));
  const sound = ratios(parts);
  let films = Array.from({ length: spots }, () => sound);
  const all = (film) => films.map(() => film);
  if (fault === 'coloured-pigment-flocculated') {
    const left = 1 - random.between(0.02, 0.3);
    films = all(ratios(parts, Object.fromEntries(names.map((name) => [name, left]))));
  } else if (fault === 'white-pigment-flocculated') {
    films = all(ratios(parts, { white: 1 - random.between(0.02, 0.2) }));
  } else if (fault === 'one-of-two-flocculated') {
    films = all(ratios(parts, { [random.pick(names)]: 1 - random.between(0.02, 0.3) }));
  } else if (fault === 'pigments-separated') {
    const [poor, rich] = random.uniform() < 0.5 ? names : [names[1], names[0]];
    const share = random.between(0.02, 0.15);
    const absorption = (name) => WAVELENGTHS.reduce((sum, nm) => sum + parts[name] * PIGMENTS[name].K(nm), 0);
    const gain = (share * absorption(poor)) / absorption(rich);
    films = all(ratios({ ...parts, [poor]: parts[poor] * (1 - share), [rich]: parts[rich] * (1 + gain) }));
  } else if (fault === 'uneven-film') {
    const spread = random.between(0.02, 0.2);
    films = films.map(() => ratios({ [names[0]]: parts[names[0]] * Math.exp(spread * random.normal()) }));
  }

  const rubbedLab = clean(sound);
  const labs = films.map(clean);
  const effect =
    fault === 'uneven-film'
      ? Math.max(...labs.flatMap((one) => labs.map((other) => deltaEab(one, other))))
      : deltaEab(labs[0], rubbedLab);
  const mean = (pick) => labs.reduce((sum, lab) => sum + pick(lab), 0) / spots;
  const unrubbedLab = { L: mean(({ L }) => L), a: mean(({ a }) => a), b: mean(({ b }) => b) };

  // Each kind of error is brought to a share of the noise by what a small one does to the colour.
  const weights = ERRORS.map(() => random.uniform());
  const length = Math.hypot(...weights);
  const sizes = ERRORS.map((err, i) => {
    const moved = labFromSpectrum(spectrum(sound.map((ratio, j) => err(ratio, 1e-3, WAVELENGTHS[j]))), D65_10);
    return ((noise * weights[i]) / length / deltaEab(rubbedLab, moved)) * 1e-3;
  });
  const read = (film) => {
    const errors = sizes.map((size) => size * random.normal());
    return spectrum(
      film.map((ratio, j) => {
        const nm = WAVELENGTHS[j];
        const others = ERRORS[1](ratio, errors[1]) + ERRORS[2](ratio, errors[2], nm) - 2 * measured(ratio);
        return ERRORS[0](ratio, errors[0]) + others;
      }),
    );
  };
  return {
    fault,
    effect,
    trueDifference: deltaEab(unrubbedLab, rubbedLab),
    unrubbed: films.map(read),
    rubbed: films.map(() => read(sound)),
    white: read(ratios({})),
    tint: several ? 'several-pigments' : 'single-pigment',
  };
}

/** Whether a result says what was wrong with the film. */
export function isRight({ fault }, { diagnosis, causes }) {
  if (fault === 'sound') return diagnosis === 'none';
  if (fault !== 'one-of-two-flocculated') return diagnosis === fault;
  const named = causes.map(({ cause }) => cause);
  return named.includes('coloured-pigment-flocculated') && named.includes('pigments-separated');
}

/**
 * Assesses `films` simulated films of each fault whose effect is at least `least` ΔE*ab.
 *
 * Half of them are told the white, half the surface, drawn anew each time, as users do.
 *
 * @returns for each fault: counts of each diagnosis, of right ones, of proven ones, of those called flocculated
 */
export function diagnose(library, { films, spots, least, seed, repeatability, faults = FAULTS, kind = 'spectra' }) {
  const random = randomFrom(seed);
  return faults.map((fault) => {
    const row = { fault, diagnoses: {}, right: 0, proven: 0, flocculated: 0, covered: 0, wrongProven: 0 };
    for (let made = 0; made < films; ) {
      const noise = random.between(0.03, 0.15);
      const film = simulateFilm(library, fault, { spots, noise, random });
      if (fault !== 'sound' && film.effect < least) continue;
      made++;
      const lab = (given) => (kind === 'lab' ? library.labFromSpectrum(given, library.D65_10) : given);
      const result = library.assessRubOut(film.unrubbed.map(lab), film.rubbed.map(lab), {
        viewing: library.D65_10,
        tint: film.tint,
        white: random.uniform() < 0.5 ? lab(film.white) : undefined,
        surface: random.uniform() < 0.5 ? SURFACE : undefined,
        repeatability: repeatability ? noise : undefined,
      });
      const { diagnosis, certainty, interval, causes } = result;
      row.diagnoses[diagnosis] = (row.diagnoses[diagnosis] ?? 0) + 1;
      const right = isRight(film, result);
      if (right) row.right++;
      if (certainty === 'proven' && diagnosis !== 'none') row.proven++;
      if (certainty === 'proven' && !right) row.wrongProven++;
      if (causes.some(({ cause }) => cause.endsWith('flocculated'))) row.flocculated++;
      const { trueDifference } = film;
      if (interval && interval.dEab.low <= trueDifference && trueDifference <= interval.dEab.high) row.covered++;
    }
    return row;
  });
}

/** Shapes of noise in L*, a*, b*: standard deviations along three axes that are turned at random, their squares adding up to 1. */
export const NOISE_SHAPES = {
  'even in all directions': [Math.sqrt(1 / 3), Math.sqrt(1 / 3), Math.sqrt(1 / 3)],
  'twice as wide one way': [Math.sqrt(4 / 6), Math.sqrt(1 / 6), Math.sqrt(1 / 6)],
  'nearly all one way': [Math.sqrt(0.9), Math.sqrt(0.05), Math.sqrt(0.05)],
};

/** How often the 95 % intervals of ΔE*ab and ΔE00 hold the true difference. */
export function coverage(library, { films, spots, trueDifference, shape, seed, repeatability }) {
  const { assessRubOut, deltaE2000, D65_10 } = library;
  const random = randomFrom(seed);
  let held = 0;
  let held2000 = 0;
  for (let made = 0; made < films; made++) {
    const noise = random.between(0.03, 0.15);
    const axes = randomAxes(random);
    const direction = randomAxes(random)[0];
    const from = { L: 60, a: -10, b: -30 };
    const to = moved(from, direction, trueDifference);
    const read = (lab) => shape.reduce((sum, width, i) => moved(sum, axes[i], width * noise * random.normal()), lab);
    const spotsOf = (lab) => Array.from({ length: spots }, () => read(lab));
    const { interval } = assessRubOut(spotsOf(from), spotsOf(to), {
      viewing: D65_10,
      repeatability: repeatability ? noise * shape[0] : undefined,
    });
    const true2000 = deltaE2000(from, to);
    if (interval.dEab.low <= trueDifference && trueDifference <= interval.dEab.high) held++;
    if (interval.dE2000.low <= true2000 && true2000 <= interval.dE2000.high) held2000++;
  }
  return { dEab: held / films, dE2000: held2000 / films };
}

const moved = ({ L, a, b }, [x, y, z], by) => ({ L: L + by * x, a: a + by * y, b: b + by * z });

/** Three perpendicular directions, evenly at random. */
function randomAxes(random) {
  const unit = (v) => v.map((value) => value / Math.hypot(...v));
  const draw = () => unit([random.normal(), random.normal(), random.normal()]);
  const x = draw();
  const other = draw();
  const along = x.reduce((sum, value, i) => sum + value * other[i], 0);
  const y = unit(other.map((value, i) => value - along * x[i]));
  return [x, y, [x[1] * y[2] - x[2] * y[1], x[2] * y[0] - x[0] * y[2], x[0] * y[1] - x[1] * y[0]]];
}

async function main() {
  const library = await import('tintladder');
  const films = Number(argv[2] ?? 1000);
  const seed = Number(argv[3] ?? 20);
  const percent = (count) => `${((100 * count) / films).toFixed(1)} %`.padStart(8);
  console.log(`${films} films a row, seed ${seed}, noise 0.03 to 0.15 ΔE*ab a reading\n`);
  for (const [spots, repeatability] of [[3], [1], [1, true], [2], [5]]) {
    const told = repeatability ? ', repeatability stated' : '';
    console.log(`Diagnosis of films with an effect of 1 ΔE*ab or more, ${spots} spot(s) a side${told}`);
    for (const row of diagnose(library, { films, spots, least: 1, seed, repeatability, faults: faultsFor(spots) })) {
      console.log(
        `  ${row.fault.padEnd(30)} right ${percent(row.right)}  proven ${percent(row.proven)}  proven but wrong ${percent(row.wrongProven)}` +
          `  called flocculated ${percent(row.flocculated)}`,
      );
      console.log(`    ${JSON.stringify(row.diagnoses)}`);
    }
  }
  console.log('From Lab, 3 spots a side');
  for (const row of diagnose(library, { films, spots: 3, least: 1, seed, kind: 'lab' })) {
    console.log(`  ${row.fault.padEnd(30)} right ${percent(row.right)}  ${JSON.stringify(row.diagnoses)}`);
  }
  console.log('\nCoverage of the 95 % intervals of ΔE*ab (ΔE00) at true ΔE*ab of 0, 0.2, 0.5, 1 and 2');
  for (const [name, shape] of Object.entries(NOISE_SHAPES)) {
    for (const spots of [2, 3, 4, 5]) {
      const cells = [0, 0.2, 0.5, 1, 2].map((trueDifference, i) => {
        const held = coverage(library, { films, spots, trueDifference, shape, seed: seed + i });
        return `${(100 * held.dEab).toFixed(1)} (${(100 * held.dE2000).toFixed(1)})`.padStart(13);
      });
      console.log(`  ${name.padEnd(24)} ${spots} spots ${cells.join('')}`);
    }
  }
}

/** One spot can't show an uneven film. */
function faultsFor(spots) {
  return spots === 1 ? FAULTS.filter((fault) => fault !== 'uneven-film') : FAULTS;
}

if (argv[1] === fileURLToPath(import.meta.url)) await main();
