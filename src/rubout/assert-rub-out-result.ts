import { TintladderError } from '../core/index.js';
import { assertObject } from '../core/internal.js';
import type { RubOutResult } from './rub-out-result.js';

/**
 * Refuses what is no result of `assessRubOut`, by its kind and version.
 *
 * @throws TintladderError `wrong-type`
 */
export function assertRubOutResult(result: unknown, path: string): asserts result is RubOutResult {
  const expected = 'a result of assessRubOut';
  assertObject(result, path, expected);
  const { kind, version }: { readonly kind?: unknown; readonly version?: unknown } = result;
  if (kind === 'rub-out' && version === 1) return;
  throw new TintladderError('wrong-type', { path, received: kind, expected });
}
