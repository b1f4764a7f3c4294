import type { Outcome } from '../../decision/index.js';
/** Marks text for a terminal, or leaves it as it is. */
export interface TextStyle {
  readonly bold: (text: string) => string;
  readonly faint: (text: string) => string;
  readonly outcome: (text: string, outcome: Outcome) => string;
}

const OUTCOME_COLOURS: Readonly<Record<Outcome, number>> = { meets: 32, fails: 31, undecided: 33 };

/** The style of a terminal that shows colour, or of one that doesn't (and of files and pipes). */
export function textStyle(colour: boolean): TextStyle {
  const plain = (text: string) => text;
  if (!colour) return { bold: plain, faint: plain, outcome: plain };
  const mark = (code: number) => (text: string) => `\u001b[${code}m${text}\u001b[0m`;
  return { bold: mark(1), faint: mark(2), outcome: (text, outcome) => mark(OUTCOME_COLOURS[outcome])(text) };
}
