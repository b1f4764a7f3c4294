import { expect, test } from 'vitest';
import { renderMarkdown } from '../../src/report/index.js';
import { inventedStudy } from './fixture/invented-study.js';

const result = inventedStudy();
const markdown = renderMarkdown(result);

test('gives the answer first', () => {
  expect(markdown.indexOf('is recommended')).toBeLessThan(markdown.indexOf('| Paint'));
});

test('has a row for each package and paint, and one for each package over all', () => {
  const [table] = markdown.split('\n\n').filter((block) => block.startsWith('| Paint'));
  expect(table.split('\n')).toHaveLength(result.cells.length + result.packages.length + 2);
});

test('quotes strength to one decimal and rub-out to two, with intervals', () => {
  const cell = result.cells.find((one) => one.package === 'A' && one.paint === 'wall');
  const { percent = 0, interval } = cell?.strength ?? {};
  expect(markdown).toContain(`${percent.toFixed(1)} (${interval?.low.toFixed(1)} to ${interval?.high.toFixed(1)})`);
  expect(markdown).toContain(`${cell?.rubOut?.difference.dEab.toFixed(2)} (`);
});

test('names limits, outcomes and the readings that would decide', () => {
  expect(markdown).toContain('Rub-out difference: at most 1.00\u00a0ΔE\\*ab.');
  expect(markdown).toMatch(/\bundecided\b/);
  expect(markdown).toMatch(/about 9 readings per side/);
});
