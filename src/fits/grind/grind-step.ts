/** A time of a grind curve with what was found there. */
export interface GrindStep {
  readonly time: number;
  /** Mean of what was made anew. */
  readonly strength: number;
  /** Of the mean, from the scatter of the whole ladder. */
  readonly standardError: number;
  /** `one reading`, `3 spots of one film`, `2 weigh-ups`. */
  readonly noun: string;
}
