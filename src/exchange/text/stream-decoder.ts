import { TintladderError } from '../../core/index.js';
import { markedEncoding, noteWindows1252, refuseKnownBinary } from './decode-text.js';
import type { Notes } from './notes.js';

/** Enough bytes to tell a byte-order mark and the kinds of file that are no text. */
const TELLING_BYTES = 4;

/**
 * Decodes bytes that come in pieces; a call without bytes ends the text. What turns out to be no UTF-8 is read as Windows-1252, provided that all
 * before it was ASCII, which is the same in both.
 *
 * @throws TintladderError `not-text`; `truncated` for half a character of UTF-16
 */
export function createStreamDecoder(notes: Notes): (piece?: Uint8Array) => string {
  let decoder: TextDecoder | undefined;
  let marked = false;
  let plain = true;
  let held: Uint8Array = new Uint8Array();
  let position = 0;

  const decode = (bytes: Uint8Array, more: boolean): string => {
    if (!decoder) return '';
    const current = decoder;
    try {
      const text = current.decode(bytes, { stream: more });
      if (plain && !marked && !isAscii(bytes)) {
        // the first bytes beyond ASCII may still turn out to be no UTF-8, together with those to come
        plain = false;
      }
      return text;
    } catch {
      const fallback = plain && !marked ? decodeWindows1252(bytes, more) : undefined;
      if (fallback !== undefined) return fallback;
      if (marked && !more && decoder.encoding.startsWith('utf-16')) {
        throw new TintladderError('truncated', {
          path: `byte ${position}`,
          received: position,
          expected: 'an even number of bytes in UTF-16 text',
          hint: 'Export the file again.',
        });
      }
      throw new TintladderError('not-text', {
        path: `before byte ${position}`,
        received: current.encoding.toUpperCase(),
        expected: 'text in one encoding: UTF-8, UTF-16 with a byte-order mark, or Windows-1252',
        hint: 'Convert the file to UTF-8.',
      });
    }
  };

  const decodeWindows1252 = (bytes: Uint8Array, more: boolean): string => {
    noteWindows1252(notes);
    marked = true;
    decoder = new TextDecoder('windows-1252');
    return decoder.decode(bytes, { stream: more });
  };

  return (piece) => {
    position += piece?.length ?? 0;
    if (decoder) return decode(piece ?? new Uint8Array(), piece !== undefined);
    const bytes = Uint8Array.of(...held, ...(piece?.subarray(0, TELLING_BYTES) ?? []));
    if (piece && bytes.length < TELLING_BYTES) {
      held = bytes;
      return '';
    }
    refuseKnownBinary(bytes);
    const encoding = markedEncoding(bytes);
    marked = encoding !== undefined;
    decoder = new TextDecoder(encoding ?? 'utf-8', { fatal: true });
    const rest = piece?.subarray(TELLING_BYTES) ?? new Uint8Array();
    const joined = new Uint8Array(bytes.length + rest.length);
    joined.set(bytes);
    joined.set(rest, bytes.length);
    return decode(joined, piece !== undefined);
  };
}

function isAscii(bytes: Uint8Array): boolean {
  for (let i = 0; i < bytes.length; i++) if (bytes[i] > 0x7f) return false;
  return true;
}
