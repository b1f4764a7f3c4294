import { isWhole, parseStatement } from '../conditions/statement.js';
import { columnRole } from '../table/column-role.js';
import type { LooseRow } from './loose-rows.js';

/**
 * A heading in two rows, of which the upper one states the conditions of the columns below, each up to the next statement: `;D65/10;;;A/10;;` above
 * `Name;L*;a*;b*;L*;a*;b*`. Gives the headings with their statements, or `undefined` where the row above says anything else.
 */
export function withUpperHeading(
  cells: readonly string[],
  above: LooseRow | undefined,
  line: number,
): string[] | undefined {
  if (!above || above.line !== line - 1 || above.cells.length > cells.length) return undefined;
  const filled = above.cells.filter((cell) => cell.trim() !== '');
  if (filled.length === 0 || !filled.every((cell) => isWhole(parseStatement(cell)))) return undefined;
  const first = above.cells.findIndex((cell) => cell.trim() !== '');
  // a statement in the first column is one of the whole table
  if (first === 0) return undefined;
  let stated = '';
  return cells.map((cell, i) => {
    stated = above.cells[i]?.trim() || stated;
    const { kind } = columnRole(cell);
    return stated !== '' && (kind === 'coordinate' || kind === 'wavelength') ? `${cell} (${stated})` : cell;
  });
}
