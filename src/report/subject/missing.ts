import type { Cell, MissingFigure, PackageResult } from '../../study/index.js';

/** What a package lacks in the paints that it was read in; that it was not read in a paint is said by itself. */
export function missingWhereRead({ package: { id }, missing }: PackageResult, cells: readonly Cell[]): MissingFigure[] {
  return missing.filter(
    ({ paint }) => paint === undefined || cells.some((cell) => cell.package === id && cell.paint === paint),
  );
}
