import { readdirSync, readFileSync } from 'node:fs';
import { basename, dirname, join, normalize } from 'node:path';
import { describe, expect, test } from 'vitest';

// Imports go one way (DEVELOPERS.md, Layout): a room uses only rooms that stand above it in this list, and only through their doors.
const ROOMS = [
  'core',
  'numeric',
  'decision',
  'evidence',
  'colorimetry',
  'kubelka-munk',
  'strength',
  'fits',
  'rubout',
  'exchange',
  'study',
  'production',
  'report',
  'cli',
];

/** What a file of another room may import: `index.ts` is public, `internal.ts` is for our own rooms. */
const DOORS = ['index.ts', 'internal.ts'];

// Packages that one room, or one file, has to itself.
const HOME_OF: Record<string, RegExp> = {
  mathjs: /^src\/fits\//,
  'colorjs.io': /^src\/colorimetry\/(srgb-swatch|colorjs\.d)\.ts$/,
  papaparse: /^src\/exchange\//,
  'fast-xml-parser': /^src\/exchange\//,
  yaml: /^src\/cli\//,
  zod: /^src\/study\//,
  'd3-scale': /^src\/report\//,
  'd3-shape': /^src\/report\//,
  commander: /^src\/cli\//,
};

const files = (readdirSync('src', { recursive: true }) as string[])
  .filter((name) => name.endsWith('.ts'))
  .map((name) => join('src', name));

const roomOf = (path: string) => (path.split('/').length > 2 ? path.split('/')[1] : '');

function importsOf(path: string): string[] {
  const source = readFileSync(path, 'utf8').replace(/\/\*[\s\S]*?\*\//g, '');
  const statements = /^(?:import|export)\b[^;]*?\bfrom '([^']+)'|^import '([^']+)'|\bimport\('([^']+)'\)/gm;
  return [...source.matchAll(statements)].map(([, from, bare, dynamic]) => from ?? bare ?? dynamic);
}

const localImports = (path: string) =>
  importsOf(path)
    .filter((name) => name.startsWith('.'))
    .map((name) => normalize(join(dirname(path), name)).replace(/\.js$/, '.ts'));

test('every folder of src is a room of the list', () => {
  const folders = readdirSync('src', { withFileTypes: true }).filter((entry) => entry.isDirectory());
  for (const { name } of folders) expect(ROOMS).toContain(name);
});

describe.each(files)('%s', (path) => {
  const room = roomOf(path);
  const others = localImports(path).filter((target) => roomOf(target) !== room);

  test('imports only from rooms above its own', () => {
    const above = room === '' ? ROOMS : ROOMS.slice(0, ROOMS.indexOf(room));
    for (const target of others) expect(above, target).toContain(roomOf(target));
  });

  test('enters other rooms by their doors', () => {
    for (const target of others) {
      expect(dirname(target), target).toBe(join('src', roomOf(target)));
      expect(DOORS, target).toContain(basename(target));
    }
  });

  test('keeps third-party packages in their rooms', () => {
    for (const name of importsOf(path).filter((name) => !name.startsWith('.') && !name.startsWith('node:'))) {
      const packageName = name.split('/')[0];
      expect(HOME_OF, name).toHaveProperty([packageName]);
      expect(path, name).toMatch(HOME_OF[packageName]);
    }
  });
});

/** Fails with the ring if following `next` from any start comes back. */
function expectNoRing(starts: readonly string[], next: (at: string) => Iterable<string>): void {
  const done = new Set<string>();
  const visit = (at: string, trail: readonly string[]): void => {
    expect(trail, [...trail, at].join(' -> ')).not.toContain(at);
    if (done.has(at)) return;
    for (const target of next(at)) visit(target, [...trail, at]);
    done.add(at);
  };
  for (const start of starts) visit(start, []);
}

test('no two files import each other, directly or in a ring', () => expectNoRing(files, localImports));

test('no two folders import each other, directly or in a ring', () => {
  const folders = new Map<string, Set<string>>();
  for (const path of files) {
    const from = dirname(path);
    const targets = localImports(path).map(dirname);
    const list = folders.get(from) ?? new Set();
    // A door lists what lies in the folders of its own room; that is no import in the sense of this test.
    const isDoor = DOORS.includes(basename(path));
    for (const to of targets) if (to !== from && !(isDoor && to.startsWith(`${from}/`))) list.add(to);
    folders.set(from, list);
  }
  expectNoRing([...folders.keys()], (at) => folders.get(at) ?? []);
});

test('only the root, /fits and the study (on demand) load the fits', () => {
  for (const path of files) {
    const loadsFits = localImports(path).some((target) => roomOf(target) === 'fits') && roomOf(path) !== 'fits';
    if (!loadsFits) continue;
    const source = readFileSync(path, 'utf8');
    for (const line of source.split('\n').filter((line) => /fits\/(index|internal)/.test(line))) {
      expect(line, path).toMatch(/import type|export type|=> import\(/);
    }
  }
});
