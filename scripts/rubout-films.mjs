// Invented films with a known fault, read with noise: what scripts/rubout-simulation.mjs assesses. Films are made by Kubelka-Munk from
// K and S drawn at random, seen through a surface whose k1 and k2 are drawn too; nothing is measured. The drawing is kept wider than the
// rules of the assessment: noise has terms that the assessment does not name, flocculates flatten the spectrum, surfaces differ from the stated.

export const GRID = { start: 400, step: 10 };
export const WAVELENGTHS = Array.from({ length: 31 }, (_, i) => GRID.start + i * GRID.step);

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
  const log = (low, high) => low * (high / low) ** uniform();
  const normal = () => Math.sqrt(-2 * Math.log(1 - uniform())) * Math.cos(2 * Math.PI * uniform());
  const pick = (list) => list[Math.floor(uniform() * list.length)];
  const sign = () => (uniform() < 0.5 ? -1 : 1);
  return { uniform, between, log, normal, pick, sign };
}

/** K of a pigment with its maximum at 1: bells and an edge at random places; one in six is a black or grey. */
function drawPigment({ uniform, between }) {
  if (uniform() < 1 / 6) {
    const slope = between(-0.25, 0.25);
    return { K: WAVELENGTHS.map((nm) => (1 + (slope * (nm - 550)) / 150) / (1 + Math.abs(slope))), S: between(0, 0.1) };
  }
  const bells = Array.from({ length: 1 + Math.floor(3 * uniform()) }, () => [
    between(400, 700),
    between(25, 80),
    between(0.2, 1),
  ]);
  const [edge, width, height] = [between(430, 600), between(8, 25), uniform() < 0.4 ? between(0.4, 1) : 0];
  const floor = between(0.002, 0.03);
  const raw = WAVELENGTHS.map(
    (nm) =>
      floor +
      height / (1 + Math.exp((nm - edge) / width)) +
      bells.reduce((sum, [centre, wide, high]) => sum + high * Math.exp(-(((nm - centre) / wide) ** 2)), 0),
  );
  const most = Math.max(...raw);
  return { K: raw.map((value) => value / most), S: between(0, 0.4) };
}

/** Largest K/S that the colorants add to the white. */
export const DEPTHS = { pale: [0.03, 0.15], mid: [0.3, 3], deep: [4, 12], any: [0.05, 8] };

/** A paint: pigments with their K X for a whole film, in units of the white's S; `white` parts of white. */
function drawPaint(random, { depth, colorants, massTone }) {
  const { between, log } = random;
  const pigments = Array.from({ length: colorants }, () => drawPigment(random));
  const most = log(...DEPTHS[depth]);
  const shares = pigments.map(() => between(0.4, 1));
  const sum = WAVELENGTHS.map((_, i) => pigments.reduce((total, { K }, k) => total + shares[k] * K[i], 0));
  const scale = most / Math.max(...sum);
  const edge = between(398, 408);
  const floor = between(0.0008, 0.004);
  return {
    pigments: pigments.map(({ K, S }, k) => ({
      K: K.map((value) => value * shares[k] * scale),
      S: S * shares[k] * Math.min(scale, 1) * 0.05 + (massTone ? S : 0),
    })),
    whiteK: WAVELENGTHS.map((nm) => (massTone ? 0.02 : 1) * (floor + 0.05 / (1 + Math.exp((nm - edge) / 5)))),
    whiteS: massTone ? between(0, 0.02) : 1,
    bluish: between(-0.6, 0),
  };
}

/**
 * Measured reflectance of a film.
 *
 * @param state.absorbs - of each pigment, what its state leaves of its absorption
 * @param state.share - of each pigment at the surface, against the paint
 * @param state.scatters - what its state leaves of the white's scattering; `whiteShare` of the white at the surface
 * @param state.gloss - added to every reading; `hides` S X of the white for the whole film, over a card
 */
