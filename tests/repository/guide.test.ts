import { existsSync, readdirSync, readFileSync } from 'node:fs';
import { dirname, join } from 'node:path';
import { describe, expect, test } from 'vitest';
import {
  CAUSE_STANDINGS,
  RUB_OUT_CAUSES,
  RUB_OUT_DIRECTIONS,
  RUB_OUT_THRESHOLDS,
  TINTS,
} from '../../src/rubout/index.js';
import { STRENGTH_CRITERIA } from '../../src/strength/index.js';
import { COMPUTED_QUANTITIES } from '../../src/study/index.js';

// What the guide promises to list in full is compared with the code, so that neither can change alone.

const page = (start: string) => {
  const name = readdirSync('docs/guide').find((file) => file.startsWith(start));
  return readFileSync(join('docs/guide', name ?? ''), 'utf8');
};
const inCode = (word: string) => new RegExp(`\`[^\`\n]*${word.replace(/[$]/g, '\\$&')}[^\`\n]*\``);

/** Names of all fields that a JSON Schema describes, at any depth. */
function fieldsOf(schema: unknown): string[] {
  if (typeof schema !== 'object' || schema === null) return [];
  const own =
    'properties' in schema && typeof schema.properties === 'object' ? Object.keys(schema.properties ?? {}) : [];
  return [...own, ...Object.values(schema).flatMap(fieldsOf)];
}

test.each(STRENGTH_CRITERIA)('page 1 explains the criterion %s', (criterion) => {
  expect(page('1')).toContain(`| \`${criterion}\` |`);
});

describe('page 3', () => {
  test.each([...RUB_OUT_CAUSES, ...CAUSE_STANDINGS])('explains %s', (name) => {
    expect(page('3')).toContain(`| \`${name}\` |`);
  });

  test.each([...RUB_OUT_DIRECTIONS, ...TINTS])('names %s', (name) => {
    expect(page('3')).toContain(`\`${name}\``);
  });

  test('states the lines that are drawn', () => {
    const { visible, unevenness, shadeShare } = RUB_OUT_THRESHOLDS;
    expect([visible, shadeShare]).toEqual([0.5, 0.5]);
    expect(page('3')).toContain(`ΔE\\*ab ${unevenness} (root mean square)`);
    expect(page('3')).toContain('at most half of the difference');
    expect(page('3')).toContain(`by ΔE00, from ${visible} upwards`);
  });
});

describe('page 5', () => {
  const fields = fieldsOf(JSON.parse(readFileSync('src/study/study.schema.json', 'utf8')));

  test.each([...new Set(fields)])('explains the field %s of a study', (field) => {
    expect(page('5')).toMatch(inCode(field));
  });

  test.each(Object.entries(COMPUTED_QUANTITIES))('lists the quantity %s with its unit', (quantity, { unit }) => {
    const written = unit === undefined ? '`dosageUnit`' : unit.replace('*', '\\*');
    expect(page('5')).toContain(`| \`${quantity}\` | ${written} |`);
  });
});

const pages = ['docs/README.md', ...readdirSync('docs/guide').map((name) => `docs/guide/${name}`)];

test('every link of the guide leads somewhere', () => {
  const links = pages.flatMap((file) =>
    [...readFileSync(file, 'utf8').matchAll(/\]\(([^)#]+)[^)]*\)/g)].map(([, target]) => join(dirname(file), target)),
  );
  expect(links.length).toBeGreaterThan(10);
  expect(links.filter((link) => !existsSync(link))).toEqual([]);
});
