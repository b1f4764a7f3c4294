import { TintladderError, type Warning } from '../../core/index.js';
import { type ReadRepeated, topUnitMeans } from '../../evidence/internal.js';
import type { Choice } from '../criteria/solution.js';
import { solveCriterion } from '../criteria/solve.js';
import type { StrengthCriterion } from '../criteria/strength-criterion.js';
import { addedAbsorption } from '../reduction/colorant-absorption.js';
import type { Dilution } from '../reduction/dilution.js';
import type { Absorptions, Side } from '../reduction/side.js';
import {
  intervalFromRepeatability,
  intervalFromReplicates,
  type SideLogs,
  type StrengthInterval,
} from './strength-interval.js';

/** A side with the K/S of its mean and of each of its readings. */
export interface AbsorbingSide extends Side {
  readonly absorptions: Absorptions;
}

/** All sides of a comparison. */
export interface AbsorbingSides {
  readonly reference: AbsorbingSide;
  readonly trial: AbsorbingSide;
  readonly white: AbsorbingSide | undefined;
}

/**
 * The interval of a strength from its top units where both sides were weighed up anew, but never less than the stated repeatability;
 * otherwise from that repeatability, otherwise from spots and drawdowns, or from the one side that has several.
 *
 * A single reading's figure is the strength with this one reading in the place of its side's mean, by the same criterion at
 * the same wavelength or tristimulus value. So scatter that is common to all wavelengths of a film, which is most of it,
 * counts once, and every criterion is treated alike.
 */
export function scatterInterval(
  criterion: StrengthCriterion,
  means: Dilution,
  choice: Choice,
  sides: AbsorbingSides,
  { percent, repeatability }: { percent: number; repeatability: number | undefined },
): { interval?: StrengthInterval; warnings: readonly Warning[] } {
  const { reference, trial } = sides;
  const repeated = [reference, trial].map(({ read }) => read.top >= 0);
  const single = repeated.includes(false);
  const weighed = [reference, trial].map(({ read }) => weighUps(read));
  const floor = repeatability === undefined ? undefined : intervalFromRepeatability(percent, repeatability, weighed);
  if (floor && weighed.includes(1)) return { interval: floor, warnings: [] };
  if (!repeated.includes(true)) return { warnings: [] };
  let logs: SideLogs;
  try {
    logs = unitLogs(criterion, means, choice, sides);
  } catch (error) {
    if (!(error instanceof TintladderError)) throw error;
    const message = `There is no interval, since one of the readings alone has no strength: ${error.message}`;
    return { warnings: [{ code: 'no-interval', message, path: error.path }] };
  }
  const today = intervalFromReplicates(percent, logs);
  // Earlier work is a floor: a few weigh-ups may agree by chance.
  const interval = floor && !(today && today.standardDeviation > floor.standardDeviation) ? floor : today;
  const warnings = (['reference', 'trial', 'white'] as const).flatMap((name) => noteIdentical(name, logs[name]));
  if (interval && single) {
    const [once, several] = repeated[0] ? ['trial', 'reference'] : ['reference', 'trial'];
    const message = `The ${once} was read once; its scatter is taken to be that of the ${several}.`;
    warnings.push({ code: 'scatter-borrowed', message, path: once });
  }
  return { ...(interval && { interval }), warnings };
}

/** How often a side was weighed up: spots and drawdowns of one weigh-up share its error and don't average it. */
function weighUps({ levels, counts, top }: ReadRepeated<unknown>): number {
  return levels[top] === 'grind' || levels[top] === 'weighing' ? counts[top] : 1;
}

/** Logarithms of the strength that each top unit of each side gives against the means of the others. */
function unitLogs(criterion: StrengthCriterion, means: Dilution, choice: Choice, sides: AbsorbingSides): SideLogs {
  const { reference, trial, white } = sides;
  const logOf = (dilution: Dilution) => -Math.log(solveCriterion(criterion, dilution, choice).factor);
  const unitsOf = ({ read, absorptions }: AbsorbingSide, dilutionOf: (ratios: Float64Array, i: number) => Dilution) =>
    topUnitMeans(
      read,
      absorptions.each.map((ratios, i) => logOf(dilutionOf(ratios, i))),
    );
  return {
    reference: unitsOf(reference, (ratios, i) => ({
      ...means,
      reference: addedAbsorption(ratios, means.white),
      measuredReference: reference.read.readings[i].reading,
    })),
    trial: unitsOf(trial, (ratios) => ({ ...means, trial: addedAbsorption(ratios, means.white) })),
    white: white
      ? unitsOf(white, (ratios) => ({
          ...means,
          white: ratios,
          reference: addedAbsorption(reference.absorptions.mean, ratios),
          trial: addedAbsorption(trial.absorptions.mean, ratios),
        }))
      : [],
  };
}

/** Logarithms closer than this differ by rounding. */
const IDENTICAL = 1e-12;

function noteIdentical(name: keyof SideLogs, logs: readonly number[]): Warning[] {
  if (logs.length < 2 || Math.max(...logs) - Math.min(...logs) >= IDENTICAL) return [];
  const message = `All readings of the ${name} are the same: a duplicate of a reading is no replicate and shows no scatter.`;
  return [{ code: 'replicates-identical', message, path: name, figures: { readings: logs.length } }];
}
