import * as fs from 'node:fs';
import { transformSync } from 'esbuild';
import { expect, test } from 'vitest';
import * as fits from '../../src/fits/index.js';
import * as publicApi from '../../src/index.js';
import { blocksIn, PAGES } from './documented-code.js';

// Every block of code of the README and the guide is run as it stands, its types taken off. A comment `// → text` behind or below a `console.log` is what it
// must print.

const AsyncFunction = Object.getPrototypeOf(async () => {}).constructor;

/** A block as the body of a function: its imports taken from the source instead of the built package, its types taken off. */
function asBody(code: string): string {
  const plain = code.replace(/^import type .*$/gm, '').replace(/\btype \w+, |, type \w+(?= \})/g, '');
  const run = plain.replace(/^import \{([^}]*)\} from '([^']*)';$/gm, (_, names: string, source: string) => {
    const from = source.startsWith('tintladder') ? 'api' : `node[${JSON.stringify(source)}]`;
    return `const {${names.replace(/ as /g, ': ')}} = ${from};`;
  });
  // top-level await is allowed in a module only, so the body of a function it becomes is wrapped for the transformer
  const body = transformSync(`async () => {${run}\n}`, { loader: 'ts', target: 'es2022' }).code.trim();
  return `return (${body.replace(/;$/, '')})()`;
}

const blocks = PAGES.flatMap(blocksIn);

test('there are blocks to run', () => expect(blocks.length).toBeGreaterThanOrEqual(2 + 5));

test.each(blocks)('$path prints what it says', async ({ code }) => {
  const printed: string[] = [];
  const console = { log: (...parts: unknown[]) => printed.push(parts.join(' ')) };
  const promised = [...code.matchAll(/\/\/ → (.*)$/gm)].map(([, text]) => text);
  await new AsyncFunction('api', 'node', 'console', asBody(code))(
    { ...publicApi, ...fits },
    { 'node:fs': fs },
    console,
  );
  expect(printed.join('\n').split('\n')).toEqual(promised);
});
