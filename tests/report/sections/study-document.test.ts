import { describe, expect, test } from 'vitest';
import type { Block, ReportDocument } from '../../../src/report/document/report-document.js';
import type { Table } from '../../../src/report/document/table.js';
import { studyDocument } from '../../../src/report/sections/study-document.js';
import { inventedStudy, PACKAGES } from '../fixture/invented-study.js';

const result = inventedStudy();
const document = studyDocument(result, 'full');

const blocksOf = ({ sections }: ReportDocument, id: string): readonly Block[] =>
  sections.find((section) => section.id === id)?.blocks ?? [];
const tableOf = (from: ReportDocument, id: string): Table | undefined =>
  blocksOf(from, id).find((block) => block.kind === 'table');
const chartsOf = (from: ReportDocument, id: string) => blocksOf(from, id).filter((block) => block.kind === 'charts');

describe('the document of a study', () => {
  test('is plain data: it comes back from JSON as it was', () => {
    const back: unknown = JSON.parse(JSON.stringify(document));
    expect(back).toEqual(document);
  });

  test('has every id once, of sections and of charts', () => {
    const charts = document.sections.flatMap(({ id }) =>
      chartsOf(document, id).flatMap(({ panels }) => panels.map(({ chart }) => chart.id)),
    );
    const ids = [...document.sections.map(({ id }) => id), ...charts];
    expect(new Set(ids).size).toBe(ids.length);
  });

  test('in short is the full one with sections left out', () => {
    const short = studyDocument(result, 'short');
    const ids = short.sections.map(({ id }) => id);
    expect(ids.length).toBeLessThan(document.sections.length);
    expect(document.sections.filter(({ id }) => ids.includes(id))).toEqual(short.sections);
  });

  test('leaves out the sections that a study has nothing for', () => {
    const bare = studyDocument(
      {
        ...inventedStudy({ curves: false, paints: [{ id: 'w', name: 'Wall paint' }] }),
        warnings: [],
        unusedReadings: [],
      },
      'full',
    );
    for (const id of ['compatibility', 'series', 'notes']) expect(bare.sections.map((one) => one.id)).not.toContain(id);
  });
});

describe('the comparison', () => {
  const table = tableOf(document, 'comparison');

  test('holds the strength and rub-out of every package and paint as figures', () => {
    expect(table?.groups.map(({ heading }) => heading)).toEqual(result.paints.map(({ name }) => name));
    const rows = table?.groups.flatMap(({ rows }) => rows) ?? [];
    const cells = result.paints.flatMap(({ id }) => result.cells.filter(({ paint }) => paint === id));
    expect(rows).toHaveLength(cells.length);
    rows.forEach((row, i) => {
      const { strength, rubOut, outcome } = cells[i];
      if (strength) expect(row[1]).toMatchObject({ value: strength.percent, unit: '%' });
      expect(row[3]).toMatchObject({ value: rubOut?.difference.dEab, unit: 'ΔE*ab', interval: rubOut?.interval?.dEab });
      expect(row[4]).toMatchObject({ kind: 'outcome', outcome });
    });
  });

  test('marks the shade change of a package whose pigment differs', () => {
    const rows = table?.groups.flatMap(({ rows }) => rows) ?? [];
    const changed = rows.filter(([, , residual]) => residual.kind === 'figure' && residual.aside !== undefined);
    expect(new Set(changed.map(([name]) => name.kind === 'text' && name.text))).toEqual(new Set([PACKAGES[4].name]));
  });
});

test('what is not met is listed with its outcome', () => {
  const [list] = blocksOf(document, 'open');
  const judgements = [...result.cells, ...result.packages].flatMap((one) => one.judgements);
  const open = judgements.filter(({ outcome }) => outcome !== 'meets');
  const items = list.kind === 'list' ? list.items : [];
  expect(items.map(({ outcome }) => outcome).sort()).toEqual(open.map(({ outcome }) => outcome).sort());
});

test('the charts hold the figures of the study', () => {
  const [{ panels }] = chartsOf(document, 'strength');
  expect(panels.map(({ heading }) => heading)).toEqual(result.paints.map(({ name }) => name));
  const [{ chart }] = panels;
  const shown = chart.plot.kind === 'intervals' ? chart.plot.rows.map(({ value }) => value) : [];
  const wall = result.cells.filter(({ paint }) => paint === result.paints[0].id);
  expect(shown).toEqual(wall.flatMap(({ strength }) => strength?.percent ?? []));
  expect(chartsOf(document, 'series')).toHaveLength(2);
});

test('a large study shows the plates that call for a look, and says what it leaves out', () => {
  const [first] = result.cells;
  const many = Array.from(
    { length: 80 },
    (_, i) => ({ ...first, package: `P${i}`, outcome: i === 70 ? 'fails' : 'meets' }) as const,
  );
  const packages = many.map(({ package: id }) => ({ ...result.packages[0], package: { id, name: id } }));
  const large = studyDocument({ ...result, packages, cells: many }, 'full');
  const plates = chartsOf(large, 'plates');
  expect(plates).toHaveLength(60);
  expect(plates[0].caption).toContain('P70');
  expect(blocksOf(large, 'plates')[0].kind).toBe('paragraph');
});
