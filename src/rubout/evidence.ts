import type { ColourDifference } from '../colorimetry/index.js';
import type { Interval, Outcome } from '../decision/index.js';
import { type ColorantChange, movementOf } from './colorant-changes.js';
import type { DifferenceInterval } from './difference-interval.js';
import type { Evidence } from './rub-out-result.js';
import type { RubOutStrengthChange } from './strength-change.js';

/** What the evidence is told from. */
export interface Findings {
  readonly difference: ColourDifference;
  readonly interval?: DifferenceInterval;
  readonly limit: number;
  readonly outcome: Outcome;
  readonly strengthChange?: RubOutStrengthChange;
  readonly scatter: { readonly unrubbed?: number; readonly rubbed?: number };
  readonly replicates: { readonly unrubbed: number; readonly rubbed: number };
  readonly colorantChanges: readonly ColorantChange[];
  readonly whiteChange?: Omit<ColorantChange, 'name'>;
  /** Why the decision table came out as it did. */
  readonly reason: string;
}

/** What the readings say, sentence by sentence, with the figures behind each. */
export function evidenceOf(findings: Findings): Evidence[] {
  return [
    differenceEvidence(findings),
    limitEvidence(findings),
    ...scatterEvidence(findings),
    ...strengthEvidence(findings),
    ...findings.colorantChanges.map((change) => movementEvidence(change, 'absorbs')),
    ...(findings.whiteChange ? [movementEvidence({ name: 'The white', ...findings.whiteChange }, 'scatters')] : []),
    { statement: findings.reason, figures: {} },
  ];
}

function differenceEvidence({ difference, interval }: Findings): Evidence {
  const { dEab, dE2000, dL, dC, dH } = difference;
  const range = interval ? `95 % interval ${between(interval.dEab, 2)}, ` : '';
  const parts = `ΔL* ${signed(dL)}, ΔC*ab ${signed(dC)}, ΔH*ab ${signed(dH)}`;
  return {
    statement: `The rubbed area differs from the unrubbed one by ΔE*ab ${dEab.toFixed(2)} (${range}ΔE00 ${dE2000.toFixed(2)}): ${parts}.`,
    figures: { dEab, dE2000, dL, dC, dH, ...(interval && { low: interval.dEab.low, high: interval.dEab.high }) },
  };
}

function limitEvidence({ difference, interval, limit, outcome }: Findings): Evidence {
  const bound = `the limit of ΔE*ab ${limit}`;
  const said = interval
    ? {
        meets: `The whole interval is within ${bound}.`,
        fails: `The whole interval is beyond ${bound}.`,
        undecided: `The interval holds ${bound}, so nothing is decided yet.`,
      }[outcome]
    : `One reading per side shows no scatter, so it is not decided whether the film meets ${bound}.`;
  return { statement: said, figures: { dEab: difference.dEab, limit } };
}

function scatterEvidence({ scatter, replicates }: Findings): Evidence[] {
  return (['unrubbed', 'rubbed'] as const).flatMap((name) => {
    const deviation = scatter[name];
    if (deviation === undefined) return [];
    const spots = replicates[name];
    const statement = `The ${spots} spots of the ${name} area lie ΔE*ab ${deviation.toFixed(2)} (root mean square) from their mean.`;
    return [{ statement, figures: { deviation, spots } }];
  });
}

function strengthEvidence({ strengthChange, difference: { dEab } }: Findings): Evidence[] {
  if (!strengthChange) return [];
  const { changePercent, interval, approximate, at, residualDEab } = strengthChange;
  const range = interval ? ` (95 % interval ${between(interval, 1)} %)` : '';
  const where = approximate ? `in ${at}, from Lab values and so approximately` : `at the absorption maximum, ${at}`;
  const size = `${Math.abs(changePercent).toFixed(1)} %${range} ${changePercent < 0 ? 'weaker' : 'stronger'}`;
  const share = dEab > 0 ? residualDEab / dEab : 0;
  const open = interval && interval.low <= 0 && interval.high >= 0 ? ', which is no proven change' : '';
  return [
    {
      statement: `The rubbed area is ${size} ${where}${open}.`,
      figures: { changePercent, ...(interval && { low: interval.low, high: interval.high }) },
    },
    {
      statement: `Brought to equal strength, ΔE*ab ${residualDEab.toFixed(2)} of ${dEab.toFixed(2)} would be left.`,
      figures: { residualDEab, dEab, share },
    },
  ];
}

function movementEvidence(change: ColorantChange, does: 'absorbs' | 'scatters'): Evidence {
  const { name, relative, interval } = change;
  const percent = (value: number) => value * 100;
  const range = interval
    ? ` (95 % interval ${between({ low: percent(interval.low), high: percent(interval.high) }, 1)} %)`
    : '';
  const size = `${Math.abs(percent(relative)).toFixed(1)} % ${relative < 0 ? 'less' : 'more'}`;
  const proven = movementOf(change) === 'unmoved' ? ', which is no proven change' : '';
  return {
    statement: `${name} ${does} ${size} in the rubbed area${range}${proven}.`,
    figures: { relative, ...(interval && { low: interval.low, high: interval.high }) },
  };
}

function between({ low, high }: Interval, digits: number): string {
  return `${minus(low.toFixed(digits))} to ${minus(high.toFixed(digits))}`;
}

function signed(value: number): string {
  const text = value.toFixed(2);
  return Number(text) === 0 ? '0.00' : value > 0 ? `+${text}` : minus(text);
}

/** A true minus, and none before a zero. */
function minus(text: string): string {
  return Number(text) === 0 ? text.replace('-', '') : text.replace('-', '−');
}
