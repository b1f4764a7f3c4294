import { describe, expect, test } from 'vitest';
import { renderText } from '../../src/report/index.js';
import { displayWidth } from '../../src/report/text/plain-text.js';
import { inventedStudy } from './fixture/invented-study.js';

const result = inventedStudy();
const ESCAPE = String.fromCharCode(27);

describe('renderText', () => {
  test.each([60, 80, 100, 140])('stays within %i columns', (width) => {
    for (const line of renderText(result, { width }).split('\n')) expect(displayWidth(line)).toBeLessThanOrEqual(width);
  });

  test('gives the answer before the table, units in the headings', () => {
    const text = renderText(result);
    expect(text.indexOf('is recommended')).toBeLessThan(text.indexOf('Strength, %'));
    expect(text).toContain('ΔE*ab');
    expect(text).toContain('ΔE00');
  });

  test('aligns the figures of a column', () => {
    const lines = renderText(result, { width: 100 }).split('\n');
    const ends = lines.filter((line) => /^Package [ABD] +\d/.test(line)).map((line) => line.indexOf(')'));
    expect(ends.length).toBeGreaterThan(8);
    expect(new Set(ends).size).toBe(1);
  });

  test('colours only when asked to', () => {
    expect(renderText(result)).not.toContain(ESCAPE);
    expect(renderText(result, { colour: true })).toContain(`${ESCAPE}[31mfails${ESCAPE}[0m`);
  });

  test('says the same with and without colour', () => {
    const bare = renderText(result, { colour: true }).replaceAll(new RegExp(`${ESCAPE}\\[\\d+m`, 'g'), '');
    expect(bare).toBe(renderText(result));
  });

  test('names what is not met, with its limit', () => {
    const text = renderText(result).replace(/\s+/g, ' ');
    expect(text).toMatch(/Package C with a rather longer name, Alkyd enamel: Strength below 100\.0/);
  });

  test('shows everything where the full report is asked for', () => {
    expect(renderText(result, { report: 'full' }).length).toBeGreaterThan(2 * renderText(result).length);
  });
});
