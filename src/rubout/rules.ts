import type { Movement } from './colorant-changes.js';
import type { RubOutCause, RubOutDiagnosis, Tint } from './rub-out-result.js';
import type { RubOutThresholds } from './thresholds.js';

/** What the rules look at: every quantity that may decide a diagnosis. */
export interface Facts {
  readonly thresholds: RubOutThresholds;
  readonly tint: Tint;
  /** ΔE*ab of the means. */
  readonly dEab: number;
  /** Whether the interval of ΔE*ab leaves out zero; `unknown` without an interval. */
  readonly noise: 'beyond' | 'within' | 'unknown';
  /** Root-mean-square ΔE*ab of the unrubbed spots from their mean; absent for one spot. */
  readonly unrubbedScatter?: number;
  /** Whether the rubbed area is the stronger one: K/S rises more over the spectrum than it falls. */
  readonly stronger: boolean;
  /** Whether the rubbed area is the lighter one. */
  readonly lighter: boolean;
  /** Share of ΔE*ab left at equal strength. */
  readonly shadeShare: number;
  /** Of the change of K/S over the spectrum, the smaller of what rises and what falls, against the larger. */
  readonly bothSigns: number;
  /** Whether the readings have any K/S, without which no change has a direction. */
  readonly hasAbsorption: boolean;
  /** Which way each colorant moved, where the tint was resolved into them. */
  readonly movements: readonly Movement[];
  /** Which way the scattering of the white changed, where that can be told from the colorants. */
  readonly whiteMovement: Movement;
}

/** One line of the decision table. */
export interface Rule {
  readonly when: (facts: Facts) => boolean;
  readonly diagnosis: RubOutDiagnosis;
  /** Every cause that leaves such readings, the likeliest first. */
  readonly causes: readonly RubOutCause[];
  readonly reason: string;
}

const even = ({ unrubbedScatter = 0, thresholds }: Facts) => unrubbedScatter < thresholds.unevenness;
const single = ({ tint }: Facts) => tint === 'single-pigment';
const exchange = ({ bothSigns, thresholds }: Facts) => bothSigns >= thresholds.bothSigns;
const strengthOnly = ({ shadeShare, thresholds }: Facts) => shadeShare <= thresholds.shadeShare;
const moved = ({ movements }: Facts, way: Movement) => movements.filter((movement) => movement === way).length;
const resolved = (facts: Facts) => moved(facts, 'more') + moved(facts, 'less') > 0;
const all = (facts: Facts, way: Movement) => resolved(facts) && moved(facts, way) === facts.movements.length;

const COLOURED = 'coloured-pigment-flocculated';
const WHITE = 'white-pigment-flocculated';
const SEPARATED = 'pigments-separated';

/**
 * The decision table of a rub-out: the first line that applies decides. Noise comes first, then an uneven film, then the
 * direction of the change, since a direction means nothing where the difference itself is chance.
 *
 * What rubbing shows of flocculation and separation is common practice, no source; the nearest published method is ASTM D5326.
 */
