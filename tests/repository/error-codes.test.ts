import { readdirSync, readFileSync } from 'node:fs';
import { join } from 'node:path';
import { expect, test } from 'vitest';

// A code that nothing throws, or that no test reaches, is a promise nobody keeps.

const CODES = [...readFileSync('src/core/tintladder-error.ts', 'utf8').matchAll(/^ {2}\| '([a-z-]+)'/gm)].map(
  ([, code]) => code,
);

const textOf = (folder: string, skip: RegExp) =>
  (readdirSync(folder, { recursive: true }) as string[])
    .filter((name) => name.endsWith('.ts') && !skip.test(name))
    .map((name) => readFileSync(join(folder, name), 'utf8'))
    .join('\n');

const source = textOf('src', /tintladder-error\.ts$/);
const tests = textOf('tests', /error-codes\.test\.ts$/);

test('there are codes', () => expect(CODES.length).toBeGreaterThan(30));

test.each(CODES)('%s is thrown somewhere and reached by a test', (code) => {
  expect(source).toContain(`'${code}'`);
  expect(tests).toMatch(new RegExp(`\\b${code}\\b`));
});
