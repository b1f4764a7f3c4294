import { expect, test } from 'vitest';
import { readMeasurements } from '../../../src/exchange/index.js';
import { faultOf } from '../fault-of.js';

const TEXT = 'Sample,400,410\nweiß,92.4,92.5\n';

function utf16(text: string, littleEndian: boolean): Uint8Array {
  const bytes = new Uint8Array(text.length * 2);
  const view = new DataView(bytes.buffer);
  for (let i = 0; i < text.length; i++) view.setUint16(i * 2, text.charCodeAt(i), littleEndian);
  return bytes;
}

test.each([
  ['UTF-8', new TextEncoder().encode(TEXT)],
  ['UTF-8 with a mark', new TextEncoder().encode(`\uFEFF${TEXT}`)],
  ['UTF-16 little-endian with a mark', utf16(`\uFEFF${TEXT}`, true)],
  ['UTF-16 big-endian with a mark', utf16(`\uFEFF${TEXT}`, false)],
  ['Windows-1252', Uint8Array.from(TEXT, (character) => character.charCodeAt(0))],
])('%s is read', (_, bytes) => {
  const [{ name, spectrum }] = readMeasurements(bytes).measurements;
  expect(name).toBe('weiß');
  expect([...(spectrum?.values ?? [])]).toEqual([0.924, 0.925]);
});

test('what is no UTF-8 is read as Windows-1252, and that is noted', () => {
  const bytes = Uint8Array.from(TEXT, (character) => character.charCodeAt(0));
  expect(readMeasurements(bytes).warnings.map(({ code }) => code)).toContain('windows-1252-assumed');
});

test('half a character of UTF-16 is a truncated file', () => {
  expect(faultOf(utf16(`\uFEFF${TEXT}`, true).slice(0, -1))).toMatchObject({ code: 'truncated', path: 'byte 61' });
});

test('broken UTF-16 is no text', () => {
  expect(faultOf(utf16('\uFEFFSample\uD800,400\n', true))).toMatchObject({ code: 'not-text' });
});

test('the input is not changed', () => {
  const bytes = new TextEncoder().encode(TEXT);
  const before = bytes.slice();
  readMeasurements(bytes);
  expect(bytes).toEqual(before);
});
