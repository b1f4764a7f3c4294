/**
 * A number with a fixed count of decimals, the same in every locale: decimal point, no grouping, the true minus sign, and no
 * negative zero.
 */
export function formatFixed(value: number, decimals: number): string {
  const text = Math.abs(value).toFixed(decimals);
  return value < 0 && Number(text) !== 0 ? `\u2212${text}` : text;
}

/** The same with a plus sign before positive values, for differences. */
export function formatSigned(value: number, decimals: number): string {
  const text = formatFixed(value, decimals);
  return value > 0 && Number(text) !== 0 ? `+${text}` : text;
}

/** A figure held to its unit where a line breaks; units without a name (colour differences) leave no space behind. */
export function withUnit(text: string, unit: string): string {
  return unit === '' ? text : `${text}\u00a0${unit}`;
}

/** A count with its noun: `1 reading`, `3 readings`. */
export function formatCount(count: number, noun: string): string {
  return `${count} ${noun}${count === 1 ? '' : 's'}`;
}

/** Texts joined as a sentence lists them: `A, B and C`; with semicolons alone where one of them holds a comma. */
export function formatList(texts: readonly string[], last: 'and' | 'or' = 'and'): string {
  if (texts.some((text) => text.includes(','))) return texts.join('; ');
  return texts.length < 2 ? (texts[0] ?? '') : `${texts.slice(0, -1).join(', ')} ${last} ${texts[texts.length - 1]}`;
}

/**
 * Decimals in which a quantity is printed: one for a strength and other percentages, two for a colour difference; for
 * anything else three significant figures, with no digits cut from large values.
 */
export function decimalsFor(unit: string, value: number): number {
  if (unit.startsWith('%') || unit.startsWith('mass %')) return 1;
  if (unit === '' || unit.startsWith('ΔE')) return 2;
  const magnitude = value === 0 ? 0 : Math.floor(Math.log10(Math.abs(value)));
  return Math.min(6, Math.max(0, 2 - magnitude));
}
