// An independent trial of the verdicts of assessRubOut, written from its public documentation alone. Films are drawn at random by Kubelka-Munk with
// a Saunderson surface, read with noise of our own choice, once as spectra and once as Lab, and what is said of them is counted against the truth.
// `node scripts/trial-rub-out.mjs [films] [seed]` after `npm run build`; films of each kind.
import { createSpectrum, D65_10, labFromSpectrum } from '../dist/colorimetry.js';
import { assessRubOut } from '../dist/rubout.js';

const films = Number(process.argv[2] ?? 250);
const seed = Number(process.argv[3] ?? 20261125);
const GRID = Array.from({ length: 31 }, (_, i) => 400 + 10 * i);
const EXTERNAL = 0.04;
const STATED_INTERNAL = 0.6;
const FLOCCULATION = [
  'coloured-pigment-flocculated',
  'white-pigment-flocculated',
  'both-flocculated',
  'one-colorant-flocculated',
];
const KINDS = {
  sound: [],
  coloured: ['coloured-pigment-flocculated', 'one-colorant-flocculated'],
  white: ['white-pigment-flocculated'],
  both: ['both-flocculated'],
  floating: ['pigments-separated'],
  surface: ['surface-changed'],
  'card, black read': ['thickness-changed'],
  'card, white only': ['thickness-changed'],
};
const DEPTHS = ['pale', 'mid', 'mass'];

// --- chance -------------------------------------------------------------------------------------------------------------------------------
let state = seed >>> 0;
const random = () => {
  state = (state + 0x6d2b79f5) | 0;
  let t = Math.imul(state ^ (state >>> 15), 1 | state);
  t = (t + Math.imul(t ^ (t >>> 7), 61 | t)) ^ t;
  return ((t ^ (t >>> 14)) >>> 0) / 4294967296;
};
const between = (low, high) => low + (high - low) * random();
const logBetween = (low, high) => Math.exp(between(Math.log(low), Math.log(high)));
const chance = (share) => random() < share;
const normal = (deviation = 1) => deviation * Math.sqrt(-2 * Math.log(1 - random())) * Math.cos(2 * Math.PI * random());
const oneOf = (list) => list[Math.floor(random() * list.length)];

// --- paint --------------------------------------------------------------------------------------------------------------------------------
const bell = (nm, at, width) => Math.exp(-(((nm - at) / width) ** 2));
const edge = (nm, at, width) => 1 / (1 + Math.exp((nm - at) / width));
/** K with a highest value of 1 and S of a colorant, by the shapes of organic, oxide and black pigments. */
const drawColorant = () => {
  const shape = oneOf(['band', 'two-bands', 'edge', 'black']);
  const [at, width, second, share] = [between(430, 660), between(25, 70), between(400, 700), between(0.1, 0.6)];
  const floor = between(0.005, 0.06);
  const absorbs = {
    band: (nm) => bell(nm, at, width) + floor,
    'two-bands': (nm) => bell(nm, at, width) + share * bell(nm, second, 40) + floor,
    edge: (nm) => edge(nm, at, 14) + floor,
    black: (nm) => 0.85 + (0.15 * (700 - nm)) / 300,
  }[shape];
  const raw = GRID.map(absorbs);
  const top = Math.max(...raw);
  const scatter = logBetween(0.02, 0.25);
  const slope = between(0.3, 1.2);
  return {
    K: raw.map((k) => k / top),
    S: GRID.map((nm) => scatter * (550 / nm) ** slope),
  };
};
const drawWhite = () => {
  const floor = between(0.0008, 0.003);
  const start = between(400, 408);
  return {
    K: GRID.map((nm) => floor + 0.06 * edge(nm, start, 5)),
    S: GRID.map((nm) => 1 - 0.25 * ((nm - 400) / 300)),
  };
};
/** Clusters absorb less, most where they absorb most (sieve effect) with `sieve` above 0, and scatter a little less. */
const absorptionLeft = (k, bound, sieve) => 1 - bound * (sieve === 0 ? 1 : 1 - sieve + sieve * k);
const mix = (recipe, { coloured = [], white = 0, local = 1, enrich = [], thinWhite = 1 } = {}) => {
  const K = GRID.map(() => 0);
  const S = GRID.map(() => 0);
  for (let i = 0; i < GRID.length; i++) {
    const red = (GRID[i] - 550) / 150;
    const whiteLeft = (1 - white * (1 - recipe.whiteTilt * red)) * thinWhite * recipe.whiteAmount;
    K[i] += recipe.white.K[i] * thinWhite * recipe.whiteAmount;
    S[i] += recipe.white.S[i] * whiteLeft;
    recipe.colorants.forEach((colorant, j) => {
      const bound = coloured[j] ?? 0;
      const amount = recipe.amounts[j] * (enrich[j] ?? 1) * local;
      K[i] += amount * colorant.K[i] * absorptionLeft(colorant.K[i], bound, recipe.sieve);
      S[i] += amount * colorant.S[i] * (1 - recipe.scatterLoss * bound);
    });
  }
  return { K, S };
};
const opaque = ({ K, S }) =>
  K.map((k, i) => {
    const ratio = k / S[i];
    return 1 / (1 + ratio + Math.sqrt(ratio * (ratio + 2)));
  });
