import { describe, expect, test } from 'vitest';
import { renderHtml } from '../../src/report/index.js';
import { inventedStudy } from './fixture/invented-study.js';

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
    expect(html).not.toMatch(/(src|url\(|@import)/i);
    const ids = new Set([...html.matchAll(/ id="([^"]+)"/g)].map(([, id]) => id));
    const links = [...html.matchAll(/href="([^"]*)"/g)].map(([, target]) => target);
    expect(links.length).toBeGreaterThan(5);
    for (const target of links) expect(ids).toContain(target.replace(/^#/, ''));
  });

  test('stays below 400 kB for fifteen cells with curves', () => {
    expect(new TextEncoder().encode(html).length).toBeLessThan(400_000);
  });

  test('gives every image a title and a description that exist once', () => {
    const ids = [...html.matchAll(/ id="([^"]+)"/g)].map(([, id]) => id);
    expect(new Set(ids).size).toBe(ids.length);
    const images = [...html.matchAll(/<svg [^>]*role="img" aria-labelledby="([^"]+)"/g)];
    expect(images.length).toBeGreaterThan(20);
    for (const [, labels] of images) for (const id of labels.split(' ')) expect(ids).toContain(id);
    const hidden = html.match(/<svg [^>]*aria-hidden="true"/g) ?? [];
    expect(html.match(/<svg /g)).toHaveLength(images.length + hidden.length);
  });

  test('writes every outcome as a word', () => {
    for (const outcome of ['meets', 'fails', 'undecided']) {
      expect(html).toMatch(new RegExp(`<span class="outcome ${outcome}">.*?${outcome}</span>`));
    }
  });

  test('defers labelling and compliance, and a diagnosis, to those who decide', () => {
    expect(html).toContain('decided by the local rules and the people licensed to decide them');
    expect(html).toContain('Confirm it under the microscope');
  });
});
