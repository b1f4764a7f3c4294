import { createHash } from 'node:crypto';
import { mkdirSync, readdirSync, readFileSync } from 'node:fs';
import { join } from 'node:path';
import { describe, expect, test } from 'vitest';
import { only, SCREENING, theCommand } from './the-command.js';

const { folder, run, write, ...command } = theCommand();
const variant = command.variant.bind({ write });

test('prints the answer and the table, without colour or progress in a pipe', () => {
  const { status, stdout, stderr } = run(['compare', SCREENING]);
  expect(stdout).toContain('Package A is recommended');
  expect(stdout).not.toContain('\u001b');
  expect(stderr).toBe('');
  expect(status).toBe(1);
});

describe('the exit code', () => {
  test.each([
    [0, 'every package meets every criterion', ['R', 'A']],
    [1, 'one fails', ['R', 'A', 'B', 'C']],
    [2, 'one is undecided and none fails', ['R', 'A', 'C']],
  ])('is %d where %s', (code, _, ids) => {
    const study = variant('packages.json', only(...ids));
    expect(run(['compare', study, '--quiet'])).toEqual({ status: code, stdout: '', stderr: '' });
  });

  test.each([
    ['recommended', 0],
    ['A', 0],
    ['B', 1],
    ['C', 2],
    ['all', 1],
  ])('is that of %s where --exit-for asks for it', (choice, code) => {
    expect(run(['compare', SCREENING, '--quiet', '--exit-for', choice]).status).toBe(code);
  });

  test('is 64 for a package that the study lacks, and the sentence names those it has', () => {
    const { status, stderr } = run(['compare', SCREENING, '--exit-for', 'Z']);
    expect(status).toBe(64);
    expect(stderr).toContain('R, A, B, C');
  });
});

test('--json prints the result and nothing else', () => {
  const result = JSON.parse(run(['compare', SCREENING, '--json']).stdout);
  expect(result.recommendation.package).toBe('A');
  expect(result.cells).toHaveLength(8);
});

test('--out writes the four reports and says where', () => {
  const out = join(folder, 'report');
  const { stdout } = run(['compare', SCREENING, '--out', out]);
  expect(readdirSync(out).sort()).toEqual(['study.csv', 'study.html', 'study.json', 'study.md']);
  expect(stdout).toContain(`Report: ${join(out, 'study.html')}`);
  expect(JSON.parse(readFileSync(join(out, 'study.json'), 'utf8')).title).toContain('green pigment');
  expect(readFileSync(join(out, 'study.html')).length).toBeLessThan(400_000);
});

test('the report names its inputs by their SHA-256 digests (FIPS 180-4)', () => {
  const out = join(folder, 'identity');
  run(['compare', SCREENING, '--out', out]);
  const html = readFileSync(join(out, 'study.html'), 'utf8');
  expect(html).toContain(createHash('sha256').update(readFileSync(SCREENING)).digest('hex'));
  expect(html.match(/\b[0-9a-f]{64}\b/g)?.length).toBeGreaterThan(1);
});

test('--report short leaves out the details, and any other length is refused', () => {
  const [short, full] = ['short', 'full'].map((length) => {
    const out = join(folder, length);
    run(['compare', SCREENING, '--out', out, '--report', length]);
    return readFileSync(join(out, 'study.html'), 'utf8');
  });
  expect(short.length).toBeLessThan(full.length / 2);
  expect(run(['compare', SCREENING, '--report', 'long']).status).toBe(64);
});

test('names with markup and shell signs are shown as text', () => {
  const name = '<img src=x onerror=alert(1)> $(rm -rf ~) `x` "q"';
  const study = variant('hostile.json', ({ packages }) => ({
    packages: (packages as { id: string }[]).map((item) => (item.id === 'A' ? { ...item, name } : item)),
  }));
  const out = join(folder, 'hostile');
  expect(run(['compare', study, '--out', out]).stdout).toContain('$(rm -rf ~)');
  const html = readFileSync(join(out, 'hostile.html'), 'utf8');
  expect(html).not.toContain('<img');
  expect(html).toContain('&lt;img src=x onerror=alert(1)&gt;');
});

test('YAML is read as well', () => {
  expect(run(['compare', 'examples/dosage-ladder/study.yaml']).stdout).toContain('Polymeric dispersant is recommended');
});

test('a study tells the reader what it has to know of an export, and a reading that is left out stands with its reason', () => {
  const file = join(process.cwd(), 'examples/dispersant-screening/readings.csv');
  const exclude = [{ name: 'WB A unrubbed 4-2', reason: 'dust on the film' }];
  const study = variant('exclude.json', () => ({ measurements: [{ file, scale: 'percent', exclude }] }));
  const { status, stdout } = run(['compare', study, '--json']);
  expect(status).toBe(1);
  const result = JSON.parse(stdout);
  const cell = result.cells.find(({ package: id, paint }: Record<string, string>) => id === 'A' && paint === 'WB');
  expect(cell.replicates.unrubbed).toBe(7);
  expect(JSON.stringify(result.warnings)).toContain('dust on the film');
  const unexplained = variant('unexplained.json', () => ({
    measurements: [{ file, exclude: [{ name: 'WB white 1' }] }],
  }));
  expect(run(['compare', unexplained]).stderr).toContain('measurements[0].exclude[0].reason');
});

describe('where the study and its exports come from', () => {
  const readings = readFileSync('examples/dispersant-screening/readings.csv', 'utf8');
  const [heading, ...rows] = readings.trim().split('\n');
  const split = join(folder, 'exports');
  mkdirSync(split);
  write('exports/first.csv', `${[heading, ...rows.slice(0, 30)].join('\n')}\n`);
  write('exports/second.csv', `${[heading, ...rows.slice(30)].join('\n')}\n`);
  write('exports/.hidden.csv', 'not an export');

  const cellsOf = (study: string) => JSON.parse(run(['compare', study, '--json']).stdout).cells;

  test.each([
    ['a folder', split],
    ['a pattern', join(split, '*.csv')],
  ])('%s stands for its files', (_, path) => {
    const study = variant('folder.json', () => ({ measurements: [path] }));
    expect(cellsOf(study)).toEqual(cellsOf(SCREENING));
  });

  test('standard input may bring the study', () => {
    const study = readFileSync(
      variant('piped.json', () => ({})),
      'utf8',
    );
    expect(run(['compare', '-', '--quiet'], study)).toEqual({ status: 1, stdout: '', stderr: '' });
  });
});