export const RULES: readonly Rule[] = Object.freeze([
  // Noise
  {
    when: (facts) => even(facts) && facts.noise === 'within',
    diagnosis: 'none',
    causes: [],
    reason: 'The difference is within the scatter of the readings, so it is no finding.',
  },
  {
    when: (facts) => even(facts) && facts.dEab < facts.thresholds.visible,
    diagnosis: 'none',
    causes: [],
    reason: 'The difference is below what the eye sees, so no cause is looked for.',
  },
  // Uneven film
  {
    when: (facts) =>
      !even(facts) &&
      (facts.noise === 'within' || facts.dEab < facts.thresholds.overScatter * (facts.unrubbedScatter ?? 0)),
    diagnosis: 'uneven-film',
    causes: ['uneven-film'],
    reason:
      'The unrubbed spots differ among themselves so much that the difference from the rubbed area says nothing about the pigments.',
  },
  // Direction
  {
    when: ({ hasAbsorption }) => !hasAbsorption,
    diagnosis: 'undetermined',
    causes: [],
    reason: 'The readings have no K/S, so the change has no direction that would name a pigment.',
  },
  // Direction, by the colorants where the tint was resolved into them
  {
    when: (facts) => facts.whiteMovement === 'more' && !resolved(facts),
    diagnosis: WHITE,
    causes: [WHITE],
    reason: 'Rubbing made the white scatter more and left every coloured pigment as it was.',
  },
  {
    when: (facts) => moved(facts, 'more') > 0 && moved(facts, 'less') > 0,
    diagnosis: SEPARATED,
    causes: [SEPARATED],
    reason:
      'Rubbing made one pigment stronger and another weaker: the surface had too little of one and too much of the other.',
  },
  {
    when: (facts) => all(facts, 'more') && strengthOnly(facts),
    diagnosis: COLOURED,
    causes: [COLOURED, SEPARATED],
    reason: 'Rubbing made every coloured pigment stronger by about the same factor.',
  },
  {
    when: (facts) => moved(facts, 'more') > 0,
    diagnosis: 'undetermined',
    causes: [COLOURED, SEPARATED],
    reason:
      'Rubbing made a pigment stronger: it was flocculated or had sunk below the surface, which leaves the same spectra.',
  },
  {
    when: (facts) => all(facts, 'less') && strengthOnly(facts),
    diagnosis: WHITE,
    causes: [WHITE, SEPARATED],
    reason:
      'Rubbing made every coloured pigment weaker by about the same factor, as more scattering by the white does.',
  },
  {
    when: (facts) => moved(facts, 'less') > 0,
    diagnosis: SEPARATED,
    causes: [SEPARATED],
    reason: 'Rubbing made a pigment weaker and left another as it was: the surface had too much of it.',
  },
  // Direction, tint of one pigment
  {
    when: (facts) => single(facts) && strengthOnly(facts) && !exchange(facts) && facts.stronger,
    diagnosis: COLOURED,
    causes: [COLOURED],
    reason: 'The rubbed area is stronger and of the same shade: shear made more of the coloured pigment count.',
  },
  {
    when: (facts) => single(facts) && strengthOnly(facts) && !exchange(facts) && facts.lighter,
    diagnosis: WHITE,
    causes: [WHITE],
    reason: 'The rubbed area is weaker, lighter and of the same shade: shear made more of the white count.',
  },
  {
    when: single,
    diagnosis: 'undetermined',
    causes: [],
    reason:
      'The change is not one of strength, which is all that a coloured pigment and a white can do: look for a change of the surface by rubbing, dirt, or a pigment that was not declared.',
  },
  // Direction, tint of several pigments that was not resolved
  {
    when: exchange,
    diagnosis: SEPARATED,
    causes: [SEPARATED],
    reason:
      'Rubbing raised absorption in one part of the spectrum and lowered it in another: one pigment took the place of another.',
  },
  {
    when: (facts) => facts.stronger && strengthOnly(facts),
    diagnosis: COLOURED,
    causes: [COLOURED, SEPARATED],
    reason: 'The rubbed area is stronger and nearly of the same shade: shear made more of the coloured pigments count.',
  },
  {
    when: (facts) => facts.stronger,
    diagnosis: 'undetermined',
    causes: [COLOURED, SEPARATED],
    reason:
      'The rubbed area is stronger and of another shade: one pigment was flocculated or had sunk below the surface, which leaves the same spectra.',
  },
  {
    when: (facts) => strengthOnly(facts) && facts.lighter,
    diagnosis: WHITE,
    causes: [WHITE, SEPARATED],
    reason: 'The rubbed area is weaker, lighter and nearly of the same shade: shear made more of the white count.',
  },
  {
    when: () => true,
    diagnosis: SEPARATED,
    causes: [SEPARATED],
    reason: 'The rubbed area is weaker and of another shade: the surface had too much of one pigment.',
  },
]);
