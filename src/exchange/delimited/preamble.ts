import type { Conditions } from '../../colorimetry/index.js';
import { type StatedConditions, toConditions } from '../conditions/stated-conditions.js';
import type { ReflectanceScale } from '../measurement/measurement.js';
import { columnRole } from '../table/column-role.js';
import { parseQuantity } from './headings.js';

/** A row that stands outside a table. */
export interface LooseRow {
  readonly cells: readonly string[];
  readonly line: number;
}

/** What the lines before a table say of its readings. */
export interface Preamble {
  readonly stated: StatedConditions;
  readonly common: Conditions;
  readonly scale?: { readonly value: ReflectanceScale; readonly line: number };
  readonly unsupported?: { readonly quantity: string; readonly line: number };
}

/** Reads `key: value` lines and statements of quantity; anything else stays a remark. */
export function readPreamble(rows: readonly LooseRow[]): Preamble {
  const stated: StatedConditions = {};
  let scale: Preamble['scale'];
  let unsupported: Preamble['unsupported'];
  for (const { cells, line } of rows) {
    const filled = cells.map((cell) => cell.replace(/^\s*#+/, '').trim()).filter((cell) => cell !== '');
    if (filled.length === 0 || filled.length > 2) continue;
    const [key, value] = filled.length === 2 ? filled : splitOnce(filled[0]);
    const role = columnRole(key);
    if (role.kind === 'condition' && value !== undefined) stated[role.part] = value;
    const quantity = parseQuantity(value ?? key);
    if (quantity?.unsupported) unsupported ??= { quantity: quantity.unsupported, line };
    if (quantity?.scale) scale ??= { value: quantity.scale, line };
  }
  return {
    stated,
    common: toConditions(stated),
    ...(scale ? { scale } : {}),
    ...(unsupported ? { unsupported } : {}),
  };
}

function splitOnce(text: string): [string, string?] {
  const at = text.search(/[:=]/);
  return at < 0 ? [text] : [text.slice(0, at), text.slice(at + 1).trim()];
}
