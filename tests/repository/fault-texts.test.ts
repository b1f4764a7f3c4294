import { readdirSync, readFileSync } from 'node:fs';
import { join } from 'node:path';
import { describe, expect, test } from 'vitest';

// A fault is data: what its message is made of must not hold punctuation for the sentence around it.

const files = (readdirSync('src', { recursive: true }) as string[])
  .filter((name) => name.endsWith('.ts'))
  .map((name) => ({ name, text: readFileSync(join('src', name), 'utf8') }));

/** Every text that is given for a property of this name, as a literal or as a constant of this name. */
function textsOf(part: string): { place: string; text: string }[] {
  const given = new RegExp(`\\b${part}(?::| =)\\s+(['"\`])((?:\\\\.|(?!\\1).)*)\\1`, 'g');
  const found = files.flatMap(({ name, text }) =>
    [...text.matchAll(given)].map((match) => ({ place: name, text: match[2] })),
  );
  // A template within a template breaks off in its middle, which says nothing of its end.
  return found.filter(({ text }) => text.split('{').length === text.split('}').length);
}

describe.each(['expected', 'path'])('%s', (part) => {
  const texts = textsOf(part);

  test('is found', () => expect(texts.length).toBeGreaterThan(60));

  test('ends without punctuation', () => {
    expect(texts.filter(({ text }) => /[.,;:!?]\s*$/.test(text))).toEqual([]);
  });
});
