import type { Observer } from '../../colorimetry/index.js';
import { geometryAt } from './geometry-text.js';
import { illuminantAt } from './illuminant-name.js';
import type { ConditionPart, StatedParts } from './stated-parts.js';

/** What a text says of the conditions. */
export interface Statement {
  readonly parts: StatedParts;
  /** Words that are no part of any condition. */
  readonly rest: readonly string[];
  /** A part that the text states twice, differently. */
  readonly contradictory?: ConditionPart;
}

const SPECULAR = new Set(
  'specular spec gloss glanz glanzanteil glanzkomponente spéculaire spekular brillant brillance especular speculare'.split(
    ' ',
  ),
);
const INCLUDED = new Set(
  'included incl inc including inclus incluse incluida incluido inclusa incluso eingeschlossen inklusive inkl'.split(
    ' ',
  ),
);
const EXCLUDED = new Set(
  'excluded excl exc excluding without exclu exclue excluida excluido esclusa escluso ausgeschlossen exklusive exkl ohne sans senza sin'.split(
    ' ',
  ),
);
/** Words that mean included only where nothing else is said: "with the specular component excluded". */
const WITH = new Set(['with', 'mit', 'avec', 'con']);
const MODES: ReadonlyMap<string, 'included' | 'excluded'> = new Map([
  ...['sci', 'spin', 'rsin'].map((word) => [word, 'included'] as const),
  ...['sce', 'spex', 'rsex'].map((word) => [word, 'excluded'] as const),
]);
const YES = new Set(['yes', 'on', 'true', 'ja', 'oui', 'si', 'sí']);
const NO = new Set(['no', 'off', 'false', 'nein', 'non']);
/** Words that stand beside a condition and say nothing more. */
const FILLERS = new Set(
  (
    'illuminant illuminants ill illum light lighting source lichtart normlichtart iluminante illuminante observer observers obs standard beobachter ' +
    'normalbeobachter observateur observador osservatore cie iso din astm degree degrees deg grad degrés degré grados gradi ° º supplementary field ' +
    'component components comp componente composante komponente anteil reflection reflexion réflexion mode modus sphere sphère kugel geometry and und et y e the component. ' +
    'viewing angle under for bei pour von of daylight tageslicht norm nm'
  ).split(' '),
);
/** Statements that nothing is stated. */
const UNSTATED = /^(?:not stated|unstated|unknown|none|n\/?a|not specified|unbekannt|inconnu|[-–—?]+)$/i;

const SEPARATORS = /^[\s()[\]{},;:/|+_"'’.\-–—]+/;
const OBSERVER = /^(?:cie\s*)?(1931|1964|10|2)(?:[.,]0+)?(?![.,]?\d)/i;
const WORD = /^(?:[\p{L}*%Δ°º]+|\d+(?:[.,]\d+)?|.)/u;

/** Whether a text says that a condition is not stated. */
export function isUnstated(text: string): boolean {
  return UNSTATED.test(text.trim());
}

/**
 * Reads a text as a statement of conditions: illuminant, observer, specular mode and geometry in any order and punctuation.
 *
 * @param text - such as `D65/10°`, `10 deg, D65`, `F2/10`, `specular excluded`, `di:8° SCI`
 * @param about - the part that a key or a column heading names, which settles what `included`, `yes` or a bare `a` belong to
 */
export function parseStatement(text: string, about?: ConditionPart): Statement {
  const found = new Map<ConditionPart, string>();
  const rest: string[] = [];
  let contradictory: ConditionPart | undefined;
  let specularNamed = about === 'specular';
  let withNamed = false;
  let pending: 'included' | 'excluded' | undefined;
  const state = (part: ConditionPart, value: string) => {
    const before = found.get(part);
    if (before !== undefined && before !== value) contradictory ??= part;
    found.set(part, value);
  };
  let left = about === 'illuminant' ? text.replace(/^\s*[ace]\s*$/, (letter) => letter.toUpperCase()) : text;
  // what is longer is prose, or damaged
  for (let steps = 0; left !== '' && steps < 60; steps++) {
    const separators = SEPARATORS.exec(left);
    if (separators) {
      left = left.slice(separators[0].length);
      continue;
    }
    const geometry = geometryAt(left);
    if (geometry) {
      state('geometry', geometry.geometry);
      if (geometry.specular) state('specular', geometry.specular);
      left = left.slice(geometry.length);
      continue;
    }
    const illuminant = illuminantAt(left);
    if (illuminant) {
      state('illuminant', illuminant.name);
      left = left.slice(illuminant.length);
      continue;
    }
    const observer = OBSERVER.exec(left);
    if (observer) {
      const degrees: Observer = observer[1] === '10' || observer[1] === '1964' ? '10' : '2';
      state('observer', degrees);
      left = left.slice(observer[0].length);
      continue;
    }
    const word = WORD.exec(left)?.[0] ?? left[0];
    left = left.slice(word.length);
    const lower = word.toLowerCase();
    const mode = MODES.get(lower);
    if (mode) state('specular', mode);
    else if (SPECULAR.has(lower)) specularNamed = true;
    else if (INCLUDED.has(lower) || (about === 'specular' && YES.has(lower))) pending = 'included';
    else if (WITH.has(lower)) withNamed = true;
    else if (EXCLUDED.has(lower) || (about === 'specular' && NO.has(lower))) pending = 'excluded';
    else if (!FILLERS.has(lower)) rest.push(word);
    if (pending && specularNamed) {
      state('specular', pending);
      pending = undefined;
    }
  }
  if (left !== '') rest.push(left);
  if (pending) rest.push(pending);
  else if (withNamed && specularNamed && !found.has('specular')) found.set('specular', 'included');
  else if (withNamed && !specularNamed) rest.push('with');
  return {
    parts: Object.fromEntries(found) as StatedParts,
    rest,
    ...(contradictory ? { contradictory } : {}),
  };
}

/** Whether a statement says something of the conditions and nothing else. */
export function isWhole({ parts, rest }: Statement): boolean {
  return rest.length === 0 && Object.keys(parts).length > 0;
}
