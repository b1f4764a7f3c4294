import { assertArray, assertObject, assertString } from '../../core/internal.js';
import type { StudyResult } from '../../study/index.js';

const LISTS = ['paints', 'packages', 'cells', 'series', 'unusedReadings', 'warnings'] as const;
const OBJECTS = ['recommendation', 'ranking', 'evidence', 'method'] as const;

/**
 * Refuses what is no result of `evaluateStudy`, by the parts that a report is made of. Its figures are not looked into: they are ours.
 *
 * @throws TintladderError `wrong-type`
 */
export function assertStudyResult(result: StudyResult, path = 'result'): void {
  assertObject(result, path, 'a result of evaluateStudy');
  assertString(result.title, `${path}.title`);
  for (const name of LISTS) assertArray(result[name], `${path}.${name}`);
  for (const name of OBJECTS) assertObject(result[name], `${path}.${name}`);
}
