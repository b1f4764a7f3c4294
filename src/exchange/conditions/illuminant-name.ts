import { ILLUMINANTS, type IlluminantName } from '../../colorimetry/index.js';

const isName = (text: string): text is IlluminantName => Object.hasOwn(ILLUMINANTS, text);

/** An illuminant as files write it at the beginning of a text, such as `D65`, `d 65`, `F2`, `FL 02`, `C`. */
const WRITTEN = /^(?:(d)\s?-?(\d{2})|(fl?)\s?-?0?(\d{1,2})|([a-e]))(?![a-z\d])/i;
/** An observer written right behind a daylight, as in `D6510`. */
const DAYLIGHT_WITH_OBSERVER = /^d(\d{2})(2|10)(?!\d)/i;

/** The illuminant that a text begins with, and how many characters it takes; a single small letter is none, since it may be a word. */
export function illuminantAt(text: string): { readonly name: IlluminantName; readonly length: number } | undefined {
  const found = WRITTEN.exec(text);
  if (found) {
    const [whole, , daylight, , lamp, letter] = found;
    const name = letter ?? (lamp ? `FL${Number(lamp)}` : `D${daylight}`);
    return isName(name) ? { name, length: whole.length } : undefined;
  }
  const joined = DAYLIGHT_WITH_OBSERVER.exec(text);
  const name = joined ? `D${joined[1]}` : '';
  return isName(name) ? { name, length: name.length } : undefined;
}
