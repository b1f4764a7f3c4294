import { TintladderError } from '../../core/index.js';
import type { Notes } from './notes.js';

const FILE_SIGNATURES: readonly { readonly bytes: readonly number[]; readonly name: string }[] = [
  { bytes: [0x50, 0x4b, 0x03, 0x04], name: 'a zip container, such as a spreadsheet workbook' },
  { bytes: [0xd0, 0xcf, 0x11, 0xe0], name: 'a compound document, such as an old spreadsheet workbook' },
  { bytes: [0x25, 0x50, 0x44, 0x46], name: 'a PDF document' },
  { bytes: [0x89, 0x50, 0x4e, 0x47], name: 'a PNG image' },
  { bytes: [0xff, 0xd8, 0xff], name: 'a JPEG image' },
  { bytes: [0x1f, 0x8b], name: 'gzip-compressed data' },
];

/** The encoding that a byte-order mark states, else none. */
export function markedEncoding(bytes: Uint8Array): 'utf-8' | 'utf-16le' | 'utf-16be' | undefined {
  if (bytes[0] === 0xef && bytes[1] === 0xbb && bytes[2] === 0xbf) return 'utf-8';
  if (bytes[0] === 0xff && bytes[1] === 0xfe) return 'utf-16le';
  if (bytes[0] === 0xfe && bytes[1] === 0xff) return 'utf-16be';
  return undefined;
}

// biome-ignore lint/suspicious/noControlCharactersInRegex: control characters are what is looked for
const CONTROL = /[\u0000-\u0008\u000e-\u0019\u001b-\u001f]/;

/** Names a kind of file that is not text by its first bytes. */
export function refuseKnownBinary(bytes: Uint8Array): void {
  const known = FILE_SIGNATURES.find((signature) => signature.bytes.every((byte, i) => bytes[i] === byte));
  if (known) throw notText(known.name);
}

/** Text of a file, whole or in blocks cut anywhere. */
export interface DecodedText {
  /** The first block. */
  readonly beginning: string;
  blocks(): Iterable<string>;
  whole(): string;
}

/** Small blocks keep few cells in memory at once. */
const BLOCK = 2 ** 16;

/**
 * Text of a file: UTF-8, UTF-16 by its byte-order mark, else Windows-1252. The mark itself is dropped. Bytes are decoded block by block, so that a
 * large file is not in memory twice.
 *
 * @throws TintladderError `not-text` naming the kind of file where it is known; `empty-file`; `truncated` for half a character of UTF-16
 */
export function decodeText(input: string | Uint8Array, notes: Notes): DecodedText {
  const text = typeof input === 'string' ? fromString(input.replace(/^\uFEFF/, '')) : fromBytes(input, notes);
  let blank = true;
  for (const block of text.blocks()) {
    blank &&= !/\S/.test(block);
    if (CONTROL.test(block)) refuseControlCharacters(text.whole());
  }
  if (blank) refuseEmpty('');
  return text;
}

function fromString(text: string): DecodedText {
  return {
    beginning: text.slice(0, BLOCK),
    *blocks() {
      for (let at = 0; at < text.length; at += BLOCK) yield text.slice(at, at + BLOCK);
    },
    whole: () => text,
  };
}

function fromBytes(bytes: Uint8Array, notes: Notes): DecodedText {
  refuseKnownBinary(bytes);
  const encoding = knownEncoding(bytes, notes);
  const blocks = () => decodeBlocks(bytes, encoding);
  return {
    beginning: blocks().next().value ?? '',
    blocks,
    whole: () => new TextDecoder(encoding).decode(bytes),
  };
}

function* decodeBlocks(bytes: Uint8Array, encoding: string): Generator<string, undefined> {
  const decoder = new TextDecoder(encoding, { fatal: true });
  for (let at = 0; at < bytes.length; at += BLOCK)
    yield decoder.decode(bytes.subarray(at, at + BLOCK), { stream: true });
  yield decoder.decode();
}

function knownEncoding(bytes: Uint8Array, notes: Notes): string {
  const marked = markedEncoding(bytes);
  if (marked?.startsWith('utf-16') && bytes.length % 2 === 1) {
    throw new TintladderError('truncated', {
      path: `byte ${bytes.length}`,
      received: bytes.length,
      expected: 'an even number of bytes in UTF-16 text',
      hint: 'Export the file again.',
    });
  }
  try {
    for (const _ of decodeBlocks(bytes, marked ?? 'utf-8'));
    return marked ?? 'utf-8';
  } catch {
    if (marked) throw notText(`bytes that are no ${marked.toUpperCase()}`);
    noteWindows1252(notes);
    return 'windows-1252';
  }
}

/** Notes that a text was read as Windows-1252 because it is no UTF-8. */
export function noteWindows1252(notes: Notes): void {
  const message = 'The text is no UTF-8 and has no byte-order mark; it was read as Windows-1252.';
  notes.add('windows-1252-assumed', message);
}

/** @throws TintladderError `empty-file` for a text of nothing but blanks */
export function refuseEmpty(text: string): void {
  if (/\S/.test(text)) return;
  throw new TintladderError('empty-file', {
    path: 'line 1, column 1',
    received: '',
    expected: 'a measurement',
  });
}

/** @throws TintladderError `not-text` for a character that no text file holds */
export function refuseControlCharacters(text: string): void {
  const at = text.search(CONTROL);
  if (at < 0) return;
  const line = text.slice(0, at).split(/\r\n?|\n/).length;
  throw notText(
    `a control character (code ${text.charCodeAt(at)})`,
    `line ${line}, column ${at - text.lastIndexOf('\n', at)}`,
  );
}

function notText(received: string, path = 'the file'): TintladderError {
  return new TintladderError('not-text', {
    path,
    received,
    expected: 'text',
    hint: 'Export the readings as delimited text.',
  });
}
