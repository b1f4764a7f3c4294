import { formatList } from '../../core/internal.js';
import type { Outcome } from '../../decision/index.js';
import type { Estimate } from '../../decision/internal.js';
import type { RubOutResult } from '../../rubout/index.js';
import type { Cell, Figure, StudyResult } from '../../study/index.js';
import { CERTAINTY_WORDS, DIAGNOSIS_WORDS } from '../words/words.js';
import { namesOf } from './names.js';

/** One package in one paint, as every form of the report shows it. */
export interface ComparisonRow {
  readonly cell: Cell;
  readonly package: string;
  readonly paint: string;
  readonly isReference: boolean;
  /** %; absent for the reference, which is 100 by definition. */
  readonly strength?: Estimate;
  /** ΔE00 at equal strength. */
  readonly residual?: number;
  /** ΔE*ab. */
  readonly rubOut?: Estimate;
  /** What the rub-out shows, in words. */
  readonly diagnosis?: string;
  /** How sure the diagnosis is, in words; absent where nothing was found and that is proven. */
  readonly certainty?: string;
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
      diagnosis: rubOut && diagnosisOf(rubOut),
      certainty: rubOut && certaintyOf(rubOut),
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

/** A diagnosis in words; where several causes leave the same readings, each of them. */
export function diagnosisOf({ diagnosis, causes }: RubOutResult): string {
  const named = causes.map(({ cause }) => DIAGNOSIS_WORDS[cause]);
  return named.length > 1 ? formatList(named, 'or') : DIAGNOSIS_WORDS[diagnosis];
}

/** How sure a diagnosis is; a proven "no finding" needs no word. */
function certaintyOf({ diagnosis, certainty }: RubOutResult): string | undefined {
  return diagnosis === 'none' && certainty === 'proven' ? undefined : CERTAINTY_WORDS[certainty];
}
