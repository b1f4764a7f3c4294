import { describe, expect, test } from 'vitest';
import type { Block, ReportDocument } from '../../../src/report/document/report-document.js';
import { studyDocument } from '../../../src/report/sections/study-document.js';
import { inventedStudy, PACKAGES, PAINTS } from '../fixture/invented-study.js';

const result = inventedStudy();
const document = studyDocument(result);

const blocksOf = ({ sections }: ReportDocument, id: string): readonly Block[] =>
  sections.find((section) => section.id === id)?.blocks ?? [];
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
    const short = studyDocument(result, { report: 'short' });
    const ids = short.sections.map(({ id }) => id);
    expect(ids.length).toBeLessThan(document.sections.length);
    expect(document.sections.filter(({ id }) => ids.includes(id))).toEqual(short.sections);
  });

  test('leaves out the sections that a study has nothing for', () => {
    const bare = studyDocument({
      ...inventedStudy({ curves: false, paints: [{ id: 'w', name: 'Wall paint' }] }),
      warnings: [],
      unusedReadings: [],
    });
    for (const id of ['storage', 'series', 'notes']) expect(bare.sections.map((one) => one.id)).not.toContain(id);
  });
});

describe('the overview', () => {
  const [matrix] = blocksOf(document, 'overview');
  if (matrix.kind !== 'matrix') throw new Error('the overview is no matrix');
  const order = [...result.ranking.meeting, ...result.ranking.undecided, ...result.ranking.failing];

  test('comes first and names the packages in the order of the ranking', () => {
    expect(document.sections[0].id).toBe('overview');
    const names = order.map((id) => result.packages.find((one) => one.package.id === id)?.package.name);
    expect(matrix.rows.map(({ name }) => name)).toEqual(names);
    expect(matrix.columns).toEqual(result.paints.map(({ name }) => name));
  });

  test('holds outcome, strength and rub-out of every package and paint as figures', () => {
    matrix.rows.forEach(({ verdicts, overall }, r) => {
      expect(overall.outcome).toBe(result.packages.find((one) => one.package.id === order[r])?.outcome);
      verdicts.forEach((verdict, p) => {
        const cell = result.cells.find((one) => one.package === order[r] && one.paint === result.paints[p].id);
        const [strength, , rubOut] = verdict?.figures ?? [];
        expect(verdict?.outcome).toBe(cell?.outcome);
        if (cell?.strength) expect(strength).toMatchObject({ value: cell.strength.percent, unit: '%' });
        expect(rubOut).toMatchObject({ value: cell?.rubOut?.difference.dEab, interval: cell?.rubOut?.interval?.dEab });
      });
    });
  });

  test('gives a reason wherever something is not met', () => {
    const verdicts = matrix.rows.flatMap((row) => [row.overall, ...row.verdicts.flatMap((one) => one ?? [])]);
    const open = verdicts.filter(({ outcome }) => outcome !== 'meets');
    expect(open.length).toBeGreaterThan(3);
    for (const { remarks } of open) expect(remarks.length).toBeGreaterThan(0);
  });

  test('says so where a package was not read in a paint', () => {
    const [first, ...rest] = result.cells;
    const [partial] = blocksOf(studyDocument({ ...result, cells: rest }), 'overview');
    const row = partial.kind === 'matrix' ? partial.rows.find(({ name }) => name === PACKAGES[0].name) : undefined;
    expect(row?.verdicts[0]).toBeUndefined();
    const next = blocksOf(studyDocument({ ...result, cells: rest }), 'next')[0];
    const texts = next.kind === 'list' ? next.items.map(({ text }) => text) : [];
    expect(texts.filter((text) => text.startsWith(PACKAGES[0].name)).join()).toContain(PAINTS[0].name);
    expect(first.paint).toBe(PAINTS[0].id);
  });
});

