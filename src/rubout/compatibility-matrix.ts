import { TintladderError } from '../core/index.js';
import { assertArray, assertObject, assertOptions, assertString } from '../core/internal.js';
import { type Interval, judge, type Limit, type Outcome, worstOutcome } from '../decision/index.js';
import { assertLimit } from '../decision/internal.js';
import { assertRubOutResult } from './assert-rub-out-result.js';
import type { CompatibilityCell } from './compatibility-cell.js';
import { isPossible } from './rub-out-cause.js';
import type { RubOutResult } from './rub-out-result.js';
import { assertSameConditions } from './same-conditions.js';
import { type SideAtFault, sidesAtFault } from './side-at-fault.js';

/** One colorant, or one additive package of it, tested in one paint. */
export interface CompatibilityTest {
  readonly colorant: string;
  readonly paint: string;
  readonly rubOut: RubOutResult;
  /** Relative tinting strength in this paint, such as a result of `relativeTintingStrength`. */
  readonly strength?: { readonly percent: number; readonly interval?: Interval | undefined } | undefined;
}

/** Options of {@link compatibilityMatrix}. */
export interface CompatibilityOptions {
  /** Limit of the strength, %; without it the strength is shown and not judged. */
  readonly strength?: Limit | undefined;
}

/** One colorant over all its paints. */
export interface CompatibilityRow {
  readonly colorant: string;
  /** `meets` only where every paint does; a paint that was not tested keeps it undecided. */
  readonly outcome: Outcome;
  /** Paints by their outcome, and those that other colorants were tested in and this one was not. */
  readonly meeting: readonly string[];
  readonly undecided: readonly string[];
  readonly failing: readonly string[];
  readonly untested: readonly string[];
}

/** Colorants by paints. */
export interface CompatibilityMatrix {
  readonly kind: 'compatibility-matrix';
  readonly version: 1;
  readonly colorants: readonly CompatibilityRow[];
  readonly paints: readonly string[];
  readonly cells: readonly CompatibilityCell[];
  /** Colorants and bases that are at fault wherever they were tested. */
  readonly atFault: readonly SideAtFault[];
}

/**
 * Which colorants are fit for all of several paints: colorant by paint, each with outcome and strength.
 *
 * The side at fault is named where it shows in at least two tests: a colorant that is stronger by rubbing in every paint, a base in which every
 * colorant pales (ASTM D5326, 5.1). A colorant meant for several paints passes only where every paint passes; one undecided cell keeps the whole undecided. The
 * same serves for additive packages of one pigment.
 *
 * @param tests - one for each colorant and paint that was tested, all assessed under the same conditions
 * @param options - limit of the strength
 * @returns rows and columns in the order in which they first appear
 * @throws TintladderError `empty`; `conditions-mismatch`; `invalid-option` for a colorant tested twice in one paint;
 * `invalid-limit`, `invalid-interval`
 * @example
 * const options = { viewing: D65_10, surface: 'none', precision: { spot: 0.05 } };
 * const rubOut = (L) => assessRubOut({ L: 60, a: 0, b: -20 }, { L, a: 0, b: -20 }, options);
 * const tests = [
 *   { colorant: 'blue', paint: 'silicate', rubOut: rubOut(57) },
 *   { colorant: 'blue', paint: 'acrylic', rubOut: rubOut(59.9) },
 * ];
 * compatibilityMatrix(tests).colorants[0].outcome // 'fails'
 */
export function compatibilityMatrix(
  tests: readonly CompatibilityTest[],
  options: CompatibilityOptions = {},
): CompatibilityMatrix {
  assertArray(tests, 'tests', 'a list of tests');
  assertObject(options, 'options', 'an object of options');
  assertOptions(options, ['strength']);
  const { strength: limit } = options;
  if (limit !== undefined) assertLimit(limit);
  if (tests.length === 0) {
    throw new TintladderError('empty', { path: 'tests', received: tests, expected: 'at least one test' });
  }
  const received = new Set<string>();
  tests.forEach((test, i) => {
    const path = `tests[${i}]`;
    assertObject(test, path, 'a test { colorant, paint, rubOut }');
    const { colorant, paint, rubOut } = test;
    assertString(colorant, `${path}.colorant`);
    assertString(paint, `${path}.paint`);
    assertRubOutResult(rubOut, `${path}.rubOut`);
    const key = JSON.stringify([colorant, paint]);
    if (received.has(key)) {
      throw new TintladderError('invalid-option', {
        path: `tests[${i}]`,
        received: { colorant, paint },
        expected: 'one test of each colorant in each paint',
        hint: 'Pass replicates as spots of one assessment.',
      });
    }
    received.add(key);
  });
  assertSameConditions(
    tests.map(({ rubOut }) => rubOut),
    tests.map(({ colorant, paint }) => `${colorant} in ${paint}`),
  );
  const cells = tests.map((test) => cellOf(test, limit));
  const paints = [...new Set(tests.map(({ paint }) => paint))];
  const colorants = [...new Set(tests.map(({ colorant }) => colorant))];
  return {
    kind: 'compatibility-matrix',
    version: 1,
    colorants: colorants.map((colorant) => rowOf(colorant, paints, cells)),
    paints,
    cells,
    atFault: sidesAtFault(cells),
  };
}

function cellOf({ colorant, paint, rubOut, strength }: CompatibilityTest, limit: Limit | undefined): CompatibilityCell {
  const { difference, interval, direction, causes } = rubOut;
  const strengthOutcome = limit && (strength ? judge(strength.percent, strength.interval, limit) : 'undecided');
  return {
    colorant,
    paint,
    outcome: worstOutcome(strengthOutcome ? [rubOut.outcome, strengthOutcome] : [rubOut.outcome]),
    dEab: difference.dEab,
    ...(interval && { interval: interval.dEab }),
    ...(direction && { direction }),
    causes: causes.filter(isPossible).map(({ cause }) => cause),
    ...(strength && { strength: strength.percent }),
    ...(strengthOutcome && { strengthOutcome }),
  };
}

function rowOf(colorant: string, paints: readonly string[], cells: readonly CompatibilityCell[]): CompatibilityRow {
  const own = cells.filter((cell) => cell.colorant === colorant);
  const paintsThat = (outcome: Outcome) => own.filter((cell) => cell.outcome === outcome).map(({ paint }) => paint);
  const untested = paints.filter((paint) => own.every((cell) => cell.paint !== paint));
  const outcomes = own.map(({ outcome }) => outcome);
  return {
    colorant,
    outcome: worstOutcome(untested.length > 0 ? [...outcomes, 'undecided'] : outcomes),
    meeting: paintsThat('meets'),
    undecided: paintsThat('undecided'),
    failing: paintsThat('fails'),
    untested,
  };
}
