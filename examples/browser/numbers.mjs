// How figures are written on the page: the same in every locale, with a true minus sign.

/** A number with a fixed count of decimals. */
export function fixed(value, decimals) {
  const text = Math.abs(value).toFixed(decimals);
  return value < 0 && Number(text) !== 0 ? `\u2212${text}` : text;
}

/** `104.2 to 107.9`, or a dash where the readings give no interval. */
export function range(interval, decimals) {
  return interval ? `${fixed(interval.low, decimals)} to ${fixed(interval.high, decimals)}` : '–';
}
