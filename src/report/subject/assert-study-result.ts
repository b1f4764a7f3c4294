import { TintladderError } from '../../core/index.js';
import { assertObject } from '../../core/internal.js';
import type { StudyResult } from '../../study/index.js';

/**
 * Refuses what is no result of `evaluateStudy`, by its kind and version.
 *
 * @throws TintladderError `wrong-type`
 */
export function assertStudyResult(result: StudyResult, path = 'result'): void {
  const expected = 'a result of evaluateStudy';
  assertObject(result, path, expected);
  const { kind, version }: { readonly kind?: unknown; readonly version?: unknown } = result;
  if (kind === 'study' && version === 1) return;
  throw new TintladderError('wrong-type', { path, received: kind, expected });
}
