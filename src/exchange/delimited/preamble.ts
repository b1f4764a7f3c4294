import type { Conditions } from '../../colorimetry/index.js';
import { columnRole } from '../column-role.js';
import type { ReflectanceScale } from '../measurement.js';
import { type StatedConditions, toConditions } from '../viewing-text.js';
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
    const parts = cells
      .flatMap((cell) => cell.replace(/^\s*#+/, '').split(/[:=]/))
      .map((part) => part.trim())
      .filter((part) => part !== '');
    if (parts.length === 0 || parts.length > 4) continue;
    const role = columnRole(parts[0]);
    if (role.kind === 'condition' && parts.length > 1) stated[role.part] = parts.slice(1).join(':');
    const quantity = parts.length <= 2 ? parseQuantity(parts[parts.length - 1]) : undefined;
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
