import { bothModel, colouredModel, surfaceModel, togetherModel, whiteModel } from './cause-models.js';
import { CAUSE_TEXTS } from './cause-texts.js';
import { type ColorantChange, movementOf } from './colorant-changes.js';
import { type CauseModel, type Misfit, misfitOf } from './misfit.js';
import type { CauseSize, CauseStanding, RubOutCause, WeighedCause } from './rub-out-cause.js';
import type { Tint } from './rub-out-result.js';
import type { SpectralChange } from './spectral-change.js';
import type { SpectralNoise } from './spectral-noise.js';
import { type FilmOverBlack, thicknessModel } from './thickness-model.js';
import type { Evenness } from './unevenness.js';

/** What the causes are weighed on. */
export interface Weighing {
  readonly tint: Tint;
  readonly spectral?: SpectralChange | undefined;
  readonly noise?: SpectralNoise | undefined;
  /** Change of strength where it is known; its sign is all that Lab values tell of a cause. */
  readonly strength?: number | undefined;
  /** Whether readings see a change of gloss; undefined where the specular mode isn't stated. */
  readonly specular?: 'included' | 'excluded' | undefined;
  /** Whether further readings of the surface showed a change of it. */
  readonly surfaceShown?: 'changed' | 'unchanged' | undefined;
  readonly film?: FilmOverBlack | undefined;
  readonly colorantChanges: readonly ColorantChange[];
  readonly uneven: Evenness;
}

type Judged = Omit<WeighedCause, 'because' | 'check' | 'colorants'>;

/** Probability of a misfit below which a cause is ruled out. */
export const RULED_OUT_BELOW = 0.005;

/**
 * Every cause with how it stands. On spectra whose noise is known the forward model of each is compared with the change; where none fits by
 * itself, pigments are weighed once more together with a change of the surface. Anything less than that rules out nothing that the film can have.
 */
export function weighCauses(weighing: Weighing): WeighedCause[] {
  const weighed = weighing.noise && weighing.spectral ? compared(weighing) : uncompared(weighing);
  const judged = [...alone(weighed), ...unevenFilm(weighing.uneven)];
  const moved = (ways: readonly string[]) =>
    weighing.colorantChanges.filter((change) => ways.includes(movementOf(change))).map(({ name }) => name);
  return judged.map((one) => ({
    ...one,
    colorants:
      one.cause === 'pigments-separated'
        ? moved(['more', 'less'])
        : one.cause === 'one-colorant-flocculated' || one.cause === 'coloured-pigment-flocculated'
          ? moved(['more'])
          : [],
    ...CAUSE_TEXTS[one.cause],
  }));
}

/**
 * The only one that fits of those that were compared stands alone. What a thinner film would do looks like pigments, so these don't as long as
 * that wasn't weighed.
 */
function alone(judged: readonly Judged[]): Judged[] {
  const fitting = judged.filter(({ standing }) => standing === 'fits');
  const weighed = judged.some(({ cause, standing }) => cause === 'thickness-changed' && standing !== 'not-weighed');
  const [first] = fitting;
  const single =
    fitting.length === 1 && first.probability !== undefined && (weighed || first.cause === 'surface-changed');
  return judged.map((one) => (single && one === first ? { ...one, standing: 'fits-alone' } : one));
}

const PIGMENTS = ['coloured-pigment-flocculated', 'white-pigment-flocculated', 'both-flocculated'] as const;

/** Causes that a film of this kind can't have, and why. */
function impossible({ tint, specular, surfaceShown }: Weighing, cause: RubOutCause): string | undefined {
  if (tint === 'mass-tone' && (cause === 'white-pigment-flocculated' || cause === 'both-flocculated')) {
    return 'A mass tone holds no white.';
  }
  if (tint === 'white' && cause !== 'white-pigment-flocculated' && !OF_ANY_FILM.includes(cause)) {
    return 'An untinted white holds no coloured pigment.';
  }
  if (cause === 'surface-changed') {
    if (specular === 'included') return 'Readings with the specular reflection included don’t see a change of gloss.';
    if (surfaceShown === 'unchanged') return 'The readings of the surface show no change that would account for it.';
  }
  return undefined;
}