function filmOf(paint, surface, state) {
  const { absorbs = [], share = [], scatters = 1, whiteShare = 1, gloss = 0, hides, flatten = 0 } = state;
  return WAVELENGTHS.map((nm, i) => {
    let K = paint.whiteK[i] * whiteShare;
    let S = paint.whiteS * scatters * whiteShare * (nm / 550) ** paint.bluish;
    paint.pigments.forEach(({ K: own, S: scattering }, k) => {
      const left = absorbs[k] ?? 1;
      // the sieve effect: what absorbs most loses most
      const here = left ** (1 + flatten * (own[i] / Math.max(...own) - 0.5));
      K += own[i] * here * (share[k] ?? 1);
      S += scattering * (share[k] ?? 1);
    });
    const ratio = K / S;
    const opaque = 1 / (1 + ratio + Math.sqrt(ratio * ratio + 2 * ratio));
    let internal = opaque;
    if (hides) {
      const [a, b] = [1 + ratio, Math.sqrt(ratio * ratio + 2 * ratio)];
      const coth = 1 / Math.tanh(b * hides.thickness * S);
      // for each part of white S is about 1, so this thickness is an S X
      internal = (1 - hides.card * (a - b * coth)) / (a - hides.card + b * coth);
    }
    const { external: k1, internal: k2 } = surface;
    const specular = surface.specular === 'included' ? k1 : 0;
    return Math.max(specular + ((1 - k1) * (1 - k2) * internal) / (1 - k2 * internal) + gloss, 1e-4);
  });
}

/** What each fault leaves of the unrubbed film; the rubbed one is sound, but for gloss and thickness, which the finger changes. */
const FAULT_STATES = {
  sound: () => [{}, {}],
  'coloured flocculated': ({ between }, n) => {
    const left = 1 - between(0.02, 0.35);
    return [{ absorbs: Array(n).fill(left), flatten: between(0, 0.3) }, {}];
  },
  'white flocculated': ({ between }) => [{ scatters: 1 - between(0.02, 0.25) }, {}],
  'both flocculated': ({ between }, n) => {
    const left = 1 - between(0.05, 0.3);
    return [{ absorbs: Array(n).fill(left), scatters: 1 - between(0.05, 0.3) }, {}];
  },
  'one of several flocculated': ({ between, uniform }, n) => {
    const absorbs = Array(n).fill(1);
    absorbs[Math.floor(uniform() * n)] = 1 - between(0.05, 0.4);
    return [{ absorbs }, {}];
  },
  floating: ({ between, sign }, n) => {
    const way = sign() * between(0.02, 0.25);
    return [{ share: Array(n).fill(1 + way), whiteShare: 1 - way / 4 }, {}];
  },
  'pigments exchanged': ({ between, sign }, n) => {
    const way = sign() * between(0.03, 0.25);
    return [{ share: Array.from({ length: n }, (_, k) => (k === 0 ? 1 + way : 1 - way)) }, {}];
  },
  gloss: ({ between, sign }) => [{}, { gloss: sign() * between(0.001, 0.012) }],
  'card showing through': ({ between }) => {
    const thickness = between(4, 14);
    const hides = { card: 0.8, thickness };
    return [{ hides }, { hides: { card: 0.8, thickness: thickness * (1 - between(0.05, 0.4)) } }];
  },
  'coloured flocculated over a card': ({ between }, n) => {
    const hides = { card: 0.8, thickness: between(5, 14) };
    return [{ absorbs: Array(n).fill(1 - between(0.05, 0.3)), hides }, { hides }];
  },
  'flocculated, gloss changed': ({ between, sign }, n) => [
    { absorbs: Array(n).fill(1 - between(0.05, 0.3)) },
    { gloss: sign() * between(0.001, 0.004) },
  ],
};
export const FAULTS = Object.keys(FAULT_STATES);
/** Faults that take several colorants. */
export const OF_SEVERAL = ['one of several flocculated', 'pigments exchanged'];

/** How a reading errs; the assessment knows nothing of the last two. */
function drawNoise({ normal, uniform }) {
  const weights = Array.from({ length: 6 }, () => (uniform() < 0.6 ? uniform() : 0));
  weights[3] += 0.1;
  return { weights, draw: () => weights.map((weight) => weight * normal()) };
}

