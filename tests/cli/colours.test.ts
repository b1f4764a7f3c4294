import { readFileSync } from 'node:fs';
import { describe, expect, test } from 'vitest';
import { A_2, D65_10, labFromSpectrum } from '../../src/colorimetry/index.js';
import { readMeasurements } from '../../src/exchange/index.js';
import { theCommand } from './the-command.js';

const { run } = theCommand();
const EXPORT = readFileSync('examples/dispersant-screening/readings.csv', 'utf8');
const spectra = readMeasurements(EXPORT).measurements.flatMap(({ name, spectrum }) =>
  spectrum ? [{ name, spectrum }] : [],
);

test('one line per spectrum, in the order of the input, to the last digit', () => {
  const { stdout, stderr, status } = run(['colours', '--viewing', 'D65/10'], EXPORT);
  const expected = spectra.map(({ name, spectrum }) => {
    const { L, a, b } = labFromSpectrum(spectrum, D65_10);
    return `${name},${L},${a},${b}`;
  });
  expect(stdout.trim().split('\n')).toEqual(['name,L*,a*,b*', ...expected]);
  expect({ stderr, status }).toEqual({ stderr: '', status: 0 });
});

test('as JSON, one object per line', () => {
  const { stdout } = run(['colours', '--viewing', 'A/2', '--format', 'ndjson'], EXPORT);
  const [first] = stdout.split('\n');
  expect(JSON.parse(first)).toEqual({ name: spectra[0].name, ...labFromSpectrum(spectra[0].spectrum, A_2) });
});

test('names with commas, quotes and line breaks come back whole', () => {
  const { stdout } = run(['colours', '--viewing', 'D65/10'], 'name,400,410\n"blue, ""deep""",0.5,0.6\n');
  expect(stdout.split('\n')[1]).toMatch(/^"blue, ""deep""",\d/);
});

test('readings without a spectrum are left out and counted', () => {
  const { stdout, stderr } = run(['colours', '--viewing', 'D65/10'], 'name,L*,a*,b*\nA,50,0,0\nB,60,0,0\n');
  expect(stdout).toBe('name,L*,a*,b*\n');
  expect(stderr).toMatch(/2 readings/);
});

describe('what is refused', () => {
  test.each([
    ['no viewing', ['colours'], 64, '--viewing'],
    ['an observer of its own', ['colours', '--viewing', 'D65/5'], 64, 'D65/10'],
    ['an unknown illuminant', ['colours', '--viewing', 'D60/10'], 64, 'D65/10'],
    ['an unknown format', ['colours', '--viewing', 'D65/10', '--format', 'xml'], 64, 'ndjson'],
  ])('%s', (_, args, code, part) => {
    const { status, stderr } = run(args, EXPORT);
    expect(stderr).toContain(part);
    expect(status).toBe(code);
  });

  test('a damaged line, by its number, after the lines before it', () => {
    const { status, stdout, stderr } = run(['colours', '--viewing', 'D65/10'], 'name,400,410\nA,50,60\nB,50,sixty\n');
    expect(stdout.split('\n').length).toBeGreaterThan(1);
    expect(stderr).toContain('line 3');
    expect(status).toBe(65);
  });
});
