/** What can make the rubbed area differ from the unrubbed one. */
export const RUB_OUT_CAUSES = [
  'coloured-pigment-flocculated',
  'white-pigment-flocculated',
  'both-flocculated',
  'one-colorant-flocculated',
  'pigments-separated',
  'surface-changed',
  'thickness-changed',
  'uneven-film',
] as const;

/** One of {@link RUB_OUT_CAUSES}. */
export type RubOutCause = (typeof RUB_OUT_CAUSES)[number];

/**
 * How a cause stands after its effect was computed and compared with the readings: `fits-alone` where no other that was weighed fits, `fits`
 * beside others, `ruled-out` where its misfit is beyond the noise (0.5 %) or the film can't have it, `not-weighed` where the readings don't allow
 * a comparison.
 */
export const CAUSE_STANDINGS = ['fits-alone', 'fits', 'ruled-out', 'not-weighed'] as const;

/** One of {@link CAUSE_STANDINGS}. */
export type CauseStanding = (typeof CAUSE_STANDINGS)[number];

/** One cause, how it stands and why. */
export interface WeighedCause {
  readonly cause: RubOutCause;
  readonly standing: CauseStanding;
  /** Probability of a misfit at least as large as found where this cause is all there is; absent where nothing was compared. */
  readonly probability?: number;
  /**
   * Sizes of the effect that fits best: change of the absorption of the coloured pigments or of the scattering of the white, as a share, of the
   * thickness, as a share, or of every reading, in units of reflectance.
   */
  readonly sizes?: Readonly<Partial<Record<CauseSize, number>>>;
  /** Change of measured reflectance that this cause would give at its best, at `spectrum.wavelengths` of the result. */
  readonly curve?: readonly number[];
  /** True where it fits only together with a change of the surface. */
  readonly withSurface?: boolean;
  /** The colorants that moved, where the tint was resolved into them. */
  readonly colorants: readonly string[];
  /** What led to the standing. */
  readonly reason: string;
  /** How this cause makes a difference. */
  readonly because: string;
  /** What confirms it or tells it from the others. */
  readonly check: string;
}

/** What the size of an effect is a change of. */
export const CAUSE_SIZES = ['absorption', 'scattering', 'reflectance', 'thickness'] as const;

/** One of {@link CAUSE_SIZES}. */
export type CauseSize = (typeof CAUSE_SIZES)[number];

/** Whether a cause is one of those that stay in question. */
export function isPossible({ standing }: Pick<WeighedCause, 'standing'>): boolean {
  return standing === 'fits' || standing === 'fits-alone';
}
