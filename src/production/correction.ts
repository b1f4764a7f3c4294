/**
 * What is added to a batch to mend its strength:
 * - `vehicle`: what the colorant is let down with; thins a colorant that is too strong
 * - `weak-batch`: colorant of known strength below the standard; for a colorant that is too strong
 * - `strong-batch`: colorant of known strength above the standard; for a colorant that is too weak
 * - `mill-base`: the same colorant before its let-down, of known strength; for a colorant that is too weak
 * - `white-base`: the paint without colorant; for a tinted paint that is too strong
 * - `colorant`: colorant, of the standard's strength unless another is stated; for a tinted paint that is too weak
 */
export const BATCH_CORRECTIONS = [
  'vehicle',
  'weak-batch',
  'strong-batch',
  'mill-base',
  'white-base',
  'colorant',
] as const;

/** One of {@link BATCH_CORRECTIONS}. */
export type BatchCorrection = (typeof BATCH_CORRECTIONS)[number];

/** What a batch is: a colorant, whose strength is that of its reduction, or a paint that is tinted already. */
export const BATCH_KINDS = ['colorant', 'paint'] as const;

/** One of {@link BATCH_KINDS}. */
export type BatchKind = (typeof BATCH_KINDS)[number];

interface Rule {
  readonly kind: BatchKind;
  /** Which batches it mends. */
  readonly mends: 'too-strong' | 'too-weak';
  /** Whether the caller has to state the strength of what is added, and on which side of 100 % it must lie. */
  readonly strength: 'none' | 'below' | 'above' | 'optional';
  /** What else the addition changes, for the person who decides. */
  readonly changes: readonly string[];
}

/** What each correction is for and what it brings along. */
export const CORRECTION_RULES: Readonly<Record<BatchCorrection, Rule>> = {
  vehicle: {
    kind: 'colorant',
    mends: 'too-strong',
    strength: 'none',
    changes: ['lower pigment loading', 'lower share of every additive', 'another viscosity'],
  },
  'weak-batch': {
    kind: 'colorant',
    mends: 'too-strong',
    strength: 'below',
    changes: [
      'loading, additive shares and viscosity between those of both batches',
      'the shade moves towards the other batch',
    ],
  },
  'strong-batch': {
    kind: 'colorant',
    mends: 'too-weak',
    strength: 'above',
    changes: [
      'loading, additive shares and viscosity between those of both batches',
      'the shade moves towards the other batch',
    ],
  },
  'mill-base': {
    kind: 'colorant',
    mends: 'too-weak',
    strength: 'above',
    changes: ['higher pigment loading', 'higher share of the additives of the mill base', 'another viscosity'],
  },
  'white-base': {
    kind: 'paint',
    mends: 'too-strong',
    strength: 'none',
    changes: ['more paint than was ordered', 'a lower share of colorant and of what it brings along'],
  },
  colorant: {
    kind: 'paint',
    mends: 'too-weak',
    strength: 'optional',
    changes: [
      'a higher share of colorant and of what it brings along (wetting agents, water or solvent)',
      'drying, film hardness and limits of the tinting scheme',
    ],
  },
};
