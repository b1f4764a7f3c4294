import { describe, expect, test } from 'vitest';
import { STYLE } from '../../../src/report/html/style.js';

/** Relative luminance and contrast ratio of WCAG 2.1 (W3C Recommendation, definitions of these terms). */
function luminance(hex: string): number {
  const full = hex.length === 4 ? hex.replace(/[0-9a-f]/gi, '$&$&') : hex;
  const [r, g, b] = [1, 3, 5]
    .map((i) => Number.parseInt(full.slice(i, i + 2), 16) / 255)
    .map((c) => (c <= 0.03928 ? c / 12.92 : ((c + 0.055) / 1.055) ** 2.4));
  return 0.2126 * r + 0.7152 * g + 0.0722 * b;
}

function contrast(a: string, b: string): number {
  const [dark, light] = [luminance(a), luminance(b)].sort((x, y) => x - y);
  return (light + 0.05) / (dark + 0.05);
}

describe.each([
  ['light', 0],
  ['dark', 1],
])('colours in %s', (_, index) => {
  const block = [...STYLE.matchAll(/:root\{([^}]*)\}/g)][index][1];
  const colours = Object.fromEntries(
    [...block.matchAll(/--([a-z0-9]+):(#[0-9a-f]+)/gi)].map(([, name, hex]) => [name, hex]),
  );

  test.each(['ink', 'soft', 'meets', 'fails', 'undecided'])('%s is readable as text (WCAG 2.1, 1.4.3: 4.5)', (name) => {
    expect(contrast(colours[name], colours.paper)).toBeGreaterThanOrEqual(4.5);
    expect(contrast(colours[name], colours.tint)).toBeGreaterThanOrEqual(4.5);
  });

  test.each(['c1', 'c2', 'c3', 'c4', 'c5', 'c6', 'c7'])('%s is visible as a line (WCAG 2.1, 1.4.11: 3)', (name) => {
    expect(contrast(colours[name], colours.paper)).toBeGreaterThanOrEqual(3);
  });
});

test('the contrast ratio of black on white is 21 (WCAG 2.1)', () => {
  expect(contrast('#000000', '#ffffff')).toBeCloseTo(21, 10);
});