/** Kubelka's film over a substrate; S of a film here is never 0. */
const over = ({ K, S }, thickness, substrate) =>
  K.map((k, i) => {
    const a = 1 + k / S[i];
    const b = Math.sqrt(a * a - 1);
    const coth = 1 / Math.tanh(b * S[i] * thickness);
    return (1 - substrate[i] * (a - b * coth)) / (a - substrate[i] + b * coth);
  });
const flat = (value) => GRID.map(() => value);
const measured = (internal, { k2, specular }, gloss = 0) =>
  internal.map(
    (R) => ((1 - EXTERNAL) * (1 - k2) * R) / (1 - k2 * R) + (specular === 'included' ? EXTERNAL : 0) + gloss,
  );

const drawRecipe = (depth) => {
  const colorants = Array.from({ length: 1 + Math.floor(random() * 3) }, drawColorant);
  const strength = { pale: logBetween(0.02, 0.12), mid: logBetween(0.2, 2), mass: 1 }[depth];
  // Half of the paints change as the documentation says, by one factor; the others as clusters rather do, with a k2 beside the stated one.
  const plain = chance(0.5);
  return {
    colorants,
    amounts: colorants.map(() => (strength / colorants.length) * between(0.5, 1.5)),
    white: drawWhite(),
    whiteAmount: depth === 'mass' ? 0 : 1,
    plain,
    sieve: plain ? 0 : between(0.1, 0.4),
    scatterLoss: plain ? 0 : between(0, 0.5),
    whiteTilt: plain ? 0 : between(0.05, 0.25),
  };
};

// --- one film: the colour of both areas for a local strength, free of noise -----------------------------------------------------------------
const drawFilm = (kind, depth) => {
  const recipe = drawRecipe(depth);
  if (depth === 'mass') for (const colorant of recipe.colorants) colorant.S = colorant.S.map((s) => s + 0.05);
  const specular = kind === 'surface' ? 'excluded' : oneOf(['included', 'excluded']);
  const surface = { k2: recipe.plain ? STATED_INTERNAL : between(0.5, 0.65), specular };
  const share = () => between(0.05, 0.4);
  const whiteBase = measured(opaque(recipe.white), surface);
  const base = { recipe, depth, kind, surface, whiteBase };
  const plain = (local) => measured(opaque(mix(recipe, { local })), surface);
  if (kind === 'sound') return { ...base, unrubbed: plain, rubbed: plain };
  if (kind === 'coloured' || kind === 'both' || kind === 'white') {
    const all = share();
    const moved = recipe.colorants.length === 1 || chance(0.5) ? -1 : Math.floor(random() * recipe.colorants.length);
    const bound = kind === 'white' ? [] : recipe.colorants.map((_, j) => (moved === -1 || moved === j ? all : 0));
    const white = kind === 'coloured' ? 0 : share();
    const unrubbed = (local) => measured(opaque(mix(recipe, { local, coloured: bound, white })), surface);
    return { ...base, unrubbed, rubbed: plain, detail: moved === -1 ? 'all colorants alike' : 'one of them' };
  }
  if (kind === 'floating') {
    // A skin over the mixed film, richer (or poorer) in one pigment and poorer (or richer) in white; rubbing mixes it in.
    const j = Math.floor(random() * recipe.colorants.length);
    const shift = share() * (chance(0.5) ? 1 : -1);
    const enrich = recipe.colorants.map((_, i) => (i === j ? 1 + shift : 1));
    const thinWhite = 1 - shift * between(0, 0.3);
    const thickness = between(0.5, 6);
    const unrubbed = (local) => {
      const bulk = opaque(mix(recipe, { local }));
      return measured(over(mix(recipe, { local, enrich, thinWhite }), thickness, bulk), surface);
    };
    return { ...base, unrubbed, rubbed: plain, detail: thickness < 2 ? 'thin skin' : 'thick skin' };
  }
  if (kind === 'surface') {
    const gloss = between(0.002, 0.01) * (chance(0.5) ? 1 : -1);
    // Excluded readings hold a little haze, so that a glossier area can read less.
    const haze = between(0.01, 0.015);
    const at = (more) => (local) => measured(opaque(mix(recipe, { local })), surface, more);
    return { ...base, unrubbed: at(haze), rubbed: at(haze + gloss) };
  }
  // The film over a card: thickness where the contrast ratio (taken in the middle of the spectrum) is 0.90 to 0.985.
  const card = { white: GRID.map((nm) => 0.82 - 0.25 * edge(nm, 415, 8)), black: flat(0.02) };
  const target = between(0.9, 0.985);
  const contrast = (thickness) => {
    const paint = mix(recipe);
    const sum = (values) => values.reduce((a, b) => a + b, 0);
    return sum(over(paint, thickness, card.black)) / sum(over(paint, thickness, card.white));
  };
  let [thin, thick] = [0.01, 500];
  for (let k = 0; k < 60; k++) {
    const middle = Math.sqrt(thin * thick);
    if (contrast(middle) < target) thin = middle;
    else thick = middle;
  }
  const change = chance(0.75) ? between(0.7, 0.92) : between(1.08, 1.3);
  const at = (thickness, substrate) => (local) => measured(over(mix(recipe, { local }), thickness, substrate), surface);
  return {
    ...base,
    unrubbed: at(thin, card.white),
    rubbed: at(thin * change, card.white),
    overBlack:
      kind === 'card, black read'
        ? {
            film: at(thin, card.black),
            white: measured(card.white, surface),
            black: measured(card.black, surface),
          }
        : undefined,
  };
};

