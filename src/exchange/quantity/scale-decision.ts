import { TintladderError } from '../../core/index.js';
import type { ReflectanceScale } from '../measurement/measurement.js';
import type { Notes } from '../text/notes.js';

/** A spectrum up to this is a fraction: the brightest fluorescent whites read little above 1. */
const CLEARLY_FRACTION = 1.2;
/** A spectrum beyond this is in percent: twice the perfect diffuser is no reflectance, and a film below 5 % throughout is rare. */
const CLEARLY_PERCENT = 5;
const LARGEST_FRACTION = 2;
/** How many spectra that fit either scale may wait for one that settles it. */
const WAITING = 10_000;

/** Decides over a whole file whether its reflectance is in fractions or in percent. */
export interface ScaleDecision {
  readonly scale: ReflectanceScale | undefined;
  readonly from: 'stated' | 'values';
  /** Takes note of a scale that the file itself states; the caller's word is stronger. */
  state(scale: ReflectanceScale, path: string): void;
  /** Judges one spectrum by its highest value, which `place` finds; `false` while the scale stays open. */
  judge(highest: number, path: () => string): boolean;
  /** Settles the scale at the end of the file. */
  settle(): void;
}

/**
 * @param asked - the caller's scale, which nothing in the file overrides
 * @param notes - where the decision is reported
 */
export function createScaleDecision(asked: ReflectanceScale | undefined, notes: Notes): ScaleDecision {
  let scale = asked;
  let from: 'stated' | 'values' = asked ? 'stated' : 'values';
  let settledAt = '';
  let highestOfAll = 0;
  let openPlace = '';
  let waiting = 0;

  const assume = (assumed: ReflectanceScale, path: string) => {
    scale = assumed;
    settledAt = path;
    const what = assumed === 'percent' ? 'in percent' : 'as fractions of 1';
    const code = assumed === 'percent' ? 'percent-assumed' : 'fraction-assumed';
    notes.add(code, `The file does not state its scale; its values were read ${what}.`, path);
  };

  return {
    get scale() {
      return scale;
    },
    get from() {
      return from;
    },
    state(stated, path) {
      if (asked) return;
      if (scale !== undefined && scale !== stated) throw mixed(path, stated, scale, settledAt);
      scale = stated;
      from = 'stated';
      settledAt = path;
    },
    judge(highest, path) {
      if (highest > highestOfAll) {
        highestOfAll = highest;
        openPlace = path();
      }
      if (from === 'stated') return true;
      if (scale === undefined) {
        if (highest <= CLEARLY_FRACTION) {
          if (highestOfAll > LARGEST_FRACTION) throw mixed(openPlace, highestOfAll, 'fraction', path());
          assume('fraction', path());
        } else if (highest >= CLEARLY_PERCENT) assume('percent', path());
        else if (++waiting > WAITING) throw unclear(openPlace, highestOfAll);
      } else if (scale === 'percent' ? highest <= CLEARLY_FRACTION : highest > LARGEST_FRACTION) {
        throw mixed(path(), highest, scale, settledAt);
      }
      return scale !== undefined;
    },
    settle() {
      if (asked) return;
      if (scale === undefined && openPlace !== '') {
        if (highestOfAll > LARGEST_FRACTION) throw unclear(openPlace, highestOfAll);
        assume('fraction', openPlace);
      }
      if (from === 'stated' && scale === 'percent' && openPlace !== '' && highestOfAll <= CLEARLY_FRACTION) {
        throw mixed(openPlace, highestOfAll, 'percent', settledAt);
      }
    },
  };
}

function mixed(path: string, received: unknown, scale: ReflectanceScale, settledAt: string): TintladderError {
  return new TintladderError('scale-mixed', {
    path,
    received,
    expected:
      scale === 'percent'
        ? `reflectance in percent, as at ${settledAt}`
        : `reflectance in fractions, as at ${settledAt}`,
    hint: `If the whole file is on one scale, state it, as in scale: '${scale}'.`,
  });
}

function unclear(path: string, highest: number): TintladderError {
  return new TintladderError('reflectance-out-of-range', {
    path,
    received: highest,
    expected: 'a fraction from 0 to 2, or a value elsewhere in the file that is clearly a percentage',
    hint: "If the file is in percent, pass scale: 'percent'.",
  });
}
