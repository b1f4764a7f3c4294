import { describe, expect, test } from 'vitest';
import { STYLE } from '../../src/report/html/style.js';
import { renderHtml } from '../../src/report/index.js';
import { inventedStudy, PACKAGES } from './fixture/invented-study.js';

const result = inventedStudy();
const html = renderHtml(result);

describe('renderHtml', () => {
  test('gives the answer first, before any table or figure', () => {
    const answer = html.indexOf('Package A is recommended');
    expect(answer).toBeGreaterThan(0);
    expect(answer).toBeLessThan(html.indexOf('<table'));
    expect(answer).toBeLessThan(html.indexOf('<svg'));
  });

  test('holds everything it shows: no script, nothing from elsewhere', () => {
    expect(html).not.toMatch(/<(script|link|img|iframe|object|embed|image|use)\b/i);
    expect(html).not.toMatch(/(href|src|url\(|@import)/i);
  });

  test('stays below 400 kB for fifteen cells with curves', () => {
    expect(new TextEncoder().encode(html).length).toBeLessThan(400_000);
  });

  test('gives every image a title and a description that exist once', () => {
    const ids = [...html.matchAll(/ id="([^"]+)"/g)].map(([, id]) => id);
    expect(new Set(ids).size).toBe(ids.length);
    const images = [...html.matchAll(/<svg [^>]*role="img" aria-labelledby="([^"]+)"/g)];
    expect(images.length).toBeGreaterThan(50);
    for (const [, labels] of images) for (const id of labels.split(' ')) expect(ids).toContain(id);
    const hidden = html.match(/<svg [^>]*aria-hidden="true"/g) ?? [];
    expect(html.match(/<svg /g)).toHaveLength(images.length + hidden.length);
  });

  test('writes every outcome as a word', () => {
    for (const outcome of ['meets', 'fails', 'undecided']) {
      expect(html).toMatch(new RegExp(`<span class="outcome ${outcome}">.*?${outcome}</span>`));
    }
  });

  test('shows swatches, curves and figures of every package and paint', () => {
    for (const { name } of PACKAGES) expect(html).toContain(`Swatches of ${name} in Alkyd enamel`);
    for (const title of ['Strength over Grinding time', 'Strength over Dosage', 'Rub-out differences in']) {
      expect(html).toContain(title);
    }
  });

  test('defers labelling and compliance, and a diagnosis, to those who decide', () => {
    expect(html).toContain('decided by the local rules and the people licensed to decide them');
    expect(html).toContain('Confirm it under the microscope');
  });

  test('leaves out what a study does not have', () => {
    const bare = renderHtml({
      ...inventedStudy({ curves: false, paints: [{ id: 'w', name: 'Wall paint' }] }),
      warnings: [],
      unusedReadings: [],
    });
    for (const heading of ['Compatibility', 'Grinding time and dosage', 'Notes']) {
      expect(bare).not.toContain(`>${heading}</h2>`);
    }
  });

  test('marks the shade change of a package whose pigment differs', () => {
    expect(html).toContain('shade change');
  });
});

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

test('a large study shows the plates that call for a look, and says what it leaves out', () => {
  const [first] = result.cells;
  const many = Array.from(
    { length: 80 },
    (_, i) => ({ ...first, package: `P${i}`, outcome: i === 70 ? 'fails' : 'meets' }) as const,
  );
  const packages = many.map(({ package: id }) => ({ ...result.packages[0], package: { id, name: id } }));
  const page = renderHtml({ ...result, packages, cells: many });
  const captions = [...page.matchAll(/<figure class="plate"><figcaption>([^<]*)/g)].map(([, caption]) => caption);
  expect(captions).toHaveLength(60);
  expect(captions[0]).toContain('P70');
  expect(page).toContain(`Shown are 60 of 80`);
});
