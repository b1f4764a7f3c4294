import { ILLUMINANTS, type IlluminantName } from '../../colorimetry/index.js';

/** Names and aliases without spaces and hyphens, in capitals. */
const NAMES: ReadonlyMap<string, IlluminantName> = /* @__PURE__ */ (() =>
  new Map(
    (Object.keys(ILLUMINANTS) as IlluminantName[]).flatMap((name) =>
      [name, ...ILLUMINANTS[name].aliases].map((text) => [text.replace(/[\s-]/g, '').toUpperCase(), name] as const),
    ),
  ))();

/** Letters and a number as files write them, such as `D65`, `d 65`, `F2`, `FL 02`. */
const LETTERS_AND_NUMBER = /^([a-z]{1,6})[\s-]?0?(\d{1,2})(?![a-z\d])/i;
/** A capital by itself: a small letter may be a word. */
const LETTER = /^[A-Z](?![a-z\d])/i;
/** An observer written right behind a daylight, as in `D6510`. */
const DAYLIGHT_WITH_OBSERVER = /^(d\d{2})(?:2|10)(?!\d)/i;

/** The illuminant that a text begins with, and how many characters it takes. */
export function illuminantAt(text: string): { readonly name: IlluminantName; readonly length: number } | undefined {
  const [whole = '', letters = '', number = ''] = LETTERS_AND_NUMBER.exec(text) ?? [];
  const [letter = ''] = LETTER.exec(text) ?? [];
  const [, daylight = ''] = DAYLIGHT_WITH_OBSERVER.exec(text) ?? [];
  for (const [written, length] of [
    [(letters + number).toUpperCase(), whole.length],
    [letter, letter.length],
    [daylight.toUpperCase(), daylight.length],
  ] as const) {
    const name = NAMES.get(written);
    if (name) return { name, length };
  }
  return undefined;
}
