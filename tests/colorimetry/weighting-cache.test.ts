import { expect, test } from 'vitest';
import { D65_10 } from '../../src/colorimetry/index.js';
import { weightingTable } from '../../src/colorimetry/internal.js';

const grid = { start: 400, step: 10, count: 31 };

test('a table is kept, and dropped once a hundred others were asked for', () => {
  const table = weightingTable(D65_10, grid);
  expect(weightingTable(D65_10, grid)).toBe(table);
  for (let i = 1; i <= 100; i++) weightingTable(D65_10, { ...grid, start: 400 + i / 100 });
  const anew = weightingTable(D65_10, grid);
  expect(anew).not.toBe(table);
  expect(anew).toStrictEqual(table);
});
