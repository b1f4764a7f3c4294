import { readdirSync, statSync } from 'node:fs';
import { basename, dirname, join } from 'node:path';
import { CommandProblem, onFile } from './command-problem.js';
import { EXIT } from './exit-codes.js';

/** Standard input, as the command line names it. */
export const STANDARD_INPUT = '-';

/**
 * The files that a path of the command line or a study stands for: itself, every file of a folder, or the files that match a pattern with
 * `*` or `?` in its last part. Files come in the order of their names, hidden ones are left out.
 *
 * @throws CommandProblem for a path that isn't there, a folder without files, a pattern that matches none, or a pipe
 */
export function exportPaths(path: string): readonly string[] {
  if (path === STANDARD_INPUT) return [path];
  if (/[*?]/.test(basename(path))) return matching(dirname(path), basename(path));
  const status = onFile('read', path, () => statSync(path));
  if (status.isDirectory()) return matching(path, '*');
  if (!status.isFile()) {
    const mend = `Read from it with "tintladder inspect ${STANDARD_INPUT} < ${path}".`;
    throw new CommandProblem(`${path} can't be read: it is a pipe or a device and no file. ${mend}`, EXIT.noInput);
  }
  return [path];
}

function matching(folder: string, pattern: string): readonly string[] {
  const parts = pattern.split(/([*?])/).map((part) => {
    if (part === '*') return '.*';
    return part === '?' ? '.' : part.replace(/[\\^$.|+()[\]{}]/g, '\\$&');
  });
  const expression = new RegExp(`^${parts.join('')}$`);
  const names = onFile('read', folder, () => readdirSync(folder, { withFileTypes: true }))
    .filter((entry) => entry.isFile() && !entry.name.startsWith('.') && expression.test(entry.name))
    .map(({ name }) => join(folder, name))
    .sort();
  if (names.length > 0) return names;
  throw new CommandProblem(`${join(folder, pattern)} can't be read: no file matches.`, EXIT.noInput);
}
