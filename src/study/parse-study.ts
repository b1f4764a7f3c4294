import type * as z from 'zod/mini';
import { TintladderError } from '../core/index.js';
import { isComputed, unitOf } from './quantities.js';
import { placeholdersIn } from './sample-pattern.js';
import type { SeriesKind } from './series-kind.js';
import { SERIES_FIELDS, SERIES_KINDS } from './series-kinds.js';
import type { Study } from './study.js';
import { studySchema } from './study-schema.js';

/**
 * Checks the description of a study and gives it back as typed data.
 *
 * @param data - what a JSON or YAML parser made of a study file
 * @returns the study, unchanged
 * @throws TintladderError `study-invalid` at the path of the first field that is wrong; `no-reference` if the reference is no package;
 * `invalid-limit` for a criterion without a bound or with crossed bounds; `unit-mismatch` for a criterion whose unit is not
 * the quantity's
 * @example parseStudy({ title: '' }) // throws study-invalid
 */
export function parseStudy(data: unknown): Study {
  const parsed = studySchema.safeParse(data);
  if (!parsed.success) throw faultOf(parsed.error.issues[0], data);
  const study: Study = parsed.data;
  checkIds(study);
  checkRules(study);
  checkCriteria(study);
  return study;
}

function invalid(path: string, received: unknown, expected: string, hint?: string): TintladderError {
  return new TintladderError('study-invalid', { path, received, expected, hint });
}

function checkIds({ packages, paints, reference }: Study): void {
  for (const [list, items] of [
    ['packages', packages],
    ['paints', paints],
  ] as const) {
    items.forEach(({ id }, i) => {
      if (items.findIndex((other) => other.id === id) !== i) {
        throw invalid(`${list}[${i}].id`, id, 'an id that no other entry has');
      }
    });
  }
  if (!packages.some(({ id }) => id === reference)) {
    throw new TintladderError('no-reference', {
      path: 'reference',
      received: reference,
      expected: `the id of one of the packages (${packages.map(({ id }) => id).join(', ')})`,
    });
  }
  packages.forEach(({ supplied = [] }, p) => {
    supplied.forEach((figure, s) => {
      checkKnown(`packages[${p}].supplied[${s}].paint`, figure.paint, paints);
    });
  });
}

function checkKnown(path: string, id: string | undefined, list: readonly { readonly id: string }[]): void {
  if (id === undefined || list.some((item) => item.id === id)) return;
  throw invalid(path, id, `one of ${list.map((item) => item.id).join(', ')}`);
}

function checkRules({ readings, packages, paints }: Study): void {
  readings.forEach((rule, i) => {
    const path = `readings[${i}]`;
    if ((rule.names === undefined) === (rule.pattern === undefined)) {
      throw invalid(path, rule, "either 'names' or 'pattern'");
    }
    checkKnown(`${path}.package`, rule.package, packages);
    checkKnown(`${path}.paint`, rule.paint, paints);
    const given = rule.pattern === undefined ? [] : placeholdersIn(rule.pattern, `${path}.pattern`);
    const known = (key: 'package' | 'paint') => rule[key] !== undefined || given.includes(key);
    if (!known('paint')) {
      throw invalid(path, rule, 'a paint', "Add 'paint', or {paint} in the pattern.");
    }
    for (const field of SERIES_FIELDS) {
      const { insteadOf }: SeriesKind = SERIES_KINDS[field];
      const states = (key: typeof field | 'storage') => rule[key] !== undefined || given.includes(key);
      if (insteadOf !== undefined && states(field) && states(insteadOf)) {
        throw invalid(path, rule, `either '${field}' or '${insteadOf}'`);
      }
    }
    if (rule.role !== 'white' && !known('package')) {
      throw invalid(path, rule, 'a package', "Add 'package', or {package} in the pattern.");
    }
  });
}

function checkCriteria({ criteria, packages }: Study): void {
  const supplied = packages.flatMap(({ supplied = [] }) => supplied);
  supplied.forEach(({ quantity, unit }) => {
    if (isComputed(quantity)) {
      throw invalid('packages.supplied', quantity, `a quantity that is not computed from readings (${unit})`);
    }
  });
  criteria.forEach(({ quantity, lower, upper, unit }, i) => {
    const path = `criteria[${i}]`;
    if ((lower === undefined && upper === undefined) || (lower ?? -Infinity) > (upper ?? Infinity)) {
      throw new TintladderError('invalid-limit', {
        path,
        received: { lower, upper },
        expected: "'lower', 'upper', or both with lower at most upper",
      });
    }
    const units = [unitOf(quantity), ...supplied.filter((figure) => figure.quantity === quantity).map((f) => f.unit)];
    const other = units.find((candidate) => candidate !== undefined && candidate !== unit);
    if (other !== undefined) {
      throw new TintladderError('unit-mismatch', {
        path: `${path}.unit`,
        received: unit,
        expected: `${other}, the unit of ${quantity}`,
      });
    }
  });
}

/** One zod issue as a fault: the deepest alternative of a union, since it is the one that came nearest. */
function faultOf(issue: z.core.$ZodIssue, data: unknown): TintladderError {
  const keys = issue.path.map(String);
  const received = keys.reduce<unknown>((value, key) => (value as Record<string, unknown> | undefined)?.[key], data);
  const path = keys.reduce((text, key) => (/^\d+$/.test(key) ? `${text}[${key}]` : text ? `${text}.${key}` : key), '');
  if (issue.code === 'unrecognized_keys') {
    return invalid(`${path ? `${path}.` : ''}${issue.keys[0]}`, issue.keys[0], 'a field that a study has');
  }
  return invalid(path || 'study', received, expectation(issue));
}

function expectation(issue: z.core.$ZodIssue): string {
  switch (issue.code) {
    case 'invalid_type':
      return `${/^[aeiou]/.test(issue.expected) ? 'an' : 'a'} ${issue.expected}`;
    case 'invalid_value':
      return `one of ${issue.values.map((value) => (typeof value === 'string' ? `'${value}'` : String(value))).join(', ')}`;
    case 'too_small':
      return issue.origin === 'number'
        ? `a number ${issue.inclusive ? 'of at least' : 'above'} ${issue.minimum}`
        : `at least ${issue.minimum} ${issue.origin === 'string' ? 'character' : 'entry'}`;
    case 'too_big':
      return `a number ${issue.inclusive ? 'of at most' : 'below'} ${issue.maximum}`;
    case 'invalid_union':
      return 'a name, or a table with name, start, step and values';
    default:
      return 'another value';
  }
}
