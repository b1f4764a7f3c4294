import { assertArray, assertObject, assertOptions, assertString } from '../../core/internal.js';

/** What a report is of and where it comes from, as the one who makes it knows it; nothing of it is looked up. */
export interface ReportIdentity {
  /** When the report was made, as it is to be printed; ISO 8601 is understood everywhere. */
  readonly date?: string | undefined;
  /** Who made it. */
  readonly author?: string | undefined;
  /** The program and its version. */
  readonly version?: string | undefined;
  /** The files that went in, each with a digest by which it can be recognised. */
  readonly inputs?: readonly { readonly name: string; readonly digest: string }[] | undefined;
}

const TEXTS = ['date', 'author', 'version'] as const;

/**
 * Refuses an identity with other parts, or with parts that are no texts.
 *
 * @throws TintladderError `wrong-type`, `invalid-option`
 */
export function assertIdentity(identity: ReportIdentity, path: string): void {
  assertOptions(identity, [...TEXTS, 'inputs'], path);
  for (const name of TEXTS) if (identity[name] !== undefined) assertString(identity[name], `${path}.${name}`);
  if (identity.inputs === undefined) return;
  assertArray(identity.inputs, `${path}.inputs`);
  identity.inputs.forEach((input, i) => {
    assertObject(input, `${path}.inputs[${i}]`);
    assertString(input.name, `${path}.inputs[${i}].name`);
    assertString(input.digest, `${path}.inputs[${i}].digest`);
  });
}
