import { join } from 'node:path';
import ts from 'typescript';
import { expect, test } from 'vitest';
import { blocksIn, PAGES } from './documented-code.js';

// Every block of the README and the guide compiles as it stands, under the options that users have: strict, exact optional properties,
// with the DOM in scope, and imports by the names of the subpaths.

const OPTIONS: ts.CompilerOptions = {
  strict: true,
  exactOptionalPropertyTypes: true,
  noEmit: true,
  skipLibCheck: true,
  target: ts.ScriptTarget.ES2022,
  module: ts.ModuleKind.NodeNext,
  moduleResolution: ts.ModuleResolutionKind.NodeNext,
  lib: ['lib.es2022.d.ts', 'lib.dom.d.ts', 'lib.dom.iterable.d.ts'],
  types: ['node'],
  paths: { tintladder: [join(process.cwd(), 'src/index.ts')], 'tintladder/*': [join(process.cwd(), 'src/*/index.ts')] },
};

const blocks = PAGES.flatMap(blocksIn);
/** As if the blocks lay in files of the project; each is a module of its own. */
const sources = new Map(blocks.map(({ code }, i) => [join(process.cwd(), `documented-block-${i}.mts`), code]));

function complaints(): Map<string, string[]> {
  const host = ts.createCompilerHost(OPTIONS);
  const { getSourceFile, fileExists, readFile } = host;
  host.fileExists = (name) => sources.has(name) || fileExists(name);
  host.readFile = (name) => sources.get(name) ?? readFile(name);
  host.getSourceFile = (name, options) => {
    const code = sources.get(name);
    return code === undefined ? getSourceFile(name, options) : ts.createSourceFile(name, code, options);
  };
  const program = ts.createProgram([...sources.keys()], OPTIONS, host);
  const found = new Map<string, string[]>();
  for (const name of sources.keys()) {
    const file = program.getSourceFile(name);
    const diagnostics = file ? [...program.getSyntacticDiagnostics(file), ...program.getSemanticDiagnostics(file)] : [];
    found.set(
      name,
      diagnostics.map(({ messageText, start = 0 }) => {
        const line = file ? file.getLineAndCharacterOfPosition(start).line + 1 : 0;
        return `line ${line}: ${ts.flattenDiagnosticMessageText(messageText, ' ')}`;
      }),
    );
  }
  return found;
}

const found = complaints();

test('there are blocks to compile', () => expect(blocks.length).toBeGreaterThan(5));

test.each([...sources.keys()].map((name, i) => [blocks[i].path, name] as const))('%s compiles', (_, name) => {
  expect(found.get(name)).toEqual([]);
});