// --- the instrument -------------------------------------------------------------------------------------------------------------------------
/** A session: an error that repeats, a gain that drifts from reading to reading, and what differs by chance. */
const drawSession = () => {
  const level = logBetween(0.5, 2);
  const [wave, phase, curve] = [normal(0.002), between(0, 6), normal(0.003)];
  return {
    level,
    drift: normal(0.0003),
    repeats: (R, nm) => R * (1 + wave * Math.sin(nm / 60 + phase)) + curve * R * (1 - R),
  };
};
const readSpectrum = (curve, session, order, outlier = false) => {
  const { level } = session;
  const local = 1 + normal(0.006 * level) + (outlier ? 0.05 * (chance(0.5) ? 1 : -1) : 0);
  const truth = typeof curve === 'function' ? curve(local) : curve;
  const gain = 1 + normal(0.0006 * level) + session.drift * order + (outlier ? normal(0.004) : 0);
  const [tilt, offset] = [normal(0.0004 * level), normal(0.0002 * level)];
  const values = truth.map(
    (R, i) => session.repeats(R, GRID[i]) * (gain + (tilt * (GRID[i] - 550)) / 150) + offset + normal(0.00015 * level),
  );
  return createSpectrum({ start: 400, step: 10, values: values.map((R) => Math.max(R, 0)), scale: 'fraction' });
};
const labOf = (spectrum) => labFromSpectrum(spectrum, D65_10);
const labDistance = (p, q) => Math.hypot(p.L - q.L, p.a - q.a, p.b - q.b);
const exact = (values) => labOf(createSpectrum({ start: 400, step: 10, values, scale: 'fraction' }));

const readFilm = (film) => {
  const session = drawSession();
  const spots = 1 + Math.floor(random() * 5);
  const alternating = chance(0.5);
  const outlier = chance(0.04) ? Math.floor(random() * 2 * spots) : -1;
  const areas = { unrubbed: [], rubbed: [] };
  for (let k = 0; k < 2 * spots; k++) {
    const side = (alternating ? k % 2 === 0 : k < spots) ? 'unrubbed' : 'rubbed';
    areas[side].push(readSpectrum(film[side], session, k, k === outlier));
  }
  const white =
    film.depth !== 'mass' && chance(0.8)
      ? { spot: [0, 1].map(() => readSpectrum(film.whiteBase, session, 0)) }
      : undefined;
  const overBlack = film.overBlack && {
    film: { spot: areas.unrubbed.map(() => readSpectrum(film.overBlack.film, session, 0)) },
    white: readSpectrum(film.overBlack.white, session, 0),
    black: readSpectrum(film.overBlack.black, session, 0),
  };
  // A history: the root mean square of ΔE*ab over readings of such a film, as the documentation advises. Stated for half of the films.
  const many = Array.from({ length: 30 }, () => labOf(readSpectrum(film.unrubbed, session, 0)));
  const mean = Object.fromEntries(
    ['L', 'a', 'b'].map((axis) => [axis, many.reduce((s, lab) => s + lab[axis] / 30, 0)]),
  );
  const history = Math.sqrt(many.reduce((s, lab) => s + labDistance(lab, mean) ** 2 / 29, 0));
  return {
    areas,
    white,
    overBlack,
    spots,
    alternating,
    outlier: outlier >= 0,
    precision: chance(0.5) ? { spot: history } : undefined,
  };
};

