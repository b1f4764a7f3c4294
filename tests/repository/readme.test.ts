import * as fs from 'node:fs';
import { expect, test } from 'vitest';
import * as fits from '../../src/fits/index.js';
import * as publicApi from '../../src/index.js';

// Every JavaScript block of the README and the guides is run as it stands. A comment `// → text` behind or below a `console.log` is what it
// must print.

const AsyncFunction = Object.getPrototypeOf(async () => {}).constructor;

interface Block {
  readonly path: string;
  readonly code: string;
}

function blocksIn(file: string): Block[] {
  const text = fs.readFileSync(file, 'utf8');
  return [...text.matchAll(/^```(?:js|ts)\n([\s\S]*?)^```$/gm)].map(([, code], i) => ({
    path: `${file}, block ${i + 1}`,
    code,
  }));
}

/** The imports of a block, taken from the source instead of the built package. */
function withoutImports(code: string): string {
  return code.replace(/^import \{([^}]*)\} from '([^']*)';$/gm, (_, names: string, source: string) => {
    const from = source.startsWith('tintladder') ? 'api' : `node[${JSON.stringify(source)}]`;
    return `const {${names.replace(/ as /g, ': ')}} = ${from};`;
  });
}

const GUIDE = 'docs/guide';

const FILES = ['README.md', ...fs.readdirSync(GUIDE).map((name) => `${GUIDE}/${name}`)];

const blocks = FILES.flatMap(blocksIn);

test('there are blocks to run', () => expect(blocks.length).toBeGreaterThanOrEqual(2 + 5));

test.each(blocks)('$path prints what it says', async ({ code }) => {
  const printed: string[] = [];
  const console = { log: (...parts: unknown[]) => printed.push(parts.join(' ')) };
  const promised = [...code.matchAll(/\/\/ → (.*)$/gm)].map(([, text]) => text);
  await new AsyncFunction('api', 'node', 'console', withoutImports(code))(
    { ...publicApi, ...fits },
    { 'node:fs': fs },
    console,
  );
  expect(printed.join('\n').split('\n')).toEqual(promised);
});
