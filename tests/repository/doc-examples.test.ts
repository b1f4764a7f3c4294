import { readdirSync, readFileSync } from 'node:fs';
import { join } from 'node:path';
import { describe, expect, test } from 'vitest';
import * as fits from '../../src/fits/index.js';
import * as publicApi from '../../src/index.js';

// Every `@example` in src/ is run. Its last line reads `expression // expected`; lines before it are statements. `expected` is a
// number (compared to half a unit of its last printed digit), any other value, or `throws some-code`.

const AsyncFunction = Object.getPrototypeOf(async () => {}).constructor;

interface Example {
  readonly path: string;
  readonly statements: string;
  readonly expression: string;
  readonly expected: string;
}

function sourceFiles(folder: string): string[] {
  return readdirSync(folder, { withFileTypes: true }).flatMap((entry) => {
    const path = join(folder, entry.name);
    return entry.isDirectory() ? sourceFiles(path) : path.endsWith('.ts') ? [path] : [];
  });
}

function examplesIn(file: string): Example[] {
  const examples: Example[] = [];
  for (const comment of readFileSync(file, 'utf8').matchAll(/\/\*\*[\s\S]*?\*\//g)) {
    const text = comment[0].replace(/^\/\*\*|\*\/$/g, '').replace(/^[ \t]*\* ?/gm, '');
    for (const part of text.split(/^@example\b/m).slice(1)) {
      const lines = part
        .split(/^@\w/m)[0]
        .split('\n')
        .map((line) => line.trim())
        .filter((line) => line !== '' && !line.startsWith('```'));
      const code = lines.join('\n');
      // the expected value may stand on a comment line of its own below the expression
      const at = code.lastIndexOf('//');
      const before = code.slice(0, at).trim().split('\n');
      examples.push({
        path: `${file}: ${lines[0] ?? ''}`,
        statements: before.slice(0, -1).join('\n'),
        expression: (before.at(-1) ?? '').replace(/;$/, ''),
        expected: code.slice(at + 2).trim(),
      });
    }
  }
  return examples;
}

function run(code: string): Promise<unknown> {
  const scope = { ...publicApi, ...fits };
  return new AsyncFunction(...Object.keys(scope), code)(...Object.values(scope));
}

/** Half a unit of the last digit printed, which is what a printed figure promises. */
function printedTolerance(printed: string): number {
  const [mantissa, exponent = '0'] = printed.toLowerCase().split('e');
  const decimals = mantissa.split('.')[1]?.length ?? 0;
  return 0.5000001 * 10 ** (Number(exponent) - decimals);
}

const examples = sourceFiles('src').flatMap(examplesIn);

describe('doc examples', () => {
  test('are found', () => expect(examples.length).toBeGreaterThan(10));

  test.each(examples)('$path', async ({ statements, expression, expected }) => {
    const code = `${statements}\nreturn (${expression});`;
    const fault = expected.match(/^throws ([a-z-]+)$/);
    if (fault) {
      await expect(run(code)).rejects.toMatchObject({ code: fault[1] });
      return;
    }
    const value = await run(code);
    if (/^-?[\d.]+(e[+-]?\d+)?$/i.test(expected)) {
      expect(Math.abs((value as number) - Number(expected))).toBeLessThanOrEqual(printedTolerance(expected));
    } else {
      expect(value).toEqual(await run(`return (${expected});`));
    }
  });
});
