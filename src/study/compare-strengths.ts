import { TintladderError, type Warning } from '../core/index.js';
import type { Interval } from '../decision/index.js';
import {
  type CompareSidesOptions,
  compareSides,
  type Finding,
  type GroupComparisons,
  mapRepeated,
  type Precision,
  type Repeated,
  repetitionOf,
  type SideComparison,
  type SideGroup,
} from '../evidence/index.js';
import type { Measurement } from '../exchange/index.js';
import { claimStatement } from './claim-words.js';
import { meanOfUnits } from './nest-assigned.js';
import type { StrengthBasis } from './strength-basis.js';
import type { ComparisonFinding, PaintEvidence, StrengthComparison } from './strength-evidence.js';
import type { Study } from './study.js';

/** The readings of one paint from which strengths are compared. */
export interface PaintReadings {
  readonly paint: string;
  /** By the id of their package. */
  readonly sides: ReadonlyMap<string, Repeated<Measurement>>;
  /** Id of the side that counts as 100 %. */
  readonly reference: string;
  readonly white: Repeated<Measurement> | undefined;
}

/** What the readings of a study can carry, paint by paint, and the rate that they share. */
export interface ComparedStrengths {
  readonly rate: number;
  readonly paints: readonly PaintEvidence[];
}

/**
 * Compares the strengths of all packages in all paints at one error rate, from what was made anew.
 *
 * One logarithm of strength for each reading, against the mean of the reference; everything else is that of `compareSides`. The figure itself
 * stays that of the mean colours, unless days or sessions were taken out.
 *
 * @param nameOf - how sentences call a package
 */
export function compareStrengths<Colour>(
  study: Study,
  paints: readonly PaintReadings[],
  basis: StrengthBasis<Colour>,
  nameOf: (id: string) => string,
): ComparedStrengths {
  const prepared = paints.map((paint) => preparePaint(paint, basis));
  const compared = compareSides(
    prepared.map(({ group }) => group),
    optionsOf(study),
  );
  return {
    rate: compared.rate,
    paints: prepared.map((paint, i) => evidenceOf(paint, compared.groups[i], study, nameOf)),
  };
}

/** Options in natural logarithms, on which strengths scatter evenly. */
function optionsOf({ claim, precision, rankBy }: Study): CompareSidesOptions {
  const history = precision?.strength;
  return {
    ...(claim !== undefined && { claim }),
    ...(history && { precision: inLogarithms(history) }),
    best: rankBy.quantity === 'strength' ? rankBy.best : 'highest',
  };
}

function inLogarithms({ grind, weighing, drawdown, spot, degreesOfFreedom, source }: Precision): Precision {
  const part = (percent: number | undefined) => (percent === undefined ? undefined : percent / 100);
  return {
    grind: part(grind),
    weighing: part(weighing),
    drawdown: part(drawdown),
    spot: part(spot),
    degreesOfFreedom,
    source,
  };
}

interface PreparedPaint {
  readonly paint: PaintReadings;
  readonly group: SideGroup;
  /** Strength of the mean of each side, %; without those of which a reading has none. */
  readonly percents: ReadonlyMap<string, number>;
  readonly warnings: readonly Warning[];
}

