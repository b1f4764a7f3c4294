import { spawnSync } from 'node:child_process';
import { existsSync, mkdtempSync, readdirSync, readFileSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { dirname, join } from 'node:path';
import { build } from 'esbuild';
import { afterAll, beforeAll, describe, expect, test, vi } from 'vitest';
import { parse } from 'yaml';

// The command as people run it: a process with arguments, streams and an exit code. It is bundled from the source first, so
// that no build need be there.

// A process takes about a second to start, and longer on a busy machine.
vi.setConfig({ testTimeout: 120_000 });

const COMMAND = '.test-build/cli.js';
const SCREENING = 'examples/dispersant-screening/study.json';
const folder = mkdtempSync(join(tmpdir(), 'tintladder-cli-'));

beforeAll(async () => {
  const format = { bundle: true, format: 'esm', platform: 'node', packages: 'external', splitting: true } as const;
  await build({ ...format, entryPoints: ['src/cli/cli.ts'], outdir: dirname(COMMAND) });
});

afterAll(() => {
  rmSync(folder, { recursive: true });
  rmSync(dirname(COMMAND), { recursive: true });
});

function tintladder(...args: string[]) {
  const { status, stdout, stderr } = spawnSync(process.execPath, [COMMAND, ...args], { encoding: 'utf8' });
  return { status, stdout, stderr };
}

/** A copy of the screening study with something changed, beside which its readings are found. */
function variant(name: string, change: (study: Record<string, never>) => object): string {
  const study = parse(readFileSync(SCREENING, 'utf8'));
  const path = join(folder, name);
  const measurements = [join(process.cwd(), 'examples/dispersant-screening/readings.csv')];
  writeFileSync(path, JSON.stringify({ ...study, measurements, ...change(study) }));
  return path;
}

const only =
  (...ids: string[]) =>
  (study: Record<string, never>) => ({
    packages: (study.packages as { id: string }[]).filter(({ id }) => ids.includes(id)),
  });

describe('compare', () => {
  test('prints the answer and the table, without colour or progress in a pipe', () => {
    const { status, stdout, stderr } = tintladder('compare', SCREENING);
    expect(stdout).toContain('Package A is recommended');
    expect(stdout).toContain('coloured pigment flocculated');
    expect(stdout).not.toContain('\u001b');
    expect(stderr).toBe('');
    expect(status).toBe(1);
  });

  test.each([
    [0, 'every package meets every criterion', ['R', 'A']],
    [1, 'one fails', ['R', 'A', 'B', 'C']],
    [2, 'one is undecided and none fails', ['R', 'A', 'C']],
  ])('exits with %d where %s', (code, _, ids) => {
    expect(tintladder('compare', variant('packages.json', only(...ids)), '--quiet')).toEqual({
      status: code,
      stdout: '',
      stderr: '',
    });
  });

  test('--json prints the result and nothing else', () => {
    const result = JSON.parse(tintladder('compare', SCREENING, '--json').stdout);
    expect(result.recommendation.package).toBe('A');
    expect(result.cells).toHaveLength(8);
  });

  test('--out writes the four reports and says where', () => {
    const out = join(folder, 'report');
    const { stdout } = tintladder('compare', SCREENING, '--out', out);
    expect(readdirSync(out).sort()).toEqual(['study.csv', 'study.html', 'study.json', 'study.md']);
    expect(stdout).toContain(`Report: ${join(out, 'study.html')}`);
    expect(JSON.parse(readFileSync(join(out, 'study.json'), 'utf8')).title).toContain('green pigment');
    expect(readFileSync(join(out, 'study.html')).length).toBeLessThan(400_000);
  });

  test('a folder that can not be written leaves nothing behind', () => {
    const file = join(folder, 'taken');
    writeFileSync(file, 'a file where the folder should be');
    const { status, stderr } = tintladder('compare', SCREENING, '--out', file);
    expect(status).toBe(65);
    expect(stderr).toContain('a folder that can be written');
    expect(stderr).toContain('[file-access]');
    expect(readFileSync(file, 'utf8')).toBe('a file where the folder should be');
  });

  test('names with markup and shell signs are shown as text', () => {
    const name = '<img src=x onerror=alert(1)> $(rm -rf ~) `x` "q"';
    const study = variant('hostile.json', ({ packages }) => ({
      packages: (packages as { id: string }[]).map((item) => (item.id === 'A' ? { ...item, name } : item)),
    }));
    const out = join(folder, 'hostile');
    expect(tintladder('compare', study, '--out', out).stdout).toContain('$(rm -rf ~)');
    const html = readFileSync(join(out, 'hostile.html'), 'utf8');
    expect(html).not.toContain('<img');
    expect(html).toContain('&lt;img src=x onerror=alert(1)&gt;');
  });

  test('YAML is read as well', () => {
    expect(tintladder('compare', 'examples/dosage-ladder/study.yaml').stdout).toContain(
      'Polymeric dispersant is recommended',
    );
  });
});

describe('inspect', () => {
  test('shows format, grid, scale and colours', () => {
    const { status, stdout } = tintladder('inspect', 'examples/dispersant-screening/readings.csv');
    expect(stdout).toMatch(
      /^delimited-text, 54 readings\nTable at line 1: 54 readings, 400 to 700 nm every 10 nm, percent/,
    );
    expect(stdout).toContain('#');
    expect(status).toBe(0);
  });
});

describe('faults go to the error stream with place and mend', () => {
  test('a command line that is wrong exits with 64', () => {
    for (const args of [['compare'], ['compare', SCREENING, '--loud'], ['weigh', 'x']]) {
      const { status, stdout, stderr } = tintladder(...args);
      expect(status).toBe(64);
      expect(stdout).toBe('');
      expect(stderr).toMatch(/error/);
    }
  });

  test.each([
    ['a study that is not there', 'none.json', /none\.json/],
    ['a study that is no JSON or YAML', 'package.json', /package\.json, /],
  ])('%s exits with 65', (_, path, message) => {
    const { status, stdout, stderr } = tintladder('compare', path);
    expect(status).toBe(65);
    expect(stdout).toBe('');
    expect(stderr).toMatch(message);
  });

  test('a damaged export is named with its line', () => {
    const path = join(folder, 'damaged.csv');
    writeFileSync(path, 'name,400,410\nA,50,fifty\n');
    const { status, stderr } = tintladder('inspect', path);
    expect(status).toBe(65);
    expect(stderr).toContain(path);
    expect(stderr).toContain('line 2');
  });

  test('a study whose samples the export lacks names the sample', () => {
    const study = variant('lacking.json', () => ({
      readings: [{ names: ['no such sample'], package: 'R', paint: 'WB' }],
    }));
    const { status, stderr } = tintladder('compare', study);
    expect(status).toBe(65);
    expect(stderr).toContain('no such sample');
  });
});

test('help shows the commands, examples and exit codes', () => {
  const { status, stdout } = tintladder('--help');
  for (const part of ['compare', 'inspect', 'Examples:', 'Exit codes:', 'NO_COLOR']) expect(stdout).toContain(part);
  expect(status).toBe(0);
  expect(tintladder('--version').stdout.trim()).toBe(JSON.parse(readFileSync('package.json', 'utf8')).version);
  expect(existsSync(COMMAND)).toBe(true);
});
