import { TintladderError } from '../core/index.js';
import { conversionFactor } from './convert-unit.js';
import { isComputed, unitOf } from './quantities.js';
import { placeholdersOf } from './sample-pattern.js';
import type { SeriesKind } from './series-kind.js';
import { SERIES_FIELDS, SERIES_KINDS } from './series-kinds.js';
import type { Study, StudyPackage } from './study.js';

/** Refuses what no schema can see: fields that contradict each other, or name what the study doesn't hold. */
export function checkStudy(study: Study): void {
  checkIds(study);
  checkExports(study);
  checkSupplied(study);
  checkLoadings(study);
  checkRules(study);
  checkCriteria(study);
}

/** A fault of the study at `path`. */
export function studyFault(path: string, received: unknown, expected: string, hint?: string): TintladderError {
  return new TintladderError('study-invalid', { path, received, expected, ...(hint !== undefined && { hint }) });
}

function checkIds({ packages, paints, reference }: Study): void {
  for (const [list, items] of [
    ['packages', packages],
    ['paints', paints],
  ] as const) {
    items.forEach(({ id }, i) => {
      if (items.findIndex((other) => other.id === id) !== i) {
        throw studyFault(`${list}[${i}].id`, id, 'an id that no other entry has');
      }
    });
  }
  if (packages.some(({ id }) => id === reference)) return;
  throw new TintladderError('no-reference', {
    path: 'reference',
    received: reference,
    expected: `the id of one of the packages (${packages.map(({ id }) => id).join(', ')})`,
  });
}

function checkExports({ measurements = [] }: Study): void {
  const files = measurements.map((entry) => (typeof entry === 'string' ? entry : entry.file));
  const plain = files.map((path) => path.replace(/\\/g, '/').replace(/^(\.\/)+/, ''));
  plain.forEach((path, i) => {
    if (plain.indexOf(path) === i) return;
    throw studyFault(`measurements[${i}]`, files[i], 'each export once', 'Its readings would count twice.');
  });
}

function checkSupplied({ packages, paints }: Study): void {
  packages.forEach(({ supplied = [] }, p) => {
    supplied.forEach(({ quantity, paint, unit }, s) => {
      const path = `packages[${p}].supplied[${s}]`;
      checkKnown(`${path}.paint`, paint, paints);
      if (isComputed(quantity)) {
        throw studyFault(`${path}.quantity`, quantity, `a quantity that is not computed from readings (${unit})`);
      }
      const first = supplied.findIndex(
        (other) => other.quantity === quantity && (other.paint === undefined || !paint || other.paint === paint),
      );
      if (first === s) return;
      const expected = `one figure of ${quantity}, which supplied[${first}] gives already`;
      throw studyFault(path, supplied[s], expected, 'Give each figure its own paint, or their mean.');
    });
  });
}

function checkLoadings({ packages, targetLoading }: Study): void {
  packages.forEach(({ pigmentLoading }, p) => {
    if (targetLoading === undefined || pigmentLoading === undefined || pigmentLoading >= targetLoading) return;
    throw studyFault(
      `packages[${p}].pigmentLoading`,
      pigmentLoading,
      `at least the targetLoading, ${targetLoading}`,
      'Letting down can only lower the share of pigment.',
    );
  });
}

function checkKnown(path: string, id: string | undefined, list: readonly { readonly id: string }[]): void {
  if (id === undefined || list.some((item) => item.id === id)) return;
  throw studyFault(path, id, `one of ${list.map((item) => item.id).join(', ')}`);
}

const LEVEL_HINT =
  'Three spots of one film and three weigh-ups say different things: write {weighing}, {drawdown} or {spot}, or {grind} for mill bases ground anew.';

function checkRules({ readings, packages, paints }: Study): void {
  readings.forEach((rule, i) => {
    const path = `readings[${i}]`;
    if ((rule.names === undefined) === (rule.pattern === undefined)) {
      throw studyFault(path, rule, "either 'names' or 'pattern'");
    }
    checkKnown(`${path}.package`, rule.package, packages);
    checkKnown(`${path}.paint`, rule.paint, paints);
    if (rule.pattern?.includes('{replicate}')) {
      throw studyFault(`${path}.pattern`, rule.pattern, 'what was made anew in the place of {replicate}', LEVEL_HINT);
    }
    const given = rule.pattern === undefined ? [] : placeholdersOf(rule.pattern, `${path}.pattern`);
    const { repeated } = rule;
    if (repeated !== undefined && (rule[repeated] !== undefined || given.includes(repeated))) {
      throw studyFault(
        `${path}.repeated`,
        repeated,
        `a level that the names do not tell, which they do of ${repeated}`,
      );
    }
    const known = (key: 'package' | 'paint') => rule[key] !== undefined || given.includes(key);
    if (!known('paint')) {
      throw studyFault(path, rule, 'a paint', "Add 'paint', or {paint} in the pattern.");
    }
    for (const field of SERIES_FIELDS) {
      const { insteadOf }: SeriesKind = SERIES_KINDS[field];
      const states = (key: typeof field | 'storage') => rule[key] !== undefined || given.includes(key);
      if (insteadOf !== undefined && states(field) && states(insteadOf)) {
        throw studyFault(path, rule, `either '${field}' or '${insteadOf}'`);
      }
    }
    if (rule.role !== 'white' && !known('package')) {
      throw studyFault(path, rule, 'a package', "Add 'package', or {package} in the pattern.");
    }
  });
}

function checkCriteria({ criteria, packages, paints }: Study): void {
  criteria.forEach(({ quantity, lower, upper, unit, ...scope }, i) => {
    const path = `criteria[${i}]`;
    if ((lower === undefined && upper === undefined) || (lower ?? -Infinity) > (upper ?? Infinity)) {
      throw new TintladderError('invalid-limit', {
        path,
        received: { lower, upper },
        expected: "'lower', 'upper', or both with lower at most upper",
      });
    }
    scope.paints?.forEach((id, p) => {
      checkKnown(`${path}.paints[${p}]`, id, paints);
    });
    scope.packages?.forEach((id, p) => {
      checkKnown(`${path}.packages[${p}]`, id, packages);
    });
    const own = unitOf(quantity);
    if (own !== undefined && own !== unit) throw unitFault(`${path}.unit`, unit, `${own}, the unit of ${quantity}`);
  });
  checkUnits({ criteria, packages });
}

/** One unit for each supplied quantity, or units that can be converted into the one of its criterion. */
function checkUnits({ criteria, packages }: Pick<Study, 'criteria' | 'packages'>): void {
  packages.forEach(({ supplied = [] }, p) => {
    supplied.forEach(({ quantity, unit }, s) => {
      const main = unitOfSupplied(quantity, { criteria, packages }) ?? unit;
      if (conversionFactor(unit, main) !== undefined) return;
      throw unitFault(`packages[${p}].supplied[${s}].unit`, unit, `${main}, the unit of ${quantity} elsewhere`);
    });
  });
}

/** The unit in which a supplied quantity is judged and shown: that of its criterion, else of the first figure supplied. */
export function unitOfSupplied(
  quantity: string,
  { criteria, packages }: { readonly criteria: Study['criteria']; readonly packages: readonly StudyPackage[] },
): string | undefined {
  const figures = packages.flatMap(({ supplied = [] }) => supplied);
  return [...criteria, ...figures].find((one) => one.quantity === quantity)?.unit;
}

function unitFault(path: string, received: string, expected: string): TintladderError {
  return new TintladderError('unit-mismatch', { path, received, expected });
}
