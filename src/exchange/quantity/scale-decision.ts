import { TintladderError } from '../../core/index.js';
import type { Notes } from '../text/notes.js';
import type { ReflectanceScale } from './reflectance-scale.js';

/** A file up to this is in fractions: the brightest fluorescent whites read little above 1. */
export const CLEARLY_FRACTION = 1.2;
/** A file that reaches this is in percent: twice the perfect diffuser is no reflectance, and a film below 5 % throughout is rare. */
export const CLEARLY_PERCENT = 5;
/** How many spectra that fit either scale may wait for one that settles it. */
const WAITING = 10_000;

/**
 * Decides over a whole file whether reflectance that states no scale is in fractions or in percent: by the highest value as written. Up to 1.2 it
 * is taken for fractions and from 5 on for percent, both noted; between them the file is refused.
 */
export interface ScaleDecision {
  readonly scale: ReflectanceScale | undefined;
  /** Whether a spectrum waits for the decision. */
  readonly open: boolean;
  /** Judges one spectrum by its highest value, which `place` finds. */
  judge(highest: number, place: () => string): void;
  /** Settles the scale at the end of the file. */
  settle(): void;
}

/** Decides the scale of a file that states none, from the highest value of all its spectra. */
export function createScaleDecision(notes: Notes): ScaleDecision {
  let scale: ReflectanceScale | undefined;
  let highestOfAll = Number.NEGATIVE_INFINITY;
  let highestPlace = '';
  let waiting = 0;
  const dark: string[] = [];

  const assume = (assumed: ReflectanceScale) => {
    scale = assumed;
    const figures = { highest: highestOfAll };
    if (assumed === 'percent') {
      const message = 'The file does not state its scale; its values were read in percent.';
      notes.add('percent-assumed', message, highestPlace, figures);
    } else {
      const message = 'The file does not state its scale; its values were read as fractions of 1.';
      notes.add('fraction-assumed', message, highestPlace, figures);
    }
  };
  const noteDark = (place: string) =>
    notes.count(
      'dark-readings',
      place,
      (count) =>
        `${count === 1 ? 'One reading stays' : `${count} readings stay`} below ${CLEARLY_FRACTION} % throughout; that such a reading is in percent like the rest of the file can't be told from its values.`,
    );

  return {
    get scale() {
      return scale;
    },
    get open() {
      return scale === undefined && highestPlace !== '';
    },
    judge(highest, place) {
      if (highest > highestOfAll) {
        highestOfAll = highest;
        highestPlace = place();
      }
      if (scale === 'fraction' && highest > CLEARLY_FRACTION) throw mixed(place(), highest);
      if (scale === 'percent' && highest <= CLEARLY_FRACTION) noteDark(place());
      if (scale !== undefined) return;
      if (highest >= CLEARLY_PERCENT) {
        assume('percent');
        for (const one of dark) noteDark(one);
        dark.length = 0;
        return;
      }
      if (highest <= CLEARLY_FRACTION) dark.push(place());
      if (++waiting <= WAITING) return;
      if (highestOfAll > CLEARLY_FRACTION) throw unclear(highestPlace, highestOfAll);
      assume('fraction');
    },
    settle() {
      if (scale !== undefined || highestPlace === '') return;
      if (highestOfAll > CLEARLY_FRACTION) throw unclear(highestPlace, highestOfAll);
      assume('fraction');
    },
  };
}

function mixed(path: string, highest: number): TintladderError {
  return new TintladderError('scale-mixed', {
    path,
    received: highest,
    expected: `a fraction of at most ${CLEARLY_FRACTION}, as in the ${WAITING} readings before`,
    hint: "If the file is in percent, pass scale: 'percent'.",
  });
}

function unclear(path: string, highest: number): TintladderError {
  return new TintladderError('reflectance-out-of-range', {
    path,
    received: highest,
    expected: `a file whose highest value is at most ${CLEARLY_FRACTION} (fractions) or at least ${CLEARLY_PERCENT} (percent)`,
    hint: "State the scale: pass scale: 'percent' or scale: 'fraction'.",
  });
}
