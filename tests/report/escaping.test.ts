import { describe, expect, test } from 'vitest';
import { renderHtml, renderMarkdown, renderText, toCsv } from '../../src/report/index.js';
import { escapeMarkdown } from '../../src/report/markdown/escape-markdown.js';
import { escapeHtml } from '../../src/report/markup/element.js';
import { HOSTILE_NAMES, hostileStudy } from './fixture/hostile-study.js';

const result = hostileStudy();

describe('HTML', () => {
  const html = renderHtml(result);

  test('shows hostile names as text: no element but those of the report', () => {
    const names = new Set([...html.matchAll(/<([a-z0-9]+)/gi)].map(([, name]) => name));
    expect(names).not.toContain('script');
    expect(names).not.toContain('img');
    expect(html).toContain('&lt;script&gt;window.harmed = 1&lt;/script&gt;');
  });

  test('lets no name out of an attribute', () => {
    for (const [tag] of html.matchAll(/<[a-z][^>]*>/gi)) {
      expect(tag).toMatch(/^<[a-z0-9]+( [a-z0-9-]+(="[^"<>]*")?)*\/?>$/i);
      expect(tag).not.toMatch(/ on[a-z]+=/i);
    }
  });

  test('makes control characters and turned text visible', () => {
    for (const character of ['\u001b', '\u202e', '\r']) expect(html).not.toContain(character);
    expect(escapeHtml('a\u0000b\u202ec\n')).toBe('a\ufffdb\ufffdc\n');
  });

  test.each(['&', '<', '>', '"', "'"])('escapes %s', (character) => {
    expect(escapeHtml(`a${character}b`)).toMatch(/^a&#?[a-z0-9]+;b$/);
  });
});

describe('Markdown', () => {
  const markdown = renderMarkdown(result);

  test('holds every row of a table in one line with as many cells as its heading', () => {
    const tables = markdown.split('\n\n').filter((block) => block.startsWith('| '));
    expect(tables.length).toBeGreaterThan(3);
    for (const table of tables) {
      const cells = table.split('\n').map((row) => row.replace(/\\./g, '').split('|').length);
      expect(new Set(cells).size).toBe(1);
    }
  });

  test.each([
    ['<b>', '\\<b\\>'],
    ['[a](http://b)', '\\[a\\](http\\://b)'],
    ['**x** `y` _z_', '\\*\\*x\\*\\* \\`y\\` \\_z\\_'],
    ['1. one', '1\\. one'],
    ['- one', '\\- one'],
    ['a\nb', 'a b'],
    ['a|b', 'a\\|b'],
    ['ΔE*ab 0.5 (x)', 'ΔE\\*ab 0.5 (x)'],
  ])('%j is written as %j', (text, expected) => expect(escapeMarkdown(text)).toBe(expected));
});

describe('terminal', () => {
  const text = renderText(result);

  test('no name can colour, move or turn what follows', () => {
    expect(text).not.toMatch(new RegExp(`[${String.fromCharCode(27)}\\r\\u202e]`));
    expect(text).toContain(HOSTILE_NAMES[2]);
  });
});

test('CSV: no field is a formula', () => {
  for (const line of toCsv(result).split('\r\n')) expect(line).not.toMatch(/(^|,)"?[=+@]/);
});
