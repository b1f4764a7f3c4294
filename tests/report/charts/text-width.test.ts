import { describe, expect, test } from 'vitest';
import { cutToWidth, textWidth, wrapBold } from '../../../src/report/charts/text-width.js';

describe('text that must fit', () => {
  test('is cut with a sign that it was', () => {
    expect(cutToWidth('reference', 90)).toBe('reference');
    const cut = cutToWidth('a name that nobody has room for', 90);
    expect(cut).toMatch(/^a name .*…$/);
    expect(textWidth(cut)).toBeLessThanOrEqual(90);
  });

  test('counts full-width characters as wide', () => {
    expect(textWidth('分散剤')).toBeGreaterThan(1.5 * textWidth('abc'));
  });

  test('is broken between words', () => {
    expect(wrapBold('one two three', 1.3 * textWidth('one two'))).toEqual(['one two', 'three']);
  });
});
