import { TintladderError, type Warning, type WarningCode } from '../core/index.js';
import { assertObject, assertOneOf, assertString } from '../core/internal.js';
import { geometriesAgree } from './geometry.js';
import { assertViewing, type Viewing } from './viewing.js';

/** Whether the specular reflection at the surface was read with the rest. */
export const SPECULAR_MODES = ['included', 'excluded'] as const;

/** One of {@link SPECULAR_MODES}. */
export type SpecularMode = (typeof SPECULAR_MODES)[number];

/** Whether readings were corrected for the band-pass of the instrument. */
export const BAND_PASSES = ['corrected', 'not-corrected'] as const;

/** One of {@link BAND_PASSES}. */
export type BandPass = (typeof BAND_PASSES)[number];

/** Under what conditions a colour was read. What a file or caller doesn't state stays absent; nothing is assumed. */
export interface Conditions {
  /** Illuminant and observer that Lab or XYZ values belong to; a spectrum has none. */
  readonly viewing?: Viewing;
  readonly specular?: SpecularMode;
  /** Illumination and viewing geometry as the standards write it, such as `di:8°` or `45°a:0°`. */
  readonly geometry?: string;
  readonly instrument?: string;
  /** What was read between two calibrations of one instrument. */
  readonly session?: string;
  readonly bandPass?: BandPass;
}

/** What is not the colour itself: all conditions but the viewing, which belongs to a colour. */
type Circumstance = Exclude<keyof Conditions, 'viewing'>;

/** A name for messages with the conditions that stand behind it: a reading, a side, a surface. */
export interface NamedConditions {
  readonly name: string;
  readonly conditions: Conditions;
}

/** What several readings state alike, and what has to be said about the rest. */
export interface CommonConditions {
  /** Each condition that all of them state, and state alike. */
  readonly conditions: Omit<Conditions, 'viewing'>;
  readonly warnings: readonly Warning[];
}

interface Rule {
  readonly title: string;
  readonly agree: (one: string, other: string) => boolean;
  /** Given where two differ; without it they can't be compared. */
  readonly differing?: { readonly code: WarningCode; readonly consequence: string };
}

const same = (one: string, other: string) => one === other;

const RULES: Readonly<Record<Circumstance, Rule>> = {
  specular: { title: 'The specular mode', agree: same },
  geometry: { title: 'The geometry', agree: geometriesAgree },
  instrument: {
    title: 'The instrument',
    agree: same,
    differing: { code: 'instruments-differ', consequence: "part of a difference may be the instruments'" },
  },
  session: {
    title: 'The session',
    agree: same,
    differing: { code: 'sessions-differ', consequence: 'part of a difference may be the calibration' },
  },
  bandPass: {
    title: 'The band-pass correction',
    agree: same,
    differing: { code: 'band-passes-differ', consequence: 'part of a difference may be the band-pass' },
  },
};

/**
 * Refuses conditions that are none, and words that no condition has.
 *
 * @throws TintladderError `wrong-type`, `invalid-option`, `unknown-illuminant`, `unknown-observer`
 */
export function assertConditions(conditions: Conditions, path: string): void {
  assertObject(conditions, path, 'the conditions of a reading');
  const { viewing, specular, geometry, instrument, session, bandPass } = conditions;
  if (viewing !== undefined) assertViewing(viewing, `${path}.viewing`);
  if (specular !== undefined) assertOneOf(specular, SPECULAR_MODES, `${path}.specular`);
  if (bandPass !== undefined) assertOneOf(bandPass, BAND_PASSES, `${path}.bandPass`);
  for (const [name, text] of Object.entries({ geometry, instrument, session })) {
    if (text !== undefined) assertString(text, `${path}.${name}`);
  }
}

/**
 * The one rule for the conditions of readings that are compared or averaged, for any number of them.
 *
 * Specular mode or geometry stated and different: a fault. Instrument, session or band-pass correction stated and different: a warning. Stated for
 * some only: one warning for each condition. Stated by none: nothing. The viewing belongs to a colour and is compared where that is taken.
 *
 * @param readings - each with the name that messages call it by
 * @returns what all state alike, and the warnings `condition-not-stated`, `instruments-differ`, `sessions-differ` and `band-passes-differ`,
 * each with the names in its figures
 * @throws TintladderError `conditions-mismatch`, its path the name of the reading and the condition
 */
export function commonConditions(readings: readonly NamedConditions[]): CommonConditions {
  const found = (Object.keys(RULES) as Circumstance[]).map((condition) => compareOne(condition, readings));
  return {
    conditions: Object.assign({}, ...found.map(({ common }) => common)),
    warnings: found.flatMap(({ warning }) => warning ?? []),
  };
}

function compareOne(
  condition: Circumstance,
  readings: readonly NamedConditions[],
): { common?: object; warning?: Warning } {
  const { title, agree, differing } = RULES[condition];
  const stated = readings.flatMap(({ name, conditions: { [condition]: value } }) =>
    value === undefined ? [] : { name, value },
  );
  if (stated.length === 0) return {};
  const [first] = stated;
  const other = stated.find(({ value }) => !agree(first.value, value));
  if (other && !differing) {
    throw new TintladderError('conditions-mismatch', {
      path: `${other.name}.conditions.${condition}`,
      received: other.value,
      expected: `${JSON.stringify(first.value)}, as of ${first.name}`,
      hint: 'Compare readings that were taken in the same way.',
    });
  }
  if (other && differing) {
    const { code, consequence } = differing;
    const message = `${title} is ${JSON.stringify(first.value)} for ${first.name} and ${JSON.stringify(other.value)} for ${other.name}; ${consequence}.`;
    return {
      warning: {
        code,
        message,
        path: condition,
        figures: { names: [first.name, other.name], values: [first.value, other.value] },
      },
    };
  }
  const silent = readings.filter(({ conditions }) => conditions[condition] === undefined).map(({ name }) => name);
  if (silent.length === 0) return { common: { [condition]: first.value } };
  const more = silent.length > 1 ? ` and ${silent.length - 1} more` : '';
  const message = `${title} is stated for ${first.name} but not for ${silent[0]}${more}; they are taken to agree.`;
  return {
    warning: {
      code: 'condition-not-stated',
      message,
      path: condition,
      figures: { stated: stated.map(({ name }) => name), notStated: silent },
    },
  };
}
