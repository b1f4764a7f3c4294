import type { Conditions, Viewing } from '../../colorimetry/index.js';
import { nearest, readValue } from '../conditions/read-condition.js';
import { mergeParts, NOTHING_STATED, type StatedParts, toConditions, viewingOf } from '../conditions/stated-parts.js';
import { parseStatement } from '../conditions/statement.js';
import { parseQuantity, type StatedQuantity } from '../quantity/quantity-text.js';
import type { FileContext } from './file-context.js';
import type { TablePlan } from './table-plan.js';

/** The conditions of one row, for each spectrum and each colour of its table. */
export interface RowConditions {
  readonly spectra: readonly Conditions[];
  readonly colours: readonly (Viewing | undefined)[];
  /** Specular mode of each spectrum and colour, to put together what belongs together. */
  readonly spectrumModes: readonly StatedParts['specular'][];
  readonly colourModes: readonly StatedParts['specular'][];
  /** Conditions of a reading of each colour alone. */
  readonly alone: readonly Conditions[];
  /** What the row says that its values are. */
  readonly quantity?: StatedQuantity;
}

/** Different texts of a table's condition cells that are kept. */
const MOST_KEPT = 1000;

/**
 * Reads the conditions of rows: of the heading of each column, of the row's own cells, and of what stands above the table, the nearest first. Rows
 * whose cells say the same share one result.
 */
export function createRowConditions(plan: TablePlan, file: FileContext) {
  const { conditionColumns, kindColumns } = plan;
  const kept = new Map<string, RowConditions>();
  let only: RowConditions | undefined;
  const indices = [...conditionColumns.map(({ index }) => index), ...kindColumns];
  return (cells: readonly string[], placeOf: (index: number) => string): RowConditions => {
    if (indices.length === 0) {
      only ??= readRow(plan, cells, placeOf, file);
      return only;
    }
    let key = '';
    for (const index of indices) key += `${cells[index]}\n`;
    const known = kept.get(key);
    if (known) return known;
    if (kept.size > MOST_KEPT) kept.clear();
    const made = readRow(plan, cells, placeOf, file);
    kept.set(key, made);
    return made;
  };
}

function readRow(
  plan: TablePlan,
  cells: readonly string[],
  placeOf: (index: number) => string,
  { notes }: FileContext,
): RowConditions {
  let own: StatedParts = NOTHING_STATED;
  let quantity: StatedQuantity | undefined;
  for (const { index, about } of plan.conditionColumns) {
    const { parts } = readValue(about, cells[index], () => placeOf(index), notes);
    own = mergeParts(own, parts);
  }
  for (const index of plan.kindColumns) {
    const { parts, rest } = parseStatement(cells[index]);
    if (rest.length === 0 && parts.specular) own = mergeParts(own, { specular: parts.specular });
    // a single letter may be anybody's name for a type
    if (cells[index].trim().length < 2) continue;
    const stated = parseQuantity(cells[index]);
    if (stated.quantity !== undefined && (stated.rest === '' || /^(?:values?|data|spectrum)$/i.test(stated.rest)))
      quantity = stated;
  }
  const place = () => placeOf(plan.conditionColumns[0]?.index ?? 0);
  const row = nearest(own, plan.stated, place, notes);
  const spectra = plan.spectra.map(({ stated, columns }) => nearest(stated, row, () => placeOf(columns[0]), notes));
  const colours = plan.colours.map(({ stated, indices }) => nearest(stated, row, () => placeOf(indices[0]), notes));
  return {
    spectra: spectra.map(toConditions),
    colours: colours.map(viewingOf),
    spectrumModes: spectra.map(({ specular }) => specular),
    colourModes: colours.map(({ specular }) => specular),
    alone: colours.map(toConditions),
    ...(quantity ? { quantity } : {}),
  };
}