// --- verdicts -------------------------------------------------------------------------------------------------------------------------------
const nested = (list) => (list.length === 1 ? list[0] : { spot: list });
const judge = (film, reading, asLab) => {
  const map = (list) => nested(asLab ? list.map(labOf) : list);
  const white = reading.white && (asLab ? { spot: reading.white.spot.map(labOf) } : reading.white);
  const tint =
    film.depth === 'mass' ? 'mass-tone' : film.recipe.colorants.length > 1 ? 'several-pigments' : 'single-pigment';
  return assessRubOut(map(reading.areas.unrubbed), map(reading.areas.rubbed), {
    viewing: D65_10,
    surface: { external: EXTERNAL, internal: STATED_INTERNAL, specular: film.surface.specular },
    tint,
    white,
    precision: reading.precision,
    overBlack: asLab ? undefined : reading.overBlack,
  });
};
/** Towards colour or white in truth, by the mean of log K/S that the exact readings show. */
const truthOf = (film) => {
  const [before, after] = [film.unrubbed(1), film.rubbed(1)];
  const { k2, specular } = film.surface;
  const logRatio = (values) =>
    values.map((value) => {
      const r = value - (specular === 'included' ? EXTERNAL : 0);
      const R = Math.min(r / ((1 - EXTERNAL) * (1 - k2) + k2 * r), 0.9999);
      return (1 - R) ** 2 / (2 * R);
    });
  const sum = (values) => values.reduce((a, b) => a + b, 0);
  const change = sum(logRatio(after)) / sum(logRatio(before)) - 1;
  return { dEab: labDistance(exact(before), exact(after)), towards: change > 0 ? 'more-colour' : 'more-white' };
};

const counts = {};
const count = (table, key, hit) => {
  counts[table] ??= {};
  counts[table][key] ??= {};
  const cell = counts[table][key];
  cell.of = (cell.of ?? 0) + 1;
  if (hit) cell.hits = (cell.hits ?? 0) + 1;
};
const share = (table, key) => {
  const { hits = 0, of = 0 } = counts[table]?.[key] ?? {};
  return of === 0 ? '-' : `${((100 * hits) / of).toFixed(of < 1000 ? 0 : 1)} % ${hits}/${of}`;
};
const confusion = {};
const examples = [];
const label = {
  'coloured-pigment-flocculated': 'coloured',
  'white-pigment-flocculated': 'white',
  'both-flocculated': 'both',
  'one-colorant-flocculated': 'one-col',
  'pigments-separated': 'separated',
  'surface-changed': 'surface',
  'thickness-changed': 'thickness',
  'uneven-film': 'uneven',
};

