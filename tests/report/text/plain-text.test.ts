import { describe, expect, test } from 'vitest';
import { displayWidth, plainText, wrap } from '../../../src/report/text/plain-text.js';
import { textTable } from '../../../src/report/text/text-table.js';

const ESCAPE = String.fromCharCode(27);

describe('text on a terminal', () => {
  test('is as wide as it shows', () => {
    expect(displayWidth('ΔE*ab 0.5')).toBe(9);
    expect(displayWidth('颜料')).toBe(4);
    expect(displayWidth('e\u0301')).toBe(1);
    expect(displayWidth(`${ESCAPE}[1mA${ESCAPE}[0m`)).toBe(1);
  });

  test('has no control characters', () => expect(plainText(`a${ESCAPE}[2Jb\r\nc`)).toBe('a\ufffd[2Jb\ufffdc'));

  test('breaks at spaces but not between a figure and its unit', () => {
    expect(wrap('one two 3\u00a0% four', 8)).toEqual(['one two', '3\u00a0% four']);
    expect(wrap('', 8)).toEqual([]);
  });

  test('stands in columns under headings of several lines', () => {
    const columns = [
      { heading: 'Name', side: 'right' },
      { heading: 'Rub-out\nΔE', side: 'left' },
    ] as const;
    expect(textTable(columns, [['A', '0.50']])).toEqual([
      '      Rub-out',
      'Name       ΔE',
      '─────────────',
      'A        0.50',
    ]);
  });
});
