import { readFileSync, writeFileSync } from 'node:fs';
import { expect, test } from 'vitest';

// What each subpath exports at run time. A name that comes or goes is a decision: change the list in the same commit, and the changelog.
// To write the list anew: UPDATE_EXPORTS=1 npx vitest run tests/repository/exports.test.ts

const ROOMS = {
  colorimetry: '../../src/colorimetry/index.js',
  strength: '../../src/strength/index.js',
  fits: '../../src/fits/index.js',
  evidence: '../../src/evidence/index.js',
  rubout: '../../src/rubout/index.js',
  exchange: '../../src/exchange/index.js',
  study: '../../src/study/index.js',
  production: '../../src/production/index.js',
  report: '../../src/report/index.js',
};

const LIST = 'tests/repository/exports.json';

async function namesByRoom(): Promise<Record<string, string[]>> {
  const entries = Object.entries(ROOMS).map(async ([room, path]) => [room, Object.keys(await import(path)).sort()]);
  return Object.fromEntries(await Promise.all(entries));
}

test('every subpath exports what the list says and nothing else', async () => {
  const names = await namesByRoom();
  if (process.env.UPDATE_EXPORTS) writeFileSync(LIST, `${JSON.stringify(names, null, 2)}\n`);
  expect(names).toEqual(JSON.parse(readFileSync(LIST, 'utf8')));
});

test('the root exports every room but the fits', async () => {
  const { fits: _, ...rooms } = await namesByRoom();
  const expected = [...new Set(Object.values(rooms).flat())].sort();
  expect(Object.keys(await import('../../src/index.js')).sort()).toEqual(expected);
});

test('package.json has a subpath for every room, with types', () => {
  const { exports } = JSON.parse(readFileSync('package.json', 'utf8'));
  for (const room of Object.keys(ROOMS)) {
    expect(exports[`./${room}`]).toEqual({ types: `./dist/${room}.d.ts`, default: `./dist/${room}.js` });
  }
});