test('what to make next names every undecided judgement with the readings it needs', () => {
  const [list] = blocksOf(document, 'next');
  const texts = list.kind === 'list' ? list.items.map(({ text }) => text) : [];
  const open = [...result.cells, ...result.packages]
    .flatMap(({ judgements }) => judgements)
    .filter(({ outcome }) => outcome === 'undecided');
  expect(open.length).toBeGreaterThan(0);
  expect(texts.filter((text) => /\b9 readings/.test(text))).toHaveLength(open.length);
});

test('a figure that is missing is named, unless the package was not read in that paint at all', () => {
  const [first, ...rest] = result.packages;
  const [paint, other] = result.paints;
  const missing = [
    { quantity: 'gloss', paint: paint.id },
    { quantity: 'viscosity', paint: other.id },
  ];
  const cells = result.cells.filter((cell) => cell.package !== first.package.id || cell.paint !== other.id);
  const partial = studyDocument({ ...result, packages: [{ ...first, missing }, ...rest], cells });
  const [matrix] = blocksOf(partial, 'overview');
  const row = matrix.kind === 'matrix' ? matrix.rows.find(({ name }) => name === first.package.name) : undefined;
  expect(row?.overall.remarks.filter((remark) => /missing/i.test(remark))).toEqual([expect.stringMatching(/gloss/i)]);
  expect(JSON.stringify(blocksOf(partial, 'next'))).toMatch(/gloss is missing/);
});

test('every package has a section with its figures, each beside its limit', () => {
  const sections = document.sections.filter(({ id }) => id.startsWith('package-'));
  expect(sections).toHaveLength(PACKAGES.length);
  const tables = blocksOf(document, 'package-1').filter((block) => block.kind === 'table');
  const rows = tables.flatMap(({ groups }) => groups.flatMap((group) => group.rows));
  const judged = rows.flatMap((row) => row.filter((cell) => cell.kind === 'figure' && cell.outcome !== undefined));
  const { cells, packages, ranking } = result;
  const own = [
    ...cells.filter((one) => one.package === ranking.meeting[0]),
    ...packages.filter((one) => one.package.id === ranking.meeting[0]),
  ];
  expect(judged).toHaveLength(own.flatMap(({ judgements }) => judgements).length);
});

test('the identity is printed as it was given, and nothing is looked up', () => {
  const identity = { date: '2031-02-03', author: 'A. N. Author', inputs: [{ name: 'readings.csv', digest: 'abc123' }] };
  const given = JSON.stringify(blocksOf(studyDocument(result, { identity }), 'identity'));
  for (const text of ['2031-02-03', 'A. N. Author', 'readings.csv', 'abc123']) expect(given).toContain(text);
  const bare = blocksOf(document, 'identity');
  expect(bare).toHaveLength(1);
  expect(JSON.stringify(bare)).not.toMatch(/20\d\d-/);
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

test('plates stand where something was found, what fails first, and a large study says how many are left out', () => {
  const captions = chartsOf(document, 'plates').map(({ caption }) => caption);
  const calm = result.cells.filter(
    ({ outcome, rubOut, shadeChange }) => outcome === 'meets' && rubOut?.causes.length === 0 && !shadeChange,
  );
  expect(calm.length).toBeGreaterThan(0);
  expect(captions).toHaveLength(result.cells.length - calm.length);
  const undecided = result.cells.find(({ outcome }) => outcome === 'undecided') ?? result.cells[0];
  const many = Array.from({ length: 80 }, (_, i) => ({
    ...undecided,
    package: `P${i}`,
    outcome: i === 70 ? ('fails' as const) : ('undecided' as const),
  }));
  const packages = many.map(({ package: id }) => ({ ...result.packages[0], package: { id, name: id } }));
  const large = studyDocument({ ...result, packages, cells: many });
  expect(chartsOf(large, 'plates')).toHaveLength(30);
  expect(chartsOf(large, 'plates')[0].caption).toContain('P70');
  expect(JSON.stringify(blocksOf(large, 'plates')[0])).toContain('50 more');
});