const started = Date.now();
for (const kind of Object.keys(KINDS)) {
  const depths = ['white', 'both', 'floating'].includes(kind) ? DEPTHS.slice(0, 2) : DEPTHS;
  for (let n = 0; n < films; n++) {
    const depth = depths[n % depths.length];
    const film = drawFilm(kind, depth);
    const reading = readFilm(film);
    const truth = truthOf(film);
    for (const mode of ['spectra', 'lab']) {
      const result = judge(film, reading, mode === 'lab');
      const key = `${mode}|${kind}`;
      const byDepth = `${key}|${depth}`;
      const named = result.causes.length > 0;
      const fits = result.causes.filter(({ standing }) => standing.startsWith('fits')).map(({ cause }) => cause);
      const alone = result.causes.find(({ standing }) => standing === 'fits-alone')?.cause;
      const standing = (cause) => result.causes.find((weighed) => weighed.cause === cause)?.standing ?? 'absent';
      const pigmentAlone = fits.length === 1 && FLOCCULATION.includes(fits[0]);
      const onlyFlocculation = fits.length > 0 && fits.every((cause) => FLOCCULATION.includes(cause));
      const verdict = !named
        ? 'nothing'
        : fits.length === 0
          ? 'none fits'
          : alone
            ? label[alone]
            : fits.length === 1
              ? `1: ${label[fits[0]]}`
              : 'several';
      confusion[key] ??= {};
      confusion[key][verdict] = (confusion[key][verdict] ?? 0) + 1;

      count('difference found', key, result.finding === 'difference');
      count('causes weighed', key, named);
      if (result.finding !== 'difference') count('causes without a difference', key, named);
      if (!result.interval) count('causes without an interval', key, named);
      count('pigment alone', key, pigmentAlone);
      count('flocculation only', key, onlyFlocculation);
      count('fits-alone', key, alone !== undefined);
      if (alone) count('fits-alone is true', key, KINDS[kind].includes(alone));
      if (named) {
        for (const [table, at] of [
          ['true cause fits', key],
          ['true cause fits by depth', byDepth],
          ['true cause fits by paint', `${key}|${film.recipe.plain ? 'one factor' : 'beyond'}`],
          ['true cause fits by detail', `${key}|${film.detail}`],
          ['true cause fits by detail', `${key}|${film.detail}, ${film.recipe.plain ? 'by the book' : 'beyond it'}`],
          ['true cause fits by colorants', `${key}|${film.recipe.colorants.length}`],
        ])
          count(
            table,
            at,
            KINDS[kind].some((cause) => fits.includes(cause)),
          );
        count('separated alone in question', key, fits.length === 1 && fits[0] === 'pigments-separated');
        // Coloured alone and white alone are both of them with one size of 0: where the whole fits so, so must the part.
        const [whole, colouredPart, whitePart] = [
          'both-flocculated',
          'coloured-pigment-flocculated',
          'white-pigment-flocculated',
        ].map((cause) => result.causes.find((weighed) => weighed.cause === cause));
        const wholeFits = whole?.standing.startsWith('fits') && !whole.withSurface && whole.sizes !== undefined;
        const partMissed = (part, other) =>
          wholeFits && Math.abs(whole.sizes[other] ?? 1) < 0.002 && part?.standing === 'ruled-out';
        count(
          'a part ruled out that the whole shows to fit',
          key,
          partMissed(colouredPart, 'scattering') || partMissed(whitePart, 'absorption'),
        );
        count(
          'whole ruled out where a part fits',
          key,
          depth !== 'mass' &&
            whole?.standing === 'ruled-out' &&
            [colouredPart, whitePart].some((part) => part?.standing.startsWith('fits') && part.sizes),
        );
        const withSurface = result.causes.filter((weighed) => weighed.withSurface);
        count('a cause fits with the surface only', key, withSurface.length > 0);
        if (withSurface.length > 0)
          count(
            'by more than the surface reflects',
            key,
            withSurface.some(({ sizes }) => Math.abs(sizes?.reflectance ?? 0) > EXTERNAL),
          );
        count('nothing fits', key, fits.length === 0);
        count(
          'true cause ruled out',
          key,
          KINDS[kind].length > 0 && KINDS[kind].every((cause) => ['ruled-out', 'absent'].includes(standing(cause))),
        );
        for (const cause of Object.keys(label)) count(`fits: ${label[cause]}`, key, fits.includes(cause));
        if (['coloured', 'white', 'both', 'floating'].includes(kind) && film.surface.specular === 'excluded') {
          count('surface ruled out', key, standing('surface-changed') === 'ruled-out');
          count('surface ruled out by depth', byDepth, standing('surface-changed') === 'ruled-out');
        }
      }
      if (result.direction && kind !== 'sound') {
        const { towards, certainty } = result.direction;
        if (towards === 'another-shade') count('another shade', key, true);
        else {
          count('another shade', key, false);
          count('direction right', key, towards === truth.towards);
          count(`direction right, ${certainty}`, key, towards === truth.towards);
          if (towards !== truth.towards && certainty === 'proven' && examples.length < 8)
            examples.push(
              `${key} ${depth}: ${towards} ${certainty}, true ΔE*ab ${truth.dEab.toFixed(2)}, found ${result.difference.dEab.toFixed(2)}`,
            );
        }
      }
      if (result.interval) {
        const { low, high } = result.interval.dEab;
        const holds = low <= truth.dEab && truth.dEab <= high;
        count('coverage', key, holds);
        count('coverage by reading', `${mode}|${reading.alternating ? 'alternating' : 'side by side'}`, holds);
        count('coverage by spots', `${mode}|${reading.spots}${reading.precision ? ' with history' : ''}`, holds);
        if (reading.outlier) count('coverage by reading', `${mode}|with outlier`, holds);
        count(
          'outcome wrong',
          key,
          result.outcome === 'meets' ? truth.dEab > 1 : result.outcome === 'fails' && truth.dEab <= 1,
        );
      }
      if (result.finding === 'none-visible') count('none-visible, true ΔE*ab above 1', key, truth.dEab > 1);
    }
  }
}

