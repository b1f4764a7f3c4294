import { expect, test } from 'vitest';
import { matrixTable } from '../../../src/report/document/matrix.js';
import { figureCell, NONE, textCell } from '../../../src/report/document/table-cell.js';

const STRENGTH = figureCell({ value: 104 }, '%');

test('a matrix reads as a table with a group for each column and one for the whole', () => {
  const table = matrixTable({
    kind: 'matrix',
    caption: 'A caption',
    rowHeading: 'Package',
    columnHeading: 'Paint',
    overallHeading: 'Overall',
    columns: ['Wall paint', 'Enamel'],
    lines: [{ label: 'Strength', unit: '%' }],
    rows: [
      {
        name: 'A',
        overall: { outcome: 'fails', remarks: ['in Wall paint'] },
        verdicts: [{ outcome: 'fails', figures: [STRENGTH], remarks: ['one', 'two'] }, undefined],
      },
    ],
  });
  expect(table.groupedBy).toBe('Paint');
  expect(table.groups.map(({ heading }) => heading)).toEqual(['Wall paint', 'Enamel', 'Overall']);
  const [[wall], [enamel], [overall]] = table.groups.map(({ rows }) => rows);
  expect(wall).toEqual([textCell('A'), STRENGTH, { kind: 'outcome', outcome: 'fails' }, textCell('one; two')]);
  expect(enamel).toEqual([textCell('A'), NONE, textCell('not read'), NONE]);
  expect(overall.at(-1)).toEqual(textCell('in Wall paint'));
  for (const { rows } of table.groups) for (const row of rows) expect(row).toHaveLength(table.columns.length);
});
