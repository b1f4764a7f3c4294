import { describe, expect, test } from 'vitest';
import { shortInterval } from '../../../src/decision/internal.js';
import { withoutEmptyColumns } from '../../../src/report/document/table.js';
import {
  cellText,
  cellTextWithAside,
  figureCell,
  NONE,
  outcomeCell,
  textCell,
} from '../../../src/report/document/table-cell.js';

const ESTIMATE = { value: 104.26, interval: { low: 102.9, high: 105.62 } };

describe('a cell', () => {
  test('keeps its figure as numbers', () => {
    expect(figureCell(ESTIMATE, '%')).toMatchObject({ ...ESTIMATE, unit: '%', decimals: 1 });
    expect(figureCell(undefined, '%')).toBe(NONE);
  });

  test.each([
    [figureCell(ESTIMATE, '%'), '104.3 (102.9 to 105.6)'],
    [figureCell({ value: 912 }, 'mPa·s', { unitShown: true }), '912\u00a0mPa·s'],
    [figureCell({ value: 0.126 }, '', { decimals: 2, signed: true }), '+0.13'],
    [outcomeCell('fails'), 'fails'],
    [textCell('a name'), 'a name'],
    [NONE, '–'],
  ])('%j reads %j', (cell, expected) => expect(cellText(cell)).toBe(expected));

  test('is read with its aside where there is room', () => {
    expect(cellTextWithAside(textCell('uneven film', { aside: 'indicated' }))).toBe('uneven film, indicated');
    expect(cellTextWithAside(NONE)).toBe('–');
  });

  test('writes its interval as the reader of it asks', () => {
    expect(cellText(figureCell(ESTIMATE, '%'), shortInterval)).toBe('104.3 (102.9–105.6)');
  });
});

test('a table leaves out the columns in which nothing stands', () => {
  const table = {
    kind: 'table',
    caption: '',
    columns: [{ heading: 'A' }, { heading: 'B' }, { heading: 'C' }],
    groups: [{ rows: [[textCell('1'), NONE, NONE]] }, { rows: [[textCell('2'), NONE, textCell('3')]] }],
  } as const;
  expect(withoutEmptyColumns(table)?.columns.map(({ heading }) => heading)).toEqual(['A', 'C']);
  expect(withoutEmptyColumns(table)?.groups[1].rows[0]).toEqual([textCell('2'), textCell('3')]);
  expect(withoutEmptyColumns({ ...table, groups: [] })).toBeUndefined();
});
