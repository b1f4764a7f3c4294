import { spawnSync } from 'node:child_process';
import { existsSync, mkdirSync, readFileSync } from 'node:fs';
import { join } from 'node:path';
import { describe, expect, test } from 'vitest';
import { SCREENING, theCommand } from './the-command.js';

// Every problem ends in one plain sentence on the error stream and an exit code of sysexits; exit code 1 means that something fails.

const { folder, run, write, ...command } = theCommand();
const variant = command.variant.bind({ write });
const EXPORT = 'examples/dispersant-screening/readings.csv';

function expectSentence(result: { status: number | null; stdout: string; stderr: string }, code: number, part: string) {
  expect(result.stdout).toBe('');
  expect(result.stderr).toMatch(/^tintladder: .*\n$/);
  expect(result.stderr).toContain(part);
  expect(result.status).toBe(code);
}

test.each([[['compare']], [['compare', SCREENING, '--loud']], [['weigh', 'x']], [['inspect']]])(
  'the command line %j is wrong: 64',
  (args) => {
    const { status, stdout, stderr } = run(args);
    expect(status).toBe(64);
    expect(stdout).toBe('');
    expect(stderr).toMatch(/error/);
  },
);

describe('inputs that say something wrong: 65', () => {
  test('a study that is no JSON or YAML', () => {
    expectSentence(run(['compare', write('open.yaml', 'a: [1, 2')]), 65, 'open.yaml, the study');
  });

  test('a study that lacks what it needs', () =>
    expectSentence(run(['compare', 'package.json']), 65, 'package.json, '));

  test('a damaged export is named with its line', () => {
    const path = write('damaged.csv', 'name,400,410\nA,50,fifty\n');
    expectSentence(run(['inspect', path]), 65, 'line 2');
  });

  test('a study whose samples the export lacks names the sample', () => {
    const readings = [{ names: ['no such sample'], package: 'R', paint: 'WB' }];
    expectSentence(run(['compare', variant('lacking.json', () => ({ readings }))]), 65, 'no such sample');
  });

  test('an empty standard input', () => expectSentence(run(['inspect', '-'], ''), 65, '[empty-file]'));
});

describe("inputs that can't be opened: 66", () => {
  test.each(['compare', 'inspect'])('%s of a file that is not there', (verb) => {
    expectSentence(run([verb, join(folder, 'none.csv')]), 66, 'there is no such file');
  });

  test('compare of a folder', () => expectSentence(run(['compare', folder]), 66, 'it is a folder'));

  test('a folder without files', () => {
    mkdirSync(join(folder, 'empty'));
    expectSentence(run(['inspect', join(folder, 'empty')]), 66, 'no file matches');
  });

  test('a named pipe, which nobody may ever write to', () => {
    const pipe = join(folder, 'pipe');
    spawnSync('mkfifo', [pipe]);
    expect(existsSync(pipe)).toBe(true);
    expectSentence(run(['inspect', pipe]), 66, 'it is a pipe');
  });
});

describe('outputs: 73 and 74', () => {
  test('a file where the folder should be stays as it is', () => {
    const file = write('taken', 'a file where the folder should be');
    expectSentence(run(['compare', SCREENING, '--out', file]), 73, 'in the way');
    expect(readFileSync(file, 'utf8')).toBe('a file where the folder should be');
  });

  test('a full disk', () => {
    const script = `"${process.execPath}" "${command.command}" inspect ${EXPORT} > /dev/full`;
    const { status, stderr } = spawnSync('sh', ['-c', script], { encoding: 'utf8' });
    expect(stderr).toBe("tintladder: standard output can't be written: the disk is full.\n");
    expect(status).toBe(74);
  });

  test('a reader that has seen enough ends it silently', () => {
    const script = `"${process.execPath}" "${command.command}" inspect ${Array(40).fill(EXPORT).join(' ')} | head -n 1`;
    const { stdout, stderr } = spawnSync('sh', ['-c', script], { encoding: 'utf8' });
    expect(stdout.split('\n')).toHaveLength(2);
    expect(stderr).toBe('');
  });
});

test('help shows the commands, examples and exit codes', () => {
  const { status, stdout } = run(['--help']);
  for (const part of ['compare', 'inspect', 'Examples:', 'Exit codes:', 'NO_COLOR']) expect(stdout).toContain(part);
  expect(status).toBe(0);
  expect(run(['--version']).stdout.trim()).toBe(JSON.parse(readFileSync('package.json', 'utf8')).version);
});