function preparePaint<Colour>(paint: PaintReadings, basis: StrengthBasis<Colour>): PreparedPaint {
  const { colourOf, percents: percentsAgainst } = basis;
  const meanWhite = paint.white && meanOfUnits(paint.white, basis);
  const means = new Map([...paint.sides].map(([id, nest]) => [id, meanOfUnits(nest, basis)]));
  const reference = means.get(paint.reference);
  const percents = new Map<string, number>();
  const logs = new Map<string, Repeated<number>>();
  const warnings: Warning[] = [];
  for (const [id, nest] of paint.sides) {
    const own = means.get(id);
    if (reference === undefined || own === undefined) continue;
    try {
      const percentOf = percentsAgainst(reference, meanWhite);
      const side = mapRepeated(nest, (one) => Math.log(percentOf(colourOf(one)) / 100));
      percents.set(id, id === paint.reference ? 100 : percentOf(own));
      logs.set(id, side);
    } catch (error) {
      if (!(error instanceof TintladderError)) throw error;
      const message = `There is no interval, since one of the readings alone has no strength: ${error.message}`;
      warnings.push({ code: 'no-interval', message, path: `${id} in ${paint.paint}` });
    }
  }
  const trials = [...logs.keys()].filter((id) => id !== paint.reference);
  const shared =
    paint.white &&
    mapRepeated(paint.white, (one) => {
      if (reference === undefined || trials.length === 0) return {};
      const percentOf = percentsAgainst(reference, colourOf(one));
      return Object.fromEntries(
        trials.flatMap((id) => {
          const own = means.get(id);
          return own ? [[id, Math.log(percentOf(own) / 100)]] : [];
        }),
      );
    });
  const sides = Object.fromEntries(logs.size > 0 ? logs : [[paint.reference, 0]]);
  const group = { name: paint.paint, sides, reference: paint.reference, ...(shared && { white: shared }) };
  return { paint, group, percents, warnings };
}

function evidenceOf(
  { paint, percents, warnings }: PreparedPaint,
  found: GroupComparisons,
  study: Study,
  nameOf: (id: string) => string,
): PaintEvidence {
  const blocked = found.scatter.some(({ blocks }) => blocks > 0);
  const repetitions = Object.fromEntries([...paint.sides].map(([id, nest]) => [id, repetitionOf(nest)]));
  // Blocks move the means: then the figure is theirs. Otherwise it is that of the mean colours.
  const ratioOf = (trial: string, reference: string, difference: number) => {
    const [own, other] = [percents.get(trial), percents.get(reference)];
    return blocked || own === undefined || other === undefined ? Math.exp(difference) : own / other;
  };
  const inPercent = (one: SideComparison): StrengthComparison => {
    const { difference, interval, joint, standardDeviation, degreesOfFreedom } = one;
    const percent = 100 * ratioOf(one.trial, one.reference, difference);
    const scaled = (ends: Interval): Interval => ({
      low: percent * Math.exp(ends.low - difference),
      high: percent * Math.exp(ends.high - difference),
    });
    const figure = {
      trial: one.trial,
      reference: one.reference,
      percent,
      claim: one.claim,
      ...(interval && { interval: scaled(interval) }),
      ...(joint && { joint: scaled(joint) }),
      ...(standardDeviation !== undefined && { standardDeviation: percent * standardDeviation }),
      ...(degreesOfFreedom !== undefined && { degreesOfFreedom }),
      finding: FINDINGS_IN_STRENGTH[one.finding],
      basis: one.basis,
      fromHistory: one.fromHistory,
      ...(one.shortfall && { shortfall: one.shortfall }),
    };
    return { ...figure, statement: claimStatement(figure, repetitions, nameOf, study.precision?.strength?.source) };
  };
  const { leader, notProvenWorse } = found.best;
  return {
    paint: paint.paint,
    repetitions,
    scatter: found.scatter.map((one) => ({ ...one, standardDeviation: 100 * one.standardDeviation })),
    againstReference: found.againstReference.map(inPercent),
    pairs: found.pairs.map(inPercent),
    notProvenWorse,
    ...(leader && {
      leader: {
        package: leader.trial,
        percent: 100 * ratioOf(leader.trial, paint.reference, leader.difference),
        expected: 100 * Math.exp(leader.shrunk),
      },
    }),
    warnings: [
      ...warnings,
      ...found.warnings.map((warning) => ({
        ...warning,
        path: warning.path === undefined ? paint.paint : `${warning.path} in ${paint.paint}`,
      })),
    ],
  };
}

const FINDINGS_IN_STRENGTH: Readonly<Record<Finding, ComparisonFinding>> = {
  higher: 'stronger',
  lower: 'weaker',
  undecided: 'undecided',
};
