import { formatList } from '../../core/internal.js';
import type { Outcome } from '../../decision/index.js';
import type { Estimate } from '../../decision/internal.js';
import type { RubOutResult } from '../../rubout/index.js';
import type { Cell, Figure, StudyResult } from '../../study/index.js';
import { RUB_OUT_CAUSE_WORDS, RUB_OUT_DIRECTION_WORDS, RUB_OUT_FINDING_WORDS } from '../words/words.js';
import { namesOf } from './names.js';

/** One package in one paint, as every form of the report shows it. */
export interface ComparisonRow {
  readonly cell: Cell;
  readonly package: string;
  readonly paint: string;
  readonly isReference: boolean;
  /** %; absent for the reference, which is 100 by definition. */
  readonly strength?: Estimate | undefined;
  /** ΔE00 at equal strength. */
  readonly residual?: number | undefined;
  /** ΔE*ab. */
  readonly rubOut?: Estimate | undefined;
  /** What the rub-out shows, in words. */
  readonly shown?: string | undefined;
  /** Causes of the rub-out that are still in question, in words. */
  readonly causes?: string | undefined;
  readonly outcome: Outcome;
  /** Every other figure of the cell: storage, curves, supplied. */
  readonly further: readonly Figure[];
}

const OWN_COLUMNS: ReadonlySet<string> = new Set(['strength', 'residual', 'rub-out']);

/** The rows of the comparison, paint by paint, packages in the order of the study. */
export function comparisonRows(result: StudyResult): ComparisonRow[] {
  const names = namesOf(result);
  const rows = result.cells.map((cell): ComparisonRow => {
    const { strength, rubOut } = cell;
    return {
      cell,
      package: names.package(cell.package),
      paint: names.paint(cell.paint),
      isReference: cell.package === result.reference,
      strength: strength && { value: strength.percent, interval: strength.interval },
      residual: strength?.residual.dE2000,
      rubOut: rubOut && rubOutEstimate(rubOut),
      shown: rubOut && rubOutWords(rubOut),
      causes: rubOut && causeWords(rubOut),
      outcome: cell.outcome,
      further: cell.figures.filter(({ quantity }) => !OWN_COLUMNS.has(quantity)),
    };
  });
  const order = new Map(result.paints.map(({ id }, i) => [id, i]));
  const path = ({ cell }: ComparisonRow) => order.get(cell.paint) ?? order.size;
  return rows.sort((a, b) => path(a) - path(b));
}

/** The size of a rub-out with its interval. */
export function rubOutEstimate({ difference, interval }: RubOutResult): Estimate {
  return { value: difference.dEab, interval: interval?.dEab };
}

/** What a rub-out shows, in words: its direction and how sure that is, or that there is none. */
export function rubOutWords({ direction, finding }: RubOutResult): string {
  return direction
    ? `${RUB_OUT_DIRECTION_WORDS[direction.towards]}, ${direction.certainty}`
    : RUB_OUT_FINDING_WORDS[finding];
}

/** The causes that are still in question, in words; absent where there is none. */
export function causeWords({ causes }: RubOutResult): string | undefined {
  const possible = causes.filter(({ standing }) => standing === 'fits' || standing === 'fits-alone');
  if (possible.length === 0) return undefined;
  return formatList(
    possible.map(({ cause }) => RUB_OUT_CAUSE_WORDS[cause]),
    'or',
  );
}
