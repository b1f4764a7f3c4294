import type { ColourDifference } from '../colorimetry/index.js';
import { formatSigned } from '../core/internal.js';
import type { Outcome } from '../decision/index.js';
import { type ColorantChange, movementOf } from './colorant-changes.js';
import type { DifferenceInterval } from './difference-interval.js';
import { isPossible, type WeighedCause } from './rub-out-cause.js';
import type { Evidence, RubOutDirection, RubOutFinding, RubOutMeasure } from './rub-out-result.js';
import type { RubOutStrengthChange } from './strength-change.js';
import type { RubOutThresholds } from './thresholds.js';
import type { Evenness } from './unevenness.js';

/** What the evidence is told from. */
export interface Findings {
  readonly difference: ColourDifference;
  readonly interval?: DifferenceInterval | undefined;
  readonly limit: number;
  readonly measure: RubOutMeasure;
  readonly outcome: Outcome;
  readonly finding: RubOutFinding;
  readonly visible: boolean;
  readonly direction?: RubOutDirection | undefined;
  readonly strengthChange?: RubOutStrengthChange | undefined;
  readonly evenness: { readonly unrubbed: Evenness; readonly rubbed: Evenness };
  /** Number of pairs of areas. */
  readonly drawdowns: number;
  readonly colorantChanges: readonly ColorantChange[];
  readonly causes: readonly WeighedCause[];
  readonly thresholds: RubOutThresholds;
}

/** What the readings say, sentence by sentence, with the figures behind each. */
export function evidenceOf(findings: Findings): Evidence[] {
  return [
    differenceEvidence(findings),
    limitEvidence(findings),
    findingEvidence(findings),
    ...evennessEvidence(findings),
    ...strengthEvidence(findings),
    ...findings.colorantChanges.map(movementEvidence),
    ...causeEvidence(findings),
  ];
}

const MEASURES: Readonly<Record<RubOutMeasure, string>> = { dEab: 'ΔE*ab', dE2000: 'ΔE00' };

function differenceEvidence({ difference, interval, drawdowns }: Findings): Evidence {
  const { dEab, dE2000, dL, dC, dH } = difference;
  const range = interval ? `95 % interval ${between(interval.dEab, 2)}, ` : '';
  const parts = `ΔL* ${formatSigned(dL, 2)}, ΔC*ab ${formatSigned(dC, 2)}, ΔH*ab ${formatSigned(dH, 2)}`;
  const over = drawdowns > 1 ? ` over ${drawdowns} drawdowns` : '';
  return {
    statement: `The rubbed area differs from the unrubbed one by ΔE*ab ${dEab.toFixed(2)} (${range}ΔE00 ${dE2000.toFixed(2)})${over}: ${parts}.`,
    figures: { dEab, dE2000, dL, dC, dH, ...(interval && { low: interval.dEab.low, high: interval.dEab.high }) },
  };
}

function limitEvidence({ difference, interval, limit, measure, outcome }: Findings): Evidence {
  const bound = `the limit of ${MEASURES[measure]} ${limit}`;
  const said = interval
    ? {
        meets: `The whole interval is within ${bound}.`,
        fails: `The whole interval is beyond ${bound}.`,
        undecided: `The interval holds ${bound}, so nothing is decided yet.`,
      }[outcome]
    : `One reading per side shows no scatter, so it is not decided whether the film meets ${bound}.`;
  return { statement: said, figures: { [measure]: difference[measure], limit } };
}

function findingEvidence({ finding, visible, direction, difference: { dE2000 }, thresholds }: Findings): Evidence {
  const figures = { dE2000, visible: thresholds.visible };
  if (finding === 'none-visible') return { statement: 'No visible difference is left within the interval.', figures };
  if (finding === 'open') {
    return { statement: 'A difference is neither shown nor excluded by these readings.', figures };
  }
  const seen = visible ? 'visible' : 'perhaps too small to be seen';
  const way =
    direction === undefined
      ? 'without a direction that K/S would show'
      : `${DIRECTION_PHRASES[direction.towards]}, which is ${direction.certainty}`;
  return { statement: `The difference is proven and ${seen}; rubbing led ${way}.`, figures };
}

const DIRECTION_PHRASES: Readonly<Record<RubOutDirection['towards'], string>> = {
  'more-colour': 'to more colour',
  'more-white': 'to more white',
  'another-shade': 'to another shade',
};

function evennessEvidence({ evenness }: Findings): Evidence[] {
  return (['unrubbed', 'rubbed'] as const).flatMap((name) => {
    const { deviation, spots } = evenness[name];
    if (deviation === undefined) return [];
    const statement = `The ${spots} spots of the ${name} area lie ΔE*ab ${deviation.toFixed(2)} (root mean square) from the mean of their film.`;
    return [{ statement, figures: { deviation, spots } }];
  });
}

function strengthEvidence({ strengthChange, difference: { dEab } }: Findings): Evidence[] {
  if (!strengthChange) return [];
  const { changePercent, interval, approximate, residualDEab } = strengthChange;
  const range = interval
    ? ` (95 % interval ${formatSigned(interval.low, 1)} to ${formatSigned(interval.high, 1)} %)`
    : '';
  const where = approximate ? 'from Lab values and so approximately' : 'by least squares over the spectrum';
  const open = interval && interval.low <= 0 && interval.high >= 0 ? ', which is no proven change' : '';
  const share = dEab > 0 ? residualDEab / dEab : 0;
  return [
    {
      statement: `Rubbing changed the strength by ${formatSigned(changePercent, 1)} %${range}, ${where}${open}.`,
      figures: { changePercent, ...(interval && { low: interval.low, high: interval.high }) },
    },
    {
      statement: `Brought to equal strength, ΔE*ab ${residualDEab.toFixed(2)} of ${dEab.toFixed(2)} would be left.`,
      figures: { residualDEab, dEab, share },
    },
  ];
}

function movementEvidence(change: ColorantChange): Evidence {
  const { name, relative, interval } = change;
  const range = interval
    ? ` (95 % interval ${formatSigned(100 * interval.low, 1)} to ${formatSigned(100 * interval.high, 1)} %)`
    : '';
  const open = movementOf(change) === 'unmoved' ? ', which is no proven change' : '';
  return {
    statement: `Absorption of ${name} in the rubbed area: ${formatSigned(100 * relative, 1)} %${range}${open}.`,
    figures: { relative, ...(interval && { low: interval.low, high: interval.high }) },
  };
}

function causeEvidence({ causes }: Findings): Evidence[] {
  if (causes.length === 0) return [];
  const possible = causes.filter(isPossible).length;
  const excluded = causes.filter(({ standing }) => standing === 'ruled-out').length;
  const open = causes.length - possible - excluded;
  const figures = { possible, excluded, open };
  const statement =
    possible === 0
      ? 'None of the causes that were weighed accounts for the change by itself.'
      : `Of ${causes.length} causes ${possible} fit the readings, ${excluded} are ruled out and ${open} could not be weighed.`;
  return [{ statement, figures }];
}

function between({ low, high }: { readonly low: number; readonly high: number }, digits: number): string {
  return `${low.toFixed(digits)} to ${high.toFixed(digits)}`;
}
