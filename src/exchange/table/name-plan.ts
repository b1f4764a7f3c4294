import { TintladderError } from '../../core/index.js';
import type { ReaderOptions } from '../measurement/format-contract.js';
import type { Notes } from '../text/notes.js';
import type { Heading } from './heading.js';
import { isOtherWord, normaliseHeading } from './sample-words.js';

/** The columns of names and replicates. */
export interface NamePlan {
  readonly name?: number;
  readonly replicate?: number;
}

/**
 * Finds the column of the samples' names: the caller's, the most telling heading, what the layout says, else the column of text that tells the most
 * rows apart, which is noted. Without any the readings take the name above the table, or their number.
 *
 * @throws TintladderError `invalid-option` for a column that the table does not have
 */
export function planNames(heading: Heading, options: ReaderOptions, notes: Notes, used: Set<number>): NamePlan {
  const { columns, placeOf, context } = heading;
  const replicate = columns.findIndex(({ role }) => role.kind === 'replicate');
  if (replicate >= 0) used.add(replicate);
  const name = options.names === undefined ? findName(heading, used, notes) : askedName(heading, options.names);
  if (name !== undefined) used.add(name);
  else if (context.name === undefined) {
    notes.add('names-numbered', 'The file names no samples; the readings are numbered in its order.', placeOf(0));
  }
  return { ...(name === undefined ? {} : { name }), ...(replicate >= 0 && replicate !== name ? { replicate } : {}) };
}

function askedName({ columns, placeOf }: Heading, asked: string): number {
  const plain = (text: string) => text.trim().toLowerCase();
  const index = columns.findIndex(({ label }) => plain(label) === plain(asked));
  if (index >= 0) return index;
  throw new TintladderError('invalid-option', {
    path: 'options.names',
    received: asked,
    expected: `a heading of the table at ${placeOf(0)}: ${columns
      .filter(({ role, label }) => role.kind !== 'wavelength' && label.trim() !== '')
      .map(({ label }) => label.trim())
      .slice(0, 12)
      .join(', ')}`,
  });
}

function findName({ columns, placeOf, rows, nameColumn, context }: Heading, used: ReadonlySet<number>, notes: Notes) {
  if (nameColumn !== undefined) return nameColumn;
  let best: { readonly index: number; readonly rank: number } | undefined;
  columns.forEach(({ role }, index) => {
    if (role.kind === 'name' && (best === undefined || role.rank < best.rank)) best = { index, rank: role.rank };
  });
  if (best) return best.index;
  if (context.name !== undefined) return undefined;
  let guess: { readonly index: number; readonly distinct: number } | undefined;
  columns.forEach(({ role, label }, index) => {
    if (used.has(index) || role.kind !== 'text' || isOtherWord(normaliseHeading(label))) return;
    const texts = rows.map((cells) => cells[index]?.trim() ?? '').filter((text) => /\p{L}/u.test(text));
    const distinct = new Set(texts).size;
    if (distinct > (guess?.distinct ?? 0)) guess = { index, distinct };
  });
  if (!guess) return undefined;
  const label = columns[guess.index].label.trim();
  if (label !== '') {
    const message = `No heading says which column names the samples; the column ${JSON.stringify(label)} was taken.`;
    notes.add('name-column-guessed', message, placeOf(guess.index), { column: label });
  }
  return guess.index;
}