function erring(film, slope, [offset, gain, tilt, bands, wave, shift], random, size) {
  const phase = random.between(0, 2 * Math.PI);
  return film.map((R, i) => {
    const z = (WAVELENGTHS[i] - 550) / 150;
    const smooth = Math.sin(phase + 3 * z);
    const error =
      0.4 * offset +
      gain * R +
      tilt * R * z +
      0.5 * bands * random.normal() * R +
      0.5 * wave * smooth * R +
      shift * slope[i] * 10;
    return Math.max(R + size * error, 1e-4);
  });
}

/** What rubbing frees in a film over a chart. */
const FREED = {
  'chart: nothing freed': [1, 1],
  'chart: coloured freed': [0, 1],
  'chart: white freed': [1, 0],
  'chart: both freed': [0, 0],
};
export const CHART_FAULTS = Object.keys(FREED);

/**
 * A film over a chart whose contrast ratio is 0.85 to 0.97, rubbed and so thinner by up to 20 %; its thicknesses are gauged with `gauge` error.
 *
 * @returns what was read, and the true ratios of K (of the colorants) and S
 */
export function simulateChartRubOut(
  library,
  fault,
  { random, spots = 3, noise = random.log(2e-4, 1e-3), gauge = 0.01 },
) {
  const { createSpectrum, contrastRatio, D65_10 } = library;
  const spectrum = (values) => createSpectrum({ ...GRID, values, scale: 'fraction' });
  const [keepsColour, keepsWhite] = FREED[fault];
  const surface = { external: 0.04, internal: 0.6, specular: random.pick(['included', 'excluded']) };
  for (;;) {
    const paint = drawPaint(random, { depth: 'mid', colorants: 1, massTone: false });
    paint.whiteK = paint.whiteK.map((value) => value * 0.2);
    const left = [keepsColour, keepsWhite].map((keeps) => (keeps ? 1 : 1 - random.between(0.1, 0.3)));
    const thickness = random.between(1.5, 6);
    const [fields, thinner] = [{ black: 0.02, white: 0.85 }, random.between(0.8, 1)];
    const state = (card, rubbed) => ({
      absorbs: [rubbed ? 1 : left[0]],
      scatters: rubbed ? 1 : left[1],
      hides: { card, thickness: rubbed ? thickness * thinner : thickness },
    });
    const clean = (card, rubbed) => filmOf(paint, surface, state(card, rubbed));
    const ratio = contrastRatio(spectrum(clean(fields.black, false)), spectrum(clean(fields.white, false)), {
      viewing: D65_10,
    });
    if (!(ratio > 0.85 && ratio < 0.97)) continue;
    const read = (film) => {
      const [offset, gain] = [0.3 * noise * random.normal(), noise * random.normal()];
      return spectrum(film.map((R) => Math.max(R * (1 + gain) + offset + 0.3 * noise * random.normal(), 1e-4)));
    };
    const bare = (R) => spectrum(WAVELENGTHS.map(() => library.measuredReflectance(R, surface)));
    const area = (rubbed) => {
      const spotsOf = (card) => ({ spot: Array.from({ length: spots }, () => read(clean(card, rubbed))) });
      const true_ = 60 * (rubbed ? thinner : 1);
      return {
        overBlack: spotsOf(fields.black),
        overWhite: spotsOf(fields.white),
        thickness: true_ * (1 + gauge * random.normal()),
      };
    };
    const options = {
      viewing: D65_10,
      surface,
      black: bare(fields.black),
      white: bare(fields.white),
      thicknessUncertainty: gauge,
    };
    return {
      unrubbed: area(false),
      rubbed: area(true),
      options,
      truth: { absorption: 1 / left[0], scattering: 1 / left[1] },
    };
  }
}

const slopeOf = (film) => film.map((_, i) => (film[Math.min(i + 1, 30)] - film[Math.max(i - 1, 0)]) / 20);

/**
 * One paint with one fault, drawn down and rubbed out: what was read and what is true.
 *
 * @param library - the package
 * @param options.spots - of each area of each drawdown; `drawdowns`
 * @param options.noise - root mean square ΔE*ab of a spot; `filmScatter` of strength between drawdowns, a share
 * @param options.outlier - whether one spot errs by 5 to 10 times as much
 */