/** An uneven film makes differences by chance of place, beside whatever else there is; an even one needs no line. */
function unevenFilm({ uneven }: Evenness): Judged[] {
  const reason = 'The unrubbed spots scatter more than those of an even film.';
  return uneven ? [{ cause: 'uneven-film', standing: 'fits', reason }] : [];
}

const OF_ANY_FILM: readonly RubOutCause[] = ['surface-changed', 'thickness-changed', 'uneven-film'];
const NO_FILM = 'The film was not read over black as well, so what shows through isn’t known.';

function uncompared(weighing: Weighing): Judged[] {
  const { spectral, strength = 0, surfaceShown } = weighing;
  const why = spectral
    ? 'Nothing shows how readings scatter, so no cause is compared.'
    : 'Lab values rule out no cause.';
  const open = (cause: RubOutCause): Judged => {
    const not = impossible(weighing, cause);
    if (not !== undefined) return { cause, standing: spectral ? 'ruled-out' : 'not-weighed', reason: not };
    const against =
      (cause === 'coloured-pigment-flocculated' && strength < 0) ||
      (cause === 'white-pigment-flocculated' && strength > 0);
    if (against) return { cause, standing: 'not-weighed', reason: `The direction speaks against it. ${why}` };
    return { cause, standing: 'fits', reason: why };
  };
  const surface = open('surface-changed');
  return [
    ...PIGMENTS.map(open),
    ...(weighing.tint === 'several-pigments' ? [open('one-colorant-flocculated')] : []),
    open('pigments-separated'),
    surfaceShown === 'changed' ? { ...surface, reason: 'The readings of the surface show a change of it.' } : surface,
    { cause: 'thickness-changed', standing: 'not-weighed', reason: NO_FILM },
  ];
}

function compared(weighing: Weighing): Judged[] {
  const { spectral, noise, film } = weighing;
  if (!spectral || !noise) return [];
  const compare = (model: CauseModel) => misfitOf(spectral.change, model, noise);
  const judge = (cause: RubOutCause, names: readonly CauseSize[], model: () => CauseModel): Judged => {
    const not = impossible(weighing, cause);
    if (not !== undefined) return { cause, standing: 'ruled-out', reason: not };
    const found = judged(cause, names, compare(model()));
    const guessed = found.standing === 'ruled-out' && isPigment(cause) && needsWhite(weighing) && agrees(found);
    return guessed ? { ...found, standing: 'not-weighed', reason: NO_WHITE } : found;
  };
  const models: Readonly<Record<(typeof PIGMENTS)[number], () => CauseModel>> = {
    'coloured-pigment-flocculated': () => colouredModel(spectral),
    'white-pigment-flocculated': () => whiteModel(spectral),
    'both-flocculated': () => bothModel(spectral),
  };
  const surface = judge('surface-changed', ['reflectance'], () => surfaceModel(spectral));
  const thickness: Judged = film
    ? judge('thickness-changed', ['thickness'], () => thicknessModel(spectral, film))
    : { cause: 'thickness-changed', standing: 'not-weighed', reason: NO_FILM };
  let pigments = PIGMENTS.map((cause) => judge(cause, SIZES[cause], models[cause]));
  const separated = separation(weighing, compare);
  const single = oneColorant(weighing, noise);
  const fits = ({ standing }: Judged) => standing === 'fits';
  const none = ![surface, thickness, ...pigments].some(fits);
  if (none && impossible(weighing, 'surface-changed') === undefined) {
    pigments = pigments.map((one, k) => {
      if (one.probability === undefined) return one;
      const cause = PIGMENTS[k];
      const model = togetherModel(models[cause](), surfaceModel(spectral));
      const again = judged(cause, [...SIZES[cause], 'reflectance'], compare(model));
      return again.standing === 'fits' ? { ...again, withSurface: true, reason: WITH_SURFACE } : one;
    });
  }
  pigments = pigments.map((one) => (one.cause === 'both-flocculated' ? withParts(one, pigments) : one));
  const flocculated = weighing.tint === 'several-pigments' ? [...pigments, single] : pigments;
  return [...flocculated, beside(separated, flocculated.some(fits)), surface, thickness];
}

