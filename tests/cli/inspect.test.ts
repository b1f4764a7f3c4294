import { mkdirSync, readFileSync } from 'node:fs';
import { join } from 'node:path';
import { expect, test } from 'vitest';
import { theCommand } from './the-command.js';

const { folder, run, write } = theCommand();
const EXPORT = 'examples/dispersant-screening/readings.csv';

test('shows format, grid, scale and colours', () => {
  const { status, stdout } = run(['inspect', EXPORT]);
  expect(stdout).toMatch(
    /^delimited-text, 134 readings\nTable at line 1: 134 readings, 400 to 700 nm every 10 nm, percent/,
  );
  expect(stdout).toContain('#');
  expect(status).toBe(0);
});

test('reads standard input', () => {
  expect(run(['inspect', '-'], readFileSync(EXPORT, 'utf8'))).toEqual(run(['inspect', EXPORT]));
});

test('--json prints one line per file with what was read', () => {
  mkdirSync(join(folder, 'exports'));
  const files = ['a.csv', 'b.csv'].map((name) => write(`exports/${name}`, 'name,400,410,420\nA,50,60,70\n'));
  const lines = run(['inspect', join(folder, 'exports'), '--json'])
    .stdout.trim()
    .split('\n');
  const read = lines.map((line) => JSON.parse(line));
  expect(read.map(({ file }) => file)).toEqual(files);
  expect(read.map(({ measurements }) => measurements.length)).toEqual([1, 1]);
  expect(read[0]).toMatchObject({ format: 'delimited-text', tables: [{ scale: 'percent' }] });
});

test('a file that names no sample names its reading', () => {
  const path = write('blue tint 07.csv', 'nm,R%\n400,40\n410,41\n');
  expect(JSON.parse(run(['inspect', path, '--json']).stdout).measurements[0].name).toBe('blue tint 07');
});

test('of several files each has its name before it', () => {
  const [a, b] = ['c.csv', 'd.csv'].map((name) => write(name, 'name,400,410,420\nA,50,60,70\n'));
  const { stdout } = run(['inspect', a, b]);
  expect(stdout.startsWith(`${a}: delimited-text, 1 reading`)).toBe(true);
  expect(stdout).toContain(`\n${b}: delimited-text, 1 reading`);
});
