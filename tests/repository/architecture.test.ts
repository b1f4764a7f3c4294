import { readdirSync, readFileSync } from 'node:fs';
import { dirname, join, normalize } from 'node:path';
import { expect, test } from 'vitest';

// Data flows one way, and imports follow it (DEVELOPERS.md, Layout).
const MAY_IMPORT: Record<string, readonly string[]> = {
  colorimetry: [],
  strength: ['colorimetry'],
  fits: ['strength', 'colorimetry'],
  rubout: ['strength', 'colorimetry'],
  exchange: ['colorimetry'],
  study: ['colorimetry', 'strength', 'fits', 'rubout', 'exchange'],
  report: ['study', 'exchange', 'rubout', 'strength', 'fits', 'colorimetry'],
};

// Packages that one room, or one file, has to itself.
const HOME_OF: Record<string, RegExp> = {
  mathjs: /^src\/strength\/fits\//,
  'colorjs.io': /^src\/colorimetry\/(srgb-swatch|colorjs\.d)\.ts$/,
  papaparse: /^src\/exchange\//,
  'fast-xml-parser': /^src\/exchange\//,
  yaml: /^src\/(study\/|cli\.ts)/,
  zod: /^src\/study\//,
  'd3-scale': /^src\/report\//,
  'd3-shape': /^src\/report\//,
  commander: /^src\/cli\.ts$/,
};

const files = (readdirSync('src', { recursive: true }) as string[])
  .filter((name) => name.endsWith('.ts'))
  .map((name) => join('src', name));

function roomOf(path: string): string {
  if (path.startsWith('src/strength/fits/')) return 'fits';
  return path.split('/').length > 2 ? path.split('/')[1] : '';
}

function importsOf(path: string): string[] {
  const source = readFileSync(path, 'utf8').replace(/\/\*[\s\S]*?\*\//g, '');
  const statements = /^(?:import|export)\b[^;]*?\bfrom '([^']+)'|^import '([^']+)'|\bimport\('([^']+)'\)/gm;
  return [...source.matchAll(statements)].map(([, from, bare, dynamic]) => from ?? bare ?? dynamic);
}

function localImports(path: string): string[] {
  return importsOf(path)
    .filter((name) => name.startsWith('.'))
    .map((name) => normalize(join(dirname(path), name)).replace(/\.js$/, '.ts'));
}

test.each(files)('%s imports only what its room may', (path) => {
  const room = roomOf(path);
  if (room === '') return;
  for (const target of localImports(path)) {
    const targetRoom = roomOf(target);
    if (targetRoom !== '' && targetRoom !== room) expect([room, ...MAY_IMPORT[room]]).toContain(targetRoom);
  }
});

test.each(files)('%s keeps third-party packages in their rooms', (path) => {
  for (const name of importsOf(path).filter((name) => !name.startsWith('.') && !name.startsWith('node:'))) {
    const packageName = name.split('/')[0];
    expect(HOME_OF, name).toHaveProperty([packageName]);
    expect(path, name).toMatch(HOME_OF[packageName]);
  }
});

test('no two files import each other, directly or in a ring', () => {
  const done = new Set<string>();
  const visit = (path: string, trail: readonly string[]): void => {
    expect(trail, `${[...trail, path].join(' -> ')}`).not.toContain(path);
    if (done.has(path)) return;
    for (const target of localImports(path)) visit(target, [...trail, path]);
    done.add(path);
  };
  for (const path of files) visit(path, []);
});

test('only the root, /fits and the study (on demand) load the fits', () => {
  for (const path of files) {
    const loadsFits = localImports(path).some((target) => roomOf(target) === 'fits') && roomOf(path) !== 'fits';
    if (loadsFits) {
      const source = readFileSync(path, 'utf8');
      for (const line of source.split('\n').filter((line) => /fits\//.test(line))) {
        expect(line, path).toMatch(/import type|export type|=> import\(/);
      }
    }
  }
});