const isPigment = (cause: RubOutCause) => (PIGMENTS as readonly RubOutCause[]).includes(cause);
const needsWhite = ({ spectral, tint }: Weighing) =>
  spectral?.whiteKnown === false && tint !== 'mass-tone' && tint !== 'white';
const agrees = ({ sizes = {} }: Judged) => Object.values(sizes).some((size) => size > 0);
const NO_WHITE = 'The white base was not read, so what the colorant absorbs is not known well enough to rule it out.';

const WITH_SURFACE = 'By itself it leaves more than the noise; together with a change of the surface it fits.';

const SIZES = {
  'coloured-pigment-flocculated': ['absorption'],
  'white-pigment-flocculated': ['scattering'],
  'both-flocculated': ['absorption', 'scattering'],
} as const satisfies Record<(typeof PIGMENTS)[number], readonly CauseSize[]>;

function judged(cause: RubOutCause, names: readonly CauseSize[], { probability, sizes, curve }: Misfit): Judged {
  const standing: CauseStanding = probability < RULED_OUT_BELOW ? 'ruled-out' : 'fits';
  return {
    cause,
    standing,
    probability,
    sizes: Object.fromEntries(names.map((name, k) => [name, sizes[k]])),
    curve: Array.from(curve),
    reason:
      standing === 'fits'
        ? 'Its curve fits the change within the noise.'
        : 'Its best curve leaves more of the change than the noise accounts for.',
  };
}

/**
 * Too much or too little of a pigment at the surface. Against the white that is a change of strength either way; what several colorants can do
 * among themselves has no bounds as long as their spectra aren't known.
 */
function separation(weighing: Weighing, compare: (model: CauseModel) => Misfit): Judged {
  const cause = 'pigments-separated';
  const { spectral, tint } = weighing;
  const not = impossible(weighing, cause);
  if (not !== undefined || !spectral) return { cause, standing: 'ruled-out', reason: not ?? '' };
  const found = judged(cause, ['absorption'], compare(colouredModel(spectral, -0.95)));
  if (found.standing === 'fits' || tint !== 'several-pigments') return found;
  return { cause, standing: 'fits', reason: 'Several colorants may trade places in any way that their spectra allow.' };
}

/** Separation stands always beside flocculation: both bring a pigment into the layer that is read. */
function beside(separated: Judged, flocculated: boolean): Judged {
  if (separated.standing === 'fits' || !flocculated) return separated;
  const { cause } = separated;
  return { cause, standing: 'fits', reason: 'It leaves what flocculation leaves, and so stands beside it.' };
}

/** Both pigments at once are in question wherever one of them is: the share of the other may be nothing. */
function withParts(both: Judged, pigments: readonly Judged[]): Judged {
  const part = pigments.find(({ cause, standing }) => cause !== 'both-flocculated' && standing === 'fits');
  if (!part || both.standing === 'fits' || both.probability === undefined) return both;
  return {
    ...part,
    cause: both.cause,
    reason: 'It fits with one of its parts, and the other may be any that hides it.',
  };
}

/** One colorant of several may raise absorption wherever it absorbs, and lower it nowhere. */
function oneColorant(weighing: Weighing, noise: SpectralNoise): Judged {
  const cause = 'one-colorant-flocculated';
  const { spectral, colorantChanges } = weighing;
  const not = impossible(weighing, cause);
  if (not !== undefined || !spectral) return { cause, standing: 'ruled-out', reason: not ?? '' };
  const ways = colorantChanges.map(movementOf);
  if (ways.includes('less') && ways.includes('more')) {
    return { cause, standing: 'ruled-out', reason: 'One colorant became stronger and another weaker.' };
  }
  const lighter = spectral.change.map((value) => Math.max(value, 0));
  const none: CauseModel = {
    start: [],
    least: [],
    curve: () => lighter.map(() => 0),
    roughness: 0,
    tolerance: () => [],
  };
  const { probability } = misfitOf(lighter, none, noise);
  return probability < RULED_OUT_BELOW
    ? { cause, standing: 'ruled-out', probability, reason: 'Somewhere the rubbed area absorbs less.' }
    : {
        cause,
        standing: 'fits',
        reason: 'The rubbed area absorbs no less anywhere; the spectra of the colorants would tell more.',
      };
}
