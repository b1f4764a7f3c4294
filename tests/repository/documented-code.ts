import { existsSync, readdirSync, readFileSync } from 'node:fs';

/** A block of code in a page, as it stands. */
export interface Block {
  readonly path: string;
  readonly code: string;
}

/** Pages whose code is run and compiled: the README and everything in the guide. */
export const PAGES = ['README.md', ...pagesIn('docs'), ...pagesIn('docs/guide')];

function pagesIn(folder: string): string[] {
  if (!existsSync(folder)) return [];
  return readdirSync(folder)
    .filter((name) => name.endsWith('.md'))
    .map((name) => `${folder}/${name}`);
}

/** The blocks of JavaScript and TypeScript of a page. */
export function blocksIn(page: string): Block[] {
  const text = readFileSync(page, 'utf8');
  return [...text.matchAll(/^```(?:js|ts)\n([\s\S]*?)^```$/gm)].map(([, code], i) => ({
    path: `${page}, block ${i + 1}`,
    code,
  }));
}
