const LONGEST = 200;

/**
 * What of a value a fault keeps: plain data that JSON and a structured clone bring back, at most 200 characters of it.
 *
 * Numbers, booleans, null, undefined and short strings stay as they are; a small array or object is copied, a typed array as a list;
 * whatever is longer becomes the start of its text. A fault must not fail while it is told, so a ring or a getter that throws becomes words.
 */
export function plainValue(value: unknown): unknown {
  if (typeof value === 'string') return cut(value);
  if (value === null || typeof value === 'number' || typeof value === 'boolean' || value === undefined) return value;
  if (typeof value !== 'object') return cut(typeof value === 'function' ? `function ${value.name}` : String(value));
  const text = asJson(value);
  return text.length > LONGEST ? cut(text) : fromJson(text);
}

function cut(text: string): string {
  return text.length > LONGEST ? `${text.slice(0, LONGEST - 1)}…` : text;
}

function asJson(value: object): string {
  try {
    return JSON.stringify(value, shorten) ?? 'an object';
  } catch {
    return 'an object without JSON';
  }
}

/** What JSON would lose or fail at, as text; and no more of a long list than is kept of its text anyway. */
function shorten(_: string, value: unknown): unknown {
  if (typeof value === 'number' && !Number.isFinite(value)) return String(value);
  if (typeof value === 'bigint') return String(value);
  const list = ArrayBuffer.isView(value) && !(value instanceof DataView) ? Object.values(firstOf(value)) : value;
  return Array.isArray(list) ? list.slice(0, LONGEST) : list;
}

function firstOf(view: ArrayBufferView): object {
  return 'subarray' in view && typeof view.subarray === 'function' ? view.subarray(0, LONGEST) : [];
}

function fromJson(text: string): unknown {
  try {
    return JSON.parse(text);
  } catch {
    return text;
  }
}
