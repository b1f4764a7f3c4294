import { TintladderError } from '../../core/index.js';

/** How a file writes its numbers: each settled by the first number that shows it, and kept from then on. */
export interface NumberStyle {
  decimalMark?: '.' | ',';
  /** Whether numbers carry a percent sign of their own. */
  percentSign?: boolean;
}

const POINT = /^[+-]?(?:\d+\.?\d*|\.\d+)(?:e[+-]?\d+)?$/i;
const COMMA = /^[+-]?(?:\d+,?\d*|,\d+)(?:e[+-]?\d+)?$/i;
const PERCENT_SIGN = /\s*%$/;

/**
 * Number of a cell, or `undefined` where it is none in the file's own way of writing: `1,234.5`, `0x10`, an empty cell and a decimal
 * mark other than the file's are no numbers. `65.8%` is 65.8.
 */
export function parseFileNumber(text: string, style: NumberStyle): number | undefined {
  if (style.decimalMark === '.') {
    const value = plainDecimal(text);
    if (value >= 0) return value;
  }
  return parseSlowly(text.trim(), style);
}

const POWERS = Array.from({ length: 16 }, (_, i) => 10 ** i);

/**
 * The common case: at most 15 digits with one point among them; -1 for anything else. A whole number below 2^53 divided by an exact power of ten is
 * the double nearest to the decimal, as JavaScript's own reading gives it, in half the time.
 */
function plainDecimal(text: string): number {
  const { length } = text;
  if (length === 0 || length > 16) return -1;
  let whole = 0;
  let point = -1;
  for (let i = 0; i < length; i++) {
    const digit = text.charCodeAt(i) - 0x30;
    if (digit >= 0 && digit <= 9) whole = whole * 10 + digit;
    else if (digit === -2 && point < 0) point = i;
    else return -1;
  }
  if (point < 0) return length > 15 ? -1 : whole;
  return length === 1 ? -1 : whole / POWERS[length - point - 1];
}

function parseSlowly(text: string, style: NumberStyle): number | undefined {
  if (text.endsWith('%')) {
    const value = parseSlowly(text.replace(PERCENT_SIGN, ''), style);
    if (value !== undefined) style.percentSign = true;
    return value;
  }
  // a true minus sign, as typesetting programs write it
  const plain = text.replace(/^[\u2212\u2013]/, '-');
  if (plain.includes(',')) {
    if (style.decimalMark === '.' || !COMMA.test(plain)) return undefined;
    style.decimalMark = ',';
    return finite(Number(plain.replace(',', '.')));
  }
  if (!POINT.test(plain)) return undefined;
  if (plain.includes('.')) {
    if (style.decimalMark === ',') return undefined;
    style.decimalMark = '.';
  }
  return finite(Number(plain));
}

function finite(value: number): number | undefined {
  return Number.isFinite(value) ? value : undefined;
}

/** Whether a cell is a number under either decimal mark; settles nothing. */
export function looksNumeric(text: string): boolean {
  const trimmed = text
    .trim()
    .replace(PERCENT_SIGN, '')
    .replace(/^[\u2212\u2013]/, '-');
  return POINT.test(trimmed) || COMMA.test(trimmed);
}

/** The fault of a cell that is no number, with the decimal mark that was taken for the file. */
export function notANumber(received: string | undefined, style: NumberStyle, path: string): TintladderError {
  const hint = style.decimalMark
    ? `The file's decimal mark is ${JSON.stringify(style.decimalMark)}, with no mark for thousands.`
    : undefined;
  return new TintladderError('not-a-number', { path, received: received ?? '', expected: 'a number', hint });
}

/** Decimals of a percentage that the exact way below still holds. */
const EXACT = 1e10;

/** A percentage as the fraction that its decimal digits say: 88.1 is 0.881, where a division gives 0.8809999999999999. */
export function fractionOfPercent(percent: number): number {
  const scaled = percent * EXACT;
  const whole = Math.round(scaled);
  return whole !== 0 && Math.abs(scaled - whole) < 1e-3 && Math.abs(whole) < Number.MAX_SAFE_INTEGER
    ? whole / (EXACT * 100)
    : percent / 100;
}
