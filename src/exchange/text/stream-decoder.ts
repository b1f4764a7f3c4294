import { TintladderError } from '../../core/index.js';
import { markedEncoding, refuseKnownBinary } from './decode-text.js';

/** Enough bytes to tell a byte-order mark and the kinds of file that are no text. */
const TELLING_BYTES = 4;

/**
 * Decodes bytes that come in pieces; a call without bytes ends the text.
 *
 * @throws TintladderError `not-text`
 */
export function createStreamDecoder(): (piece?: Uint8Array) => string {
  let decoder: TextDecoder | undefined;
  let held: Uint8Array = new Uint8Array();
  let position = 0;
  return (piece) => {
    position += piece?.length ?? 0;
    let bytes: Uint8Array = piece ?? new Uint8Array();
    if (!decoder) {
      bytes = Uint8Array.of(...held, ...bytes.subarray(0, TELLING_BYTES));
      if (piece && bytes.length < TELLING_BYTES) {
        held = bytes;
        return '';
      }
      refuseKnownBinary(bytes);
      decoder = new TextDecoder(markedEncoding(bytes) ?? 'utf-8', { fatal: true });
      const rest = piece?.subarray(TELLING_BYTES) ?? new Uint8Array();
      return decodePart(decoder, bytes, true, position) + decodePart(decoder, rest, piece !== undefined, position);
    }
    return decodePart(decoder, bytes, piece !== undefined, position);
  };
}

function decodePart(decoder: TextDecoder, bytes: Uint8Array, more: boolean, position: number): string {
  try {
    return decoder.decode(bytes, { stream: more });
  } catch {
    throw new TintladderError('not-text', {
      path: `before byte ${position}`,
      received: `bytes that are no ${decoder.encoding.toUpperCase()}`,
      expected: 'UTF-8, or UTF-16 with a byte-order mark',
      hint: 'Convert the file, or read it whole with readMeasurements, which reads Windows-1252 too.',
    });
  }
}
