import { readdirSync, readFileSync } from 'node:fs';
import { join } from 'node:path';
import { expect, test } from 'vitest';
import { ERROR_CODES, WARNING_CODES } from '../../src/core/index.js';

// A code that nothing throws, or that no test reaches, is a promise nobody keeps.

const textOf = (folder: string, skip: RegExp) =>
  (readdirSync(folder, { recursive: true }) as string[])
    .filter((name) => name.endsWith('.ts') && !skip.test(name))
    .map((name) => readFileSync(join(folder, name), 'utf8'))
    .join('\n');

const source = textOf('src', /(error-codes|warning)\.ts$/);
const tests = textOf('tests', /error-codes\.test\.ts$/);

test.each(ERROR_CODES)('%s is thrown somewhere and reached by a test', (code) => {
  expect(source).toContain(`'${code}'`);
  expect(tests).toMatch(new RegExp(`\\b${code}\\b`));
});

test.each(WARNING_CODES)('the warning %s is given somewhere', (code) => {
  expect(source).toContain(`'${code}'`);
});
