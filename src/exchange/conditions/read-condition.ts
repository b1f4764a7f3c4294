import type { Notes } from '../text/notes.js';
import { conditionKey } from './condition-key.js';
import { type ConditionPart, mergeParts, NOTHING_STATED, type StatedParts } from './stated-parts.js';
import { isUnstated, parseStatement } from './statement.js';

/** What a key and its value say of the conditions. */
export interface ReadCondition {
  readonly parts: StatedParts;
  /** Parts that are said not to be stated, which ends what stood before. */
  readonly cleared: readonly ConditionPart[];
}

/**
 * Reads a key and a value, or a column's heading and a cell, as a condition; `undefined` where the key names none. A value that is not understood
 * is noted.
 */
export function readCondition(
  key: string,
  value: string,
  place: () => string,
  notes: Notes,
): ReadCondition | undefined {
  const about = conditionKey(key);
  return about.length === 0 ? undefined : { ...readValue(about, value.trim(), place, notes) };
}

/** The same for a key whose parts are known. */
export function readValue(
  about: readonly ConditionPart[],
  value: string,
  place: () => string,
  notes: Notes,
): ReadCondition {
  if (value === '' || isUnstated(value)) return { parts: NOTHING_STATED, cleared: value === '' ? [] : about };
  if (about.length === 1 && (about[0] === 'instrument' || about[0] === 'session')) {
    return { parts: { [about[0]]: value }, cleared: [] };
  }
  // a column of gloss readings is no statement of the specular mode
  if (about.length === 1 && about[0] === 'specular' && /^[\d.,\s%]+$/.test(value))
    return { parts: NOTHING_STATED, cleared: [] };
  if (about.length === 1 && about[0] === 'bandPass') return readBandPass(value, place, notes);
  const { parts, contradictory } = parseStatement(value, about.length === 1 ? about[0] : undefined);
  if (contradictory) {
    const message = `The file states several values for one condition (${contradictory}); none was taken.`;
    notes.add('condition-contradicted', message, place(), { part: contradictory, stated: value });
    return { parts: Object.fromEntries(Object.entries(parts).filter(([part]) => part !== contradictory)), cleared: [] };
  }
  const missing = about.filter((part) => parts[part] === undefined && part !== 'instrument');
  // a geometry in words of the file's own is kept as it stands
  const own = missing.includes('geometry') && about.length === 1 ? { ...parts, geometry: value } : parts;
  const unknown = missing.filter((part) => own[part] === undefined);
  if (unknown.length > 0) noteNotUnderstood(unknown[0], value, place(), notes);
  return { parts: own, cleared: [] };
}

function readBandPass(value: string, place: () => string, notes: Notes): ReadCondition {
  const plain = value.toLowerCase();
  if (/^(?:not[ -]?corrected|uncorrected|no|none|off|nein|non)$/.test(plain))
    return { parts: { bandPass: 'not-corrected' }, cleared: [] };
  if (/^(?:corrected|yes|on|ja|oui)$/.test(plain)) return { parts: { bandPass: 'corrected' }, cleared: [] };
  noteNotUnderstood('bandPass', value, place(), notes);
  return { parts: NOTHING_STATED, cleared: [] };
}

/** Notes a condition that stands in the file and was not understood. */
export function noteNotUnderstood(part: string, text: string, path: string, notes: Notes): void {
  const message = 'A condition in the file was not understood; it counts as not stated.';
  notes.add('condition-not-understood', message, path, { part, stated: text.slice(0, 80) });
}

/** Parts of two statements of which the nearer wins; a difference is noted. */
export function nearest(near: StatedParts, far: StatedParts, place: () => string, notes: Notes): StatedParts {
  return mergeParts(near, far, (part, nearer, farther) => {
    const message = 'The file states a condition twice, differently; the statement nearest to the number was taken.';
    notes.add('condition-contradicted', message, place(), { part, taken: nearer, passedOver: farther });
  });
}