export function simulateRubOut(library, fault, options) {
  const { random, spots = 3, drawdowns = 1, noise = random.log(0.03, 0.3), filmScatter = 0, depth = 'any' } = options;
  const { createSpectrum, deltaEab, labFromSpectrum, D65_10 } = library;
  const least = OF_SEVERAL.includes(fault) ? 2 : 1;
  const colorants = options.colorants ?? Math.max(least, 1 + Math.floor(3 * random.uniform()));
  const specular = options.specular ?? (fault.includes('gloss') ? 'excluded' : random.pick(['included', 'excluded']));
  const paint = drawPaint(random, { depth, colorants, massTone: options.massTone });
  const surface = { external: random.between(0.035, 0.045), internal: random.between(0.45, 0.65), specular };
  const spectrum = (values) => createSpectrum({ ...GRID, values, scale: 'fraction' });
  const labOf = (film) => labFromSpectrum(spectrum(film), D65_10);
  const [before, after] = FAULT_STATES[fault](random, colorants);
  const [from, to] = [before, after].map((state) => labOf(filmOf(paint, surface, state)));

  const errors = drawNoise(random);
  const size = calibrated();
  let left = options.outlier ? Math.floor(random.uniform() * 2 * spots * drawdowns) : -1;
  const read = (film) => {
    const times = left-- === 0 ? random.sign() * random.between(5, 10) : 1;
    return spectrum(
      erring(
        film,
        slopeOf(film),
        errors.draw().map((e) => e * times),
        random,
        size,
      ),
    );
  };
  const drawn = Array.from({ length: drawdowns }, () => {
    const strength = Math.exp(filmScatter * random.normal());
    const gloss = 0.05 * filmScatter * random.normal();
    const area = (state) => {
      const share = (state.share ?? Array(colorants).fill(1)).map((value) => value * strength);
      const film = (place) =>
        filmOf(paint, surface, {
          ...state,
          share: share.map((value) => value * place),
          gloss: (state.gloss ?? 0) + gloss,
        });
      // an uneven film, or drawdowns passed as spots: places differ in strength
      const place = () => Math.exp((options.spotScatter ?? 0) * random.normal());
      return { spot: Array.from({ length: spots }, () => read(film(place()))) };
    };
    return { unrubbed: area(before), rubbed: area(after) };
  });
  // the film over the black of the card, and the card itself
  const ofCard = () => {
    const black = { ...before, hides: { ...before.hides, card: 0.02 } };
    const bare = (R) => spectrum(WAVELENGTHS.map(() => library.measuredReflectance(R, surface)));
    return {
      film: { spot: Array.from({ length: spots }, () => read(filmOf(paint, surface, black))) },
      white: bare(0.8),
      black: bare(0.02),
    };
  };
  const nested = (name) => (drawdowns === 1 ? drawn[0][name] : { drawdown: drawn.map((one) => one[name]) });
  const base = { ...paint, pigments: [] };
  return {
    fault,
    trueDifference: deltaEab(from, to),
    /** Rubbed against unrubbed. */
    truth: { from, to },
    unrubbed: nested('unrubbed'),
    rubbed: nested('rubbed'),
    ...(options.overBlack && { overBlack: ofCard() }),
    white: options.massTone ? undefined : read(filmOf(base, surface, {})),
    surface: { external: 0.04, internal: 0.6, specular },
    tint: options.massTone ? 'mass-tone' : colorants > 1 ? 'several-pigments' : 'single-pigment',
    specular,
  };

  /** The factor that brings the noise of a spot to the size asked for. */
  function calibrated() {
    const film = filmOf(paint, surface, after);
    const slope = slopeOf(film);
    const centre = labOf(film);
    let squares = 0;
    const trials = 12;
    for (let i = 0; i < trials; i++)
      squares += deltaEab(centre, labOf(erring(film, slope, errors.draw(), random, 0.001))) ** 2;
    return (0.001 * noise) / Math.sqrt(squares / trials);
  }
}
