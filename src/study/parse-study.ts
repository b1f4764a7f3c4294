import type * as z from 'zod/mini';
import type { TintladderError } from '../core/index.js';
import { checkStudy, studyFault } from './check-study.js';
import type { Study } from './study.js';
import { studySchema } from './study-schema.js';

/**
 * Checks the description of a study and gives it back as typed data.
 *
 * @param data - what a JSON or YAML parser made of a study file
 * @returns the study, unchanged
 * @throws TintladderError `study-invalid` at the path of the first field that is wrong; `no-reference` if the reference is no package;
 * `invalid-limit` for a criterion without a bound or with crossed bounds; `unit-mismatch` for a criterion whose unit is not
 * the quantity's and can't be converted into it
 * @example parseStudy({ title: '' }) // throws study-invalid
 */
export function parseStudy(data: unknown): Study {
  if (typeof data === 'object' && data !== null && 'repeatability' in data) {
    throw studyFault('repeatability', data.repeatability, "'precision' in its place", PRECISION_HINT);
  }
  const parsed = studySchema.safeParse(data);
  if (!parsed.success) throw faultOf(parsed.error.issues[0], data);
  const study: Study = parsed.data;
  checkStudy(study);
  return study;
}

const PRECISION_HINT =
  'One figure does not say whether spots, drawdowns or weigh-ups scatter so: give a standard deviation for each, with its degrees of freedom.';

/** One zod issue as a fault: the deepest alternative of a union, since it is the one that came nearest. */
function faultOf(issue: z.core.$ZodIssue, data: unknown, above: readonly PropertyKey[] = []): TintladderError {
  const inner = issue.code === 'invalid_union' ? deepest(issue.errors.flat()) : undefined;
  if (inner) return faultOf(inner, data, [...above, ...issue.path]);
  const keys = [...above, ...issue.path].map(String);
  const received = keys.reduce<unknown>((value, key) => (value as Record<string, unknown> | undefined)?.[key], data);
  const path = keys.reduce((text, key) => (/^\d+$/.test(key) ? `${text}[${key}]` : text ? `${text}.${key}` : key), '');
  if (issue.code === 'unrecognized_keys') {
    return studyFault(`${path ? `${path}.` : ''}${issue.keys[0]}`, issue.keys[0], 'a field that a study has');
  }
  return studyFault(path || 'study', received, UNIONS[path] ?? expectation(issue));
}

/** The issue that lies deepest below its union; undefined where every alternative fails as a whole. */
function deepest(issues: readonly z.core.$ZodIssue[]): z.core.$ZodIssue | undefined {
  const depth = ({ path, code }: z.core.$ZodIssue) => path.length + (code === 'unrecognized_keys' ? 1 : 0);
  const [first] = [...issues].sort((a, b) => depth(b) - depth(a));
  return first && depth(first) > 0 ? first : undefined;
}

/** What is expected where alternatives differ altogether. */
const UNIONS: Readonly<Record<string, string>> = {
  'viewing.illuminant': 'a name, or a table with name, start, step and values',
  surface: "external, internal and specular, or 'none'",
  decision: "{ rule: 'interval' }, or { rule: 'conformance-probability' } with its risk",
};

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
    default:
      return 'another value';
  }
}
