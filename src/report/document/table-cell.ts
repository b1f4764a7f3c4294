import { decimalsFor, formatSigned, withUnit } from '../../core/internal.js';
import type { Outcome } from '../../decision/index.js';
import { type Estimate, formatEstimate, type formatInterval } from '../../decision/internal.js';
import { OUTCOME_WORDS } from '../words/words.js';

/** What stands in a cell of a table. An aside is a remark that the cell can do without. */
export type TableCell =
  | TextCell
  | FigureCell
  | { readonly kind: 'outcome'; readonly outcome: Outcome; readonly aside?: string | undefined }
  | { readonly kind: 'none' };

/** A text. */
export interface TextCell {
  readonly kind: 'text';
  readonly text: string;
  readonly aside?: string | undefined;
  /** Whether the text says nothing out of the ordinary, so that it needs no line of its own. */
  readonly ordinary?: boolean;
}

/** A figure with its interval, as numbers: how they are written is decided when the table is rendered. */
export interface FigureCell extends Estimate {
  readonly kind: 'figure';
  readonly unit: string;
  readonly decimals: number;
  /** Whether the unit stands in the cell, where the heading of the column can't state it. */
  readonly unitShown?: boolean;
  /** Whether a positive figure has a plus sign, as a difference has. */
  readonly signed?: boolean;
  /** How the figure stands to its limit. */
  readonly outcome?: Outcome | undefined;
  readonly aside?: string | undefined;
}

/** A cell without anything. */
export const NONE: TableCell = { kind: 'none' };

/** A cell of text. */
export function textCell(text: string, rest: Omit<TextCell, 'kind' | 'text'> = {}): TableCell {
  return { kind: 'text', text, ...rest };
}

/** A judgement. */
export function outcomeCell(outcome: Outcome, aside?: string): TableCell {
  return { kind: 'outcome', outcome, aside };
}

/** A figure, to the decimals that its unit asks for; nothing where there is none. */
export function figureCell(
  estimate: Estimate | undefined,
  unit: string,
  rest: Partial<Omit<FigureCell, 'kind' | 'unit' | keyof Estimate>> = {},
): TableCell {
  if (!estimate) return NONE;
  const { value, interval } = estimate;
  return { kind: 'figure', value, interval, unit, decimals: decimalsFor(unit, value), ...rest };
}

/** A cell as text, without its aside; a dash where there is nothing. */
export function cellText(cell: TableCell, between?: typeof formatInterval): string {
  switch (cell.kind) {
    case 'none':
      return '–';
    case 'text':
      return cell.text;
    case 'outcome':
      return OUTCOME_WORDS[cell.outcome];
    case 'figure': {
      const { value, decimals, signed, unit, unitShown } = cell;
      const text = signed ? formatSigned(value, decimals) : formatEstimate(cell, decimals, between);
      return unitShown ? withUnit(text, unit) : text;
    }
  }
}

/** A cell as text with its outcome and its aside behind it. */
export function cellTextWithAside(cell: TableCell, between?: typeof formatInterval): string {
  const outcome = cell.kind === 'figure' && cell.outcome ? [OUTCOME_WORDS[cell.outcome]] : [];
  const aside = cell.kind === 'none' || cell.aside === undefined ? [] : [cell.aside];
  return [cellText(cell, between), ...outcome, ...aside].join(', ');
}
