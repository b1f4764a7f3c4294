import type { Notes } from '../text/notes.js';

/** X, Y, Z up to this throughout a file are those of a white of 1. */
const LARGEST_OF_UNIT_WHITE = 1.3;
/** How many colours may wait for one that settles it. */
const WAITING = 10_000;

/** Decides over a whole file whether its X, Y, Z belong to a white of Y = 100, as the CIE has it, or of 1. */
export interface TristimulusScale {
  /** What the values are to be multiplied by; absent while open. */
  readonly factor: number | undefined;
  /** Whether a colour waits for the decision. */
  readonly open: boolean;
  /** Judges one colour by its highest value. */
  judge(highest: number, place: () => string): void;
  settle(): void;
}

/** Decides whether the X, Y, Z of a file are written for a white of 1 or of 100, from their highest values. */
export function createTristimulusScale(notes: Notes): TristimulusScale {
  let factor: number | undefined;
  let first = '';
  let waiting = 0;
  return {
    get factor() {
      return factor;
    },
    get open() {
      return factor === undefined && first !== '';
    },
    judge(highest, place) {
      if (factor !== undefined) return;
      if (first === '') first = place();
      if (highest > LARGEST_OF_UNIT_WHITE) factor = 1;
      else if (++waiting > WAITING) this.settle();
    },
    settle() {
      if (factor !== undefined || first === '') return;
      factor = 100;
      const message = `X, Y, Z of the file stay below ${LARGEST_OF_UNIT_WHITE}; they were taken for those of a white of Y = 1 and multiplied by 100.`;
      notes.add('tristimulus-scaled', message, first);
    },
  };
}