// --- print ----------------------------------------------------------------------------------------------------------------------------------
const print = (title, rows) => {
  console.log(`\n${title}`);
  const widths = rows[0].map((_, column) => Math.max(...rows.map((row) => String(row[column]).length)));
  for (const row of rows)
    console.log(
      row
        .map((cell, column) => String(cell).padEnd(widths[column]))
        .join('  ')
        .trimEnd(),
    );
};
const kinds = Object.keys(KINDS);
console.log(`${films} films of each kind, seed ${seed}, ${((Date.now() - started) / 1000).toFixed(0)} s`);
for (const mode of ['spectra', 'lab']) {
  const keys = kinds.map((kind) => `${mode}|${kind}`);
  const verdicts = [...new Set(keys.flatMap((key) => Object.keys(confusion[key])))].sort();
  print(`${mode}: truth (row) against the only cause named`, [
    ['', ...verdicts],
    ...kinds.map((kind, i) => [kind, ...verdicts.map((verdict) => confusion[keys[i]][verdict] ?? 0)]),
  ]);
  print(`${mode}: share of the films with causes in which each cause fits`, [
    ['', ...Object.values(label)],
    ...kinds.map((kind, i) => [
      kind,
      ...Object.values(label).map((cause) => share(`fits: ${cause}`, keys[i]).split(' %')[0]),
    ]),
  ]);
  for (const tables of [
    ['difference found', 'causes weighed', 'pigment alone', 'flocculation only', 'fits-alone', 'fits-alone is true'],
    ['true cause fits', 'true cause ruled out', 'nothing fits', 'surface ruled out'],
    ['causes without a difference', 'causes without an interval', 'separated alone in question'],
    ['a cause fits with the surface only', 'by more than the surface reflects'],
    ['a part ruled out that the whole shows to fit', 'whole ruled out where a part fits'],
    ['direction right', 'direction right, proven', 'direction right, indicated', 'another shade'],
    ['coverage', 'outcome wrong', 'none-visible, true ΔE*ab above 1'],
  ])
    print(`${mode}: of the films to which it applies`, [
      ['', ...tables],
      ...kinds.map((kind, i) => [kind, ...tables.map((table) => share(table, keys[i]))]),
    ]);
  print(`${mode}: true cause fits`, [
    ['', 'paint by the book', 'paint beyond it', '1 colorant', '2', '3'],
    ...kinds
      .slice(1)
      .map((kind) => [
        kind,
        ...['one factor', 'beyond'].map((paint) => share('true cause fits by paint', `${mode}|${kind}|${paint}`)),
        ...[1, 2, 3].map((number) => share('true cause fits by colorants', `${mode}|${kind}|${number}`)),
      ]),
  ]);
  print(`${mode}: true cause fits, by what happened`, [
    ['', 'share'],
    ...Object.keys(counts['true cause fits by detail'])
      .filter((key) => key.startsWith(mode) && !key.includes('undefined') && !key.includes('|white|'))
      .map((key) => [key.split('|').slice(1).join(', '), share('true cause fits by detail', key)]),
  ]);
  print(`${mode}: by depth`, [
    ['true cause fits', ...DEPTHS, 'surface ruled out:', ...DEPTHS],
    ...kinds
      .slice(1)
      .map((kind) => [
        kind,
        ...DEPTHS.map((depth) => share('true cause fits by depth', `${mode}|${kind}|${depth}`)),
        '',
        ...DEPTHS.map((depth) => share('surface ruled out by depth', `${mode}|${kind}|${depth}`)),
      ]),
  ]);
}
for (const table of ['coverage by reading', 'coverage by spots'])
  print(
    table,
    Object.keys(counts[table])
      .sort()
      .map((key) => [key, share(table, key)]),
  );
if (examples.length > 0)
  print(
    'proven, but the wrong way',
    examples.map((line) => [line]),
  );
