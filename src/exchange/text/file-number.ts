import { TintladderError } from '../../core/index.js';

/** The decimal mark of a file, settled by the first number that has one and kept from then on. */
export interface DecimalMark {
  value?: '.' | ',';
}

const POINT = /^[+-]?(?:\d+\.?\d*|\.\d+)(?:e[+-]?\d+)?$/i;
const COMMA = /^[+-]?(?:\d+,?\d*|,\d+)(?:e[+-]?\d+)?$/i;

/**
 * Number of a cell, or `undefined` where it is none in the file's own way of writing: `1,234.5`, `0x10`, an empty cell and a decimal
 * mark other than the file's are no numbers.
 */
export function parseFileNumber(text: string, mark: DecimalMark): number | undefined {
  const value = +text;
  // the common case: plain digits with a point, which JavaScript reads itself; its hexadecimals and blanks are caught by the letter and the length
  if (value - value === 0 && mark.value === '.' && text.charCodeAt(1) < 0x3a && text.charCodeAt(0) > 0x20) return value;
  return parseSlowly(text.trim(), mark);
}

function parseSlowly(text: string, mark: DecimalMark): number | undefined {
  if (text.includes(',')) {
    if (mark.value === '.' || !COMMA.test(text)) return undefined;
    mark.value = ',';
    return finite(Number(text.replace(',', '.')));
  }
  if (!POINT.test(text)) return undefined;
  if (text.includes('.')) {
    if (mark.value === ',') return undefined;
    mark.value = '.';
  }
  return finite(Number(text));
}

function finite(value: number): number | undefined {
  return Number.isFinite(value) ? value : undefined;
}

/** Whether a cell is a number under either decimal mark; settles nothing. */
export function looksNumeric(text: string): boolean {
  const trimmed = text.trim();
  return POINT.test(trimmed) || COMMA.test(trimmed);
}

/** The fault of a cell that is no number, with the decimal mark that was taken for the file. */
export function notANumber(received: string | undefined, mark: DecimalMark, path: string): TintladderError {
  const hint = mark.value
    ? `The file's decimal mark is ${JSON.stringify(mark.value)}, with no mark for thousands.`
    : undefined;
  return new TintladderError('not-a-number', { path, received: received ?? '', expected: 'a number', hint });
}
