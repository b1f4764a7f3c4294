import { nearest, readCondition } from '../conditions/read-condition.js';
import { type ConditionPart, mergeParts, NOTHING_STATED, type StatedParts } from '../conditions/stated-parts.js';
import { isWhole, parseStatement } from '../conditions/statement.js';
import { isQuantity, parseQuantity, quantityInProse, type StatedQuantity } from '../quantity/quantity-text.js';
import type { Notes } from '../text/notes.js';
import type { TableContext } from './heading.js';
import { nameRank, normaliseHeading } from './sample-words.js';

/** A key with its value, or a sentence (no key), with its place. */
export interface Remark {
  readonly key?: string;
  readonly value: string;
  readonly place: string;
}

export const NO_CONTEXT: TableContext = Object.freeze({ stated: Object.freeze({}) });

/** Ranks of headings that name a sample, not a batch or a description of it. */
const NAMES_ONLY = 3;
const QUANTITY_KEY =
  /(?<!\p{L})(?:units?|einheit|unité|scale|skala|quantity|grösse|größe|data|type|mode|values?|spectr(?:um|al)|y ?axis|ordinate|measurement|measured|display|descriptor|description|title)(?!\p{L})/iu;
/** What shines by itself has no reflectance. */
const DEVICE_KEY = /^device[\s_]?(?:class|type)$/i;
const EMITTING = /display|monitor|projector|emissive|screen/i;
const WORDS_OF_MODE = /(?<!\p{L})(?:mode|type|measurement|condition|setting|component)s?(?!\p{L})/iu;

/**
 * What remarks say of the readings below them: conditions, quantity and scale, the sample's name. Each part on its own; a later remark stands nearer
 * and wins. `understood` is told of each remark that said something.
 */
export function readRemarks(
  remarks: readonly Remark[],
  before: TableContext,
  notes: Notes,
  understood: (remark: Remark) => void = () => undefined,
): TableContext {
  let inherited: StatedParts = before.stated;
  let stated: StatedParts = NOTHING_STATED;
  let quantity = before.quantity;
  let hunter = before.hunter;
  let samplesOnly = false;
  let name: { readonly text: string; readonly rank: number } | undefined;
  for (const remark of remarks) {
    const { key = '', value, place } = remark;
    const condition = readCondition(key, value, () => place, notes);
    if (condition) {
      inherited = without(inherited, condition.cleared);
      stated = nearest(condition.parts, without(stated, condition.cleared), () => place, notes);
      understood(remark);
      continue;
    }
    const rank = key === '' ? -1 : nameRank(normaliseHeading(key));
    if (rank >= 0 && rank <= NAMES_ONLY && value !== '') {
      if (!name || rank < name.rank) name = { text: value, rank };
      understood(remark);
      continue;
    }
    if (/^rows$/i.test(key) && /^samples$/i.test(value)) {
      samplesOnly = true;
      understood(remark);
      continue;
    }
    if (/hunter/i.test(`${key} ${value}`)) hunter = true;
    const said = statedQuantity(key, value);
    if (said) {
      // a scale alone says nothing against a quantity that stands before it
      quantity = { ...quantity, ...said, place };
      understood(remark);
    }
    const mode = statedMode(key, value);
    if (mode) {
      stated = nearest(mode, stated, () => place, notes);
      understood(remark);
    }
  }
  return {
    stated: mergeParts(stated, inherited),
    ...(quantity ? { quantity } : {}),
    ...(name ? { name: name.text } : {}),
    ...(hunter ? { hunter } : {}),
    ...(samplesOnly ? { samplesOnly } : {}),
  };
}

function without(stated: StatedParts, cleared: readonly ConditionPart[]): StatedParts {
  return Object.fromEntries(Object.entries(stated).filter(([part]) => !cleared.some((one) => one === part)));
}

function statedQuantity(key: string, value: string): StatedQuantity | undefined {
  if (DEVICE_KEY.test(key) && EMITTING.test(value)) return { quantity: 'light', rest: '' };
  if (key === '') return quantityInProse(value);
  const ofKey = parseQuantity(key);
  if (isQuantity(ofKey) && ofKey.quantity) {
    const both = parseQuantity(value);
    return isQuantity(both) ? { ...ofKey, ...both } : undefined;
  }
  const ofValue = parseQuantity(value);
  if (QUANTITY_KEY.test(key.replace(/_/g, ' '))) {
    // a single letter is a quantity only for a key that asks for one
    const letter = /^\s*[ate]\s*$/i.test(value) && !/quantity|unit|mode|axis|measurement/i.test(key);
    if (isQuantity(ofValue) && !letter) return ofValue;
  }
  return isQuantity(ofValue) || !QUANTITY_KEY.test(key.replace(/_/g, ' ')) ? undefined : quantityInProse(value);
}

/** A mode that a sentence, or a key such as `Mode`, states of itself: `SCI`, `specular excluded`, `D65/10°`. */
function statedMode(key: string, value: string): StatedParts | undefined {
  if (key !== '' && !WORDS_OF_MODE.test(key.replace(/_/g, ' '))) return undefined;
  const statement = parseStatement(value);
  const { parts, contradictory, rest } = statement;
  if (contradictory) return undefined;
  // a letter or a number alone may be anything
  if (isWhole(statement)) return value.trim().length < 3 ? undefined : parts;
  return parts.specular && rest.length <= 6 ? { specular: parts.specular } : undefined;
}
